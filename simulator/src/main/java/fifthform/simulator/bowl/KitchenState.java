package fifthform.simulator.bowl;

import fifthform.curves.check.Require;
import java.time.Duration;
import java.util.Objects;

/**
 * All temperatures of a kitchen at a moment: a value, so that any moment can be kept, compared and gone on from twice.
 *
 * @param elapsed since the kitchen was set up
 * @param spot where the bowl stood last
 * @param bulk most of the chocolate
 * @param layer the chocolate at the wall
 * @param surface the chocolate at the top
 * @param seedKilograms chocolate added to the bulk since the kitchen was set up
 * @param splashKilograms water that got into the chocolate
 * @param wallCelsius the bowl
 * @param filmCelsius the water that clings outside
 * @param filmKilograms how much of it there is
 * @param hot the pot on the burner
 * @param potCelsius the metal of that pot
 * @param warm the water for the rewarm
 * @param cold the basin of tap water
 * @param spoonCelsius what the chocolate is stirred with
 * @param clothCelsius the wet cloth under or around the bowl
 * @param probes the probes
 * @param ledger heat that came and went
 */
public record KitchenState(
        Duration elapsed,
        Spot spot,
        Portion bulk,
        Portion layer,
        Portion surface,
        double seedKilograms,
        double splashKilograms,
        double wallCelsius,
        double filmCelsius,
        double filmKilograms,
        Basin hot,
        double potCelsius,
        Basin warm,
        Basin cold,
        double spoonCelsius,
        double clothCelsius,
        Probes probes,
        HeatLedger ledger) {
    public KitchenState {
        Objects.requireNonNull(elapsed, "elapsed");
        Objects.requireNonNull(spot, "spot");
        Objects.requireNonNull(bulk, "bulk");
        Objects.requireNonNull(layer, "layer");
        Objects.requireNonNull(surface, "surface");
        Require.within(seedKilograms, 0, 5, "seedKilograms");
        Require.within(splashKilograms, 0, 1, "splashKilograms");
        sensible(wallCelsius, "wallCelsius");
        sensible(filmCelsius, "filmCelsius");
        Require.within(filmKilograms, 0, 1, "filmKilograms");
        Objects.requireNonNull(hot, "hot");
        Require.within(potCelsius, -40, 600, "potCelsius");
        Objects.requireNonNull(warm, "warm");
        Objects.requireNonNull(cold, "cold");
        sensible(spoonCelsius, "spoonCelsius");
        sensible(clothCelsius, "clothCelsius");
        Objects.requireNonNull(probes, "probes");
        Objects.requireNonNull(ledger, "ledger");
    }

    /** Everything at one temperature, melted and dry, the baths as given: the simplest place to begin. */
    public static KitchenState melted(double celsius, Baths baths) {
        return begin(new Portion(celsius, Melting.MELTED), baths);
    }

    /** Solid pieces in a dry bowl, all at one temperature. */
    public static KitchenState solid(double celsius, Baths baths) {
        return begin(new Portion(celsius, Melting.SOLID), baths);
    }

    /** The same with these crystals all through the chocolate. */
    public KitchenState withCrystals(Crystals crystals) {
        return new KitchenState(
                elapsed,
                spot,
                new Portion(bulk.celsius(), crystals),
                new Portion(layer.celsius(), crystals),
                new Portion(surface.celsius(), crystals),
                seedKilograms,
                splashKilograms,
                wallCelsius,
                filmCelsius,
                filmKilograms,
                hot,
                potCelsius,
                warm,
                cold,
                spoonCelsius,
                clothCelsius,
                probes,
                ledger);
    }

    /** A dry bowl, spoon and probe as warm as the chocolate in it, the baths as given. */
    public static KitchenState begin(Portion chocolate, Baths baths) {
        double celsius = chocolate.celsius();
        return new KitchenState(
                Duration.ZERO,
                Spot.TABLE,
                chocolate,
                chocolate,
                chocolate,
                0,
                0,
                celsius,
                celsius,
                0,
                Basin.at(baths.hotCelsius()),
                baths.hotCelsius(),
                Basin.at(baths.warmCelsius()),
                Basin.at(baths.coldCelsius()),
                celsius,
                celsius,
                new Probes(celsius, celsius, baths.hotCelsius()),
                HeatLedger.EMPTY);
    }

    /** Most of the chocolate, °C. */
    public double bulkCelsius() {
        return bulk.celsius();
    }

    /** The chocolate at the wall, °C. */
    public double layerCelsius() {
        return layer.celsius();
    }

    /** The chocolate at the top, °C. */
    public double surfaceCelsius() {
        return surface.celsius();
    }

    /** Of the bulk's crystals, what has not melted yet. */
    public double bulkUnmeltedFraction() {
        return bulk.crystals().solidFraction();
    }

    public double hotBathCelsius() {
        return hot.celsius();
    }

    public double warmBathCelsius() {
        return warm.celsius();
    }

    public double coldWaterCelsius() {
        return cold.celsius();
    }

    /** What the probe in the chocolate feels, °C. */
    public double tipCelsius() {
        return probes.tipCelsius();
    }

    /** What the probe in the bath feels, °C. */
    public double bathTipCelsius() {
        return probes.bathCelsius();
    }

    /**
     * How warm the three waters are.
     *
     * @param hotCelsius the pot on the burner
     * @param warmCelsius the water for the rewarm
     * @param coldCelsius the basin of tap water
     */
    public record Baths(double hotCelsius, double warmCelsius, double coldCelsius) {
        public Baths {
            Require.within(hotCelsius, 0, 100, "hotCelsius");
            Require.within(warmCelsius, 0, 100, "warmCelsius");
            Require.within(coldCelsius, 0, 100, "coldCelsius");
        }
    }

    private static void sensible(double celsius, String name) {
        Require.within(celsius, -40, 150, name);
    }
}
