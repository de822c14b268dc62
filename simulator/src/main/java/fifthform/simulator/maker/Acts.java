package fifthform.simulator.maker;

import fifthform.curves.check.Require;
import fifthform.curves.input.Input;
import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.ProbePlace;
import java.time.Duration;
import java.util.List;
import java.util.Objects;

/**
 * What somebody does in one short while.
 *
 * @param hands where the bowl stands, how it is stirred, whether it is wiped
 * @param probe whether the probe is in the chocolate
 * @param seedGrams seed thrown in at the beginning of this while, 0 to 20 000 g
 * @param splashGrams water that gets into the chocolate at the beginning of this while, 0 to 500 g
 * @param bathWarmerKelvin how much warmer the water of the rewarm is made at the beginning of this while, 0 to 20 K
 * @param presses the keys pressed, oldest first, and what the computer itself tells
 */
public record Acts(
        Hands hands, Probe probe, double seedGrams, double splashGrams, double bathWarmerKelvin, List<Input> presses) {
    /** A cup of hot water into a pan of some litres makes it so much warmer. Our own choice. */
    public static final double CUP_OF_HOT_WATER_KELVIN = 3;

    /** Where the probe is. */
    public enum Probe {
        IN_THE_CHOCOLATE,
        /** In the air of the kitchen: taken out to scrape or to see, or never put back. */
        OUT
    }

    public Acts {
        Objects.requireNonNull(hands, "hands");
        Objects.requireNonNull(probe, "probe");
        Require.within(seedGrams, 0, 20_000, "seedGrams");
        Require.within(splashGrams, 0, 500, "splashGrams");
        Require.within(bathWarmerKelvin, 0, 20, "bathWarmerKelvin");
        presses = List.copyOf(presses);
    }

    /** The kitchen after {@code time} of these acts; seed is as warm as the room. */
    public KitchenState on(Kitchen kitchen, KitchenState state, Duration time) {
        KitchenState with = seedGrams > 0 ? kitchen.seeded(state, seedGrams / 1000, kitchen.roomCelsius()) : state;
        if (splashGrams > 0) with = kitchen.splashed(with, splashGrams / 1000);
        if (bathWarmerKelvin > 0) with = kitchen.withWarmWaterAt(with, with.warmBathCelsius() + bathWarmerKelvin);
        ProbePlace place = probe == Probe.OUT ? ProbePlace.OUT : hands.probe();
        return kitchen.advance(with, hands.probeAt(place), time);
    }

    /** Only the hands; nothing else happens. */
    public static Acts of(Hands hands) {
        return new Acts(hands, Probe.IN_THE_CHOCOLATE, 0, 0, 0, List.of());
    }
}
