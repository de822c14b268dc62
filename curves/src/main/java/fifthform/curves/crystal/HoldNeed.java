package fifthform.curves.crystal;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * How much longer the bowl should be stirred at the temperature it has, so that enough arrives in the working range: what
 * is there grows on the way up as well. Depth and time count alike: what 27.5 °C makes in 6 min takes 13 min at 28.5 °C.
 *
 * @param at when it was reckoned
 * @param left time from then on; zero where there is enough; empty where half an hour here would not do
 */
record HoldNeed(Instant at, Optional<Duration> left) {
    /**
     * Stable seed of the best guess on arrival in the working range, kg per kg of fat: within the 1 to 3 % that are asked
     * for (from memory). The reference's textbook programme, 6 min at 27.5 °C, arrives with 2.0 %.
     */
    static final double ARRIVING = 0.016;

    /** The copy that reads 0.5 K more must arrive with what a temper needs at the least. */
    private static final double LEAST_ARRIVING = Copies.LEAST_SEED;

    private static final Duration LONGEST = Duration.ofMinutes(30);
    private static final Duration OLD_AT_THE_END = Duration.ofSeconds(5);
    private static final Duration OLD = Duration.ofSeconds(10);
    private static final Duration THE_END = Duration.ofMinutes(1);

    /** Steps of the reckoning: coarse, for it is repeated; melting on the way up is of no weight here. */
    private static final double HOLD_STEP_SECONDS = 5;

    private static final int STEPS_UP = 16;

    /**
     * From the cool range to the working range, as the reference's programmes go. Short dips take twice as long, but to
     * count on their growth left more bowls with too few than it kept from thickening (120 batches of the home fleet).
     */
    private static final Duration WAY_UP = Duration.ofMinutes(4);

    HoldNeed {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(left, "left");
    }

    /** The need now: the last one counted down, or reckoned anew where that is some seconds old. */
    static HoldNeed next(
            Optional<HoldNeed> last,
            CrystalWatch watch,
            double celsius,
            double shearPerSecond,
            double workCelsius,
            Instant now) {
        boolean young = last.filter(n -> Duration.between(n.at(), now).compareTo(n.isOldAfter()) < 0)
                .isPresent();
        return young ? last.get() : reckoned(watch, celsius, shearPerSecond, workCelsius, now);
    }

    private Duration isOldAfter() {
        return left.filter(l -> l.compareTo(THE_END) < 0).isPresent() ? OLD_AT_THE_END : OLD;
    }

    private static HoldNeed reckoned(
            CrystalWatch watch, double celsius, double shearPerSecond, double workCelsius, Instant now) {
        Kinetics kinetics = watch.kinetics();
        Crystals guess = watch.copies().middle().mean(kinetics);
        Crystals least = watch.copies().higher().mean(kinetics);
        double warmer = celsius + Copies.SPREAD_KELVIN;
        double held = 0;
        while (held <= LONGEST.toSeconds()) {
            boolean enough = arriving(kinetics, guess, celsius, shearPerSecond, workCelsius) >= ARRIVING
                    && arriving(kinetics, least, warmer, shearPerSecond, workCelsius + Copies.SPREAD_KELVIN)
                            >= LEAST_ARRIVING;
            if (enough) return new HoldNeed(now, Optional.of(Duration.ofSeconds((long) held)));
            double until = held + look(held);
            for (; held < until; held += HOLD_STEP_SECONDS) {
                guess = kinetics.step(guess, Kinetics.within(celsius), shearPerSecond, HOLD_STEP_SECONDS);
                least = kinetics.step(least, Kinetics.within(warmer), shearPerSecond, HOLD_STEP_SECONDS);
            }
        }
        return new HoldNeed(now, Optional.empty());
    }

    /** A long wait need not be known to the second. */
    private static double look(double heldSeconds) {
        if (heldSeconds < 180) return 15;
        return heldSeconds < 600 ? 30 : 60;
    }

    /** Stable seed after the way up to {@code toCelsius}, kg per kg of fat. */
    private static double arriving(
            Kinetics kinetics, Crystals from, double celsius, double shearPerSecond, double toCelsius) {
        Crystals c = from;
        double stepSeconds = WAY_UP.toSeconds() / (double) STEPS_UP;
        for (int i = 0; i < STEPS_UP; i++) {
            double here = celsius + (toCelsius - celsius) * (i + 0.5) / STEPS_UP;
            c = kinetics.leap(c, Kinetics.within(here), shearPerSecond, stepSeconds);
        }
        return c.stableSeed();
    }

    /** What is left at a later time. */
    Optional<Duration> leftAt(Instant now) {
        return left.map(l -> l.minus(Duration.between(at, now))).map(l -> l.isNegative() ? Duration.ZERO : l);
    }
}
