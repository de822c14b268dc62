package fifthform.curves.signal;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How often a probe has sent exactly the same number, and whether it used to scatter. A coarse adapter (0.25 or 1 K) at
 * rest repeats itself honestly for minutes, so repeating alone proves nothing: see {@link #isStuck} and {@link #isDead}.
 *
 * @param celsius the number, as the wire said it, °C
 * @param count how often it came in a row; 0 before the first reading
 * @param since when it came first
 * @param latest when it came last
 * @param beforeCelsius the number before it, °C
 * @param beforeSeconds time from that one to it, s
 * @param stepKelvin smallest difference between two neighbours so far: the adapter's own step, K
 * @param turnsShare share of readings, over about 120, that turned back by more than one step: noise, not rounding
 * @param lastChangeKelvin the last difference between two neighbours, K
 */
public record Repeats(
        double celsius,
        int count,
        Instant since,
        Instant latest,
        OptionalDouble beforeCelsius,
        double beforeSeconds,
        double stepKelvin,
        double turnsShare,
        double lastChangeKelvin) {
    /** Before the first reading. */
    public static final Repeats NONE =
            new Repeats(0, 0, Instant.MIN, Instant.MIN, OptionalDouble.empty(), 0, Double.MAX_VALUE, 0, 0);

    /** 0 °C, and 0 °F as a Celsius number, which a dead converter sends where it counts in Fahrenheit. */
    private static final double ZERO_FAHRENHEIT_CELSIUS = -160.0 / 9;

    /** Whole degrees, with room for those of °F that were turned into °C. */
    private static final double COARSEST_STEP_KELVIN = 1.2;

    private static final double NEW_SHARE = 1.0 / 120;

    /** Noise of half a step or more turns back by two steps in about one reading of 25 (normal noise, computed). */
    private static final double SCATTERS_SHARE = 0.03;

    /**
     * Noise of half a step repeats itself at most two times in three, so 60 in a row do not happen by chance (10⁻¹¹).
     * Stirring that stops may take the noise away, but hardly a bowl keeps so still that it stays on one step for longer
     * than a drift of 0.05 K/min takes to cross it, and none for four minutes. Own choice.
     */
    private static final int SCATTER_GONE_COUNT = 60;

    private static final double SECONDS_PER_KELVIN_OF_STEP = 60 / 0.05;
    private static final double SCATTER_GONE_LEAST_SECONDS = 60;
    private static final double SCATTER_GONE_MOST_SECONDS = 240;

    /** Slowest bowl taken for granted: 5 kg in steel follows its bath with some 15 minutes. Own choice. */
    private static final double SLOWEST_BOWL_SECONDS = 900;

    private static final double STEPS_MISSED = 3;
    private static final double LEAST_MISSED_KELVIN = 0.5;
    private static final double LEAST_WATCHED_SECONDS = 45;
    private static final int LEAST_COUNT = 10;

    /** Zeros: how many and for how long until they are noticed. Own choice. */
    private static final int DEAD_COUNT = 5;

    private static final double DEAD_SECONDS = 3;

    /** A tip plunged into ice water shows at least one number on the way at this pace (τ ≥ 0.3 s). */
    private static final double FALL_SEEN_SECONDS = 1.2;

    private static final double FALL_KELVIN = 8;

    /** A pause after which nothing is known of how it came to zero. */
    private static final double HISTORY_SECONDS = 5;

    public Repeats {
        Objects.requireNonNull(since, "since");
        Objects.requireNonNull(latest, "latest");
        Objects.requireNonNull(beforeCelsius, "beforeCelsius");
    }

    /** With one more reading. */
    Repeats with(Instant at, double read) {
        if (count == 0) return new Repeats(read, 1, at, at, OptionalDouble.empty(), 0, stepKelvin, 0, 0);
        if (read == celsius) {
            return new Repeats(
                    celsius,
                    count + 1,
                    since,
                    at,
                    beforeCelsius,
                    beforeSeconds,
                    stepKelvin,
                    turnsShare,
                    lastChangeKelvin);
        }
        double change = read - celsius;
        double step = Math.min(stepKelvin, Math.abs(change));
        boolean turned = change * lastChangeKelvin < 0 && Math.abs(change) > 1.5 * step;
        double share = turnsShare;
        for (int i = 0; i < Math.min(count, 1000); i++) share -= NEW_SHARE * share;
        return new Repeats(
                read,
                1,
                at,
                at,
                OptionalDouble.of(celsius),
                Track.seconds(latest, at),
                step,
                turned ? share + NEW_SHARE : share,
                change);
    }

    /** The adapter's step as far as seen, K; 0 while the readings have not shown one that an adapter could have. */
    double seenStepKelvin() {
        return stepKelvin > COARSEST_STEP_KELVIN ? 0 : stepKelvin;
    }

    /**
     * Whether this number stands still where no true one could: in water that the maker named, once even a slow bowl
     * would have moved by {@value #STEPS_MISSED} steps of the adapter and by half a kelvin; or after scatter, for one
     * to four minutes. A coarse adapter that stops on the table cannot be told from one at rest, and is not doubted.
     */
    boolean isStuck(Optional<Water> told) {
        if (count < LEAST_COUNT) return false;
        boolean scatterGone = turnsShare >= SCATTERS_SHARE
                && count >= SCATTER_GONE_COUNT
                && Track.seconds(since, latest) >= scatterGoneSeconds();
        return scatterGone || told.filter(this::defies).isPresent();
    }

    private double scatterGoneSeconds() {
        double seconds = SECONDS_PER_KELVIN_OF_STEP * seenStepKelvin();
        return Math.min(SCATTER_GONE_MOST_SECONDS, Math.max(SCATTER_GONE_LEAST_SECONDS, seconds));
    }

    private boolean defies(Water water) {
        Instant from = water.since().isAfter(since) ? water.since() : since;
        double seconds = Track.seconds(from, latest);
        double way = water.sense() * (water.celsius() - celsius);
        double expected = way * -StrictMath.expm1(-Math.max(0, seconds) / SLOWEST_BOWL_SECONDS);
        return seconds >= LEAST_WATCHED_SECONDS
                && expected >= Math.max(LEAST_MISSED_KELVIN, STEPS_MISSED * seenStepKelvin());
    }

    /** Whether nothing but an exact zero has come yet: too soon to call the line dead, and no temperature to show. */
    boolean isUnproven() {
        return count > 0 && isZero() && beforeCelsius.isEmpty();
    }

    private boolean isZero() {
        return celsius == 0 || Math.abs(celsius - ZERO_FAHRENHEIT_CELSIUS) < 0.006;
    }

    /**
     * Whether these are the zeros of a dead converter: exact, and without a way down to them. An honest ice point has
     * scatter, or the readings came down to it; zeros that begin the session, follow a pause, or drop from far above
     * between two readings of a quick adapter have no such history.
     */
    boolean isDead() {
        if (!isZero() || count < DEAD_COUNT || Track.seconds(since, latest) < DEAD_SECONDS) return false;
        if (beforeCelsius.isEmpty()) return true;
        boolean far = Math.abs(beforeCelsius.getAsDouble() - celsius) > FALL_KELVIN;
        double pace = Track.seconds(since, latest) / (count - 1);
        boolean unseen = beforeSeconds > Math.max(HISTORY_SECONDS, 3 * pace);
        return far && (unseen || beforeSeconds <= FALL_SEEN_SECONDS);
    }
}
