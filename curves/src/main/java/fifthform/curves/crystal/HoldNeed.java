package fifthform.curves.crystal;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * How much longer the bowl should be stirred at the temperature it has, as the model's best guess says. Depth and time
 * count alike: what 27.5 °C makes in 6 min takes 12 min at 28.5 °C.
 *
 * @param at when it was reckoned
 * @param left time from then on; zero where there is enough; empty where half an hour here would not do
 */
record HoldNeed(Instant at, Optional<Duration> left) {
    /**
     * Stable seed of the best guess at the end of the hold, kg per kg of fat: it doubles on the way up, so that 1.4 to 2 %
     * arrive. Of the reference's programmes it takes 5.8 min at 27.5 °C, 12 at 28.5 °C and 19 at 29 °C.
     */
    static final double AIM = 0.009;

    private static final double STEP_SECONDS = 5;
    private static final Duration LONGEST = Duration.ofMinutes(30);
    private static final Duration OLD = Duration.ofSeconds(5);

    HoldNeed {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(left, "left");
    }

    /** The need now: the last one counted down, or reckoned anew where that is some seconds old. */
    static HoldNeed next(
            Optional<HoldNeed> last, CrystalWatch watch, double celsius, double shearPerSecond, Instant now) {
        boolean young = last.filter(n -> Duration.between(n.at(), now).compareTo(OLD) < 0)
                .isPresent();
        return young ? last.get() : reckoned(watch, celsius, shearPerSecond, now);
    }

    private static HoldNeed reckoned(CrystalWatch watch, double celsius, double shearPerSecond, Instant now) {
        Kinetics kinetics = watch.kinetics();
        Crystals c = watch.copies().middle().mean(kinetics);
        double here = Math.min(Kinetics.HIGHEST_CELSIUS, Math.max(Kinetics.LOWEST_CELSIUS, celsius));
        for (double seconds = 0; seconds <= LONGEST.toSeconds(); seconds += STEP_SECONDS) {
            if (c.stableSeed() >= AIM) return new HoldNeed(now, Optional.of(Duration.ofSeconds((long) seconds)));
            c = kinetics.step(c, here, shearPerSecond, STEP_SECONDS);
        }
        return new HoldNeed(now, Optional.empty());
    }

    /** What is left at a later time. */
    Optional<Duration> leftAt(Instant now) {
        return left.map(l -> l.minus(Duration.between(at, now))).map(l -> l.isNegative() ? Duration.ZERO : l);
    }
}
