package fifthform.curves.phase;

import fifthform.curves.check.Require;
import java.time.Duration;

/**
 * How quickly this maker's hands answer a cue to take the bowl out of the water, from the answers of this session. A
 * weighted mean of logarithms, since such times are log-normal (human-factors textbooks, from memory), with the set-up's own
 * figure as the first of them. An answer that is far off moves it no more than one that is a little off, and who was not
 * there has not answered.
 *
 * @param answers sum of the weights of the answers, 1 for a squared standard deviation of one natural logarithm
 * @param logSeconds sum of weight times logarithm of the seconds
 */
public record Reaction(double answers, double logSeconds) {
    /** Nobody has been asked yet. */
    public static final Reaction UNKNOWN = new Reaction(0, 0);

    /**
     * A cue that waits for the usual answer is late for half of them, and too hot costs more than too cool: what is reckoned
     * with is the slower answer that two of three stay under, with a spread of 0.35. Own choice.
     */
    private static final double CAUTION_LOG = 0.15;

    /** Weight of the set-up's figure: spread of makers of 0.35. Own choice. */
    private static final double PRIOR_WEIGHT = 1 / (0.35 * 0.35);

    /** One maker's own spread, and a key that comes after the hands. Own choice. */
    private static final double TOLD_WEIGHT = 1 / (0.45 * 0.45);

    /** From the curve alone the moment is known to some seconds. Own choice. */
    private static final double SEEN_WEIGHT = 1 / (0.8 * 0.8);

    /** Sooner nobody can have answered that cue, later nobody was there. Own choice. */
    private static final double SOONEST_SECONDS = 0.4;

    private static final double LATEST_SECONDS = 12;

    /** No answer counts as further off than this, as a logarithm. Own choice. */
    private static final double FARTHEST_LOG = 0.7;

    /** Bounds of what is made of it, s. */
    private static final double LEAST_SECONDS = 1;

    private static final double MOST_SECONDS = 8;

    public Reaction {
        Require.within(answers, 0, 1e9, "answers");
        Require.finite(logSeconds, "logSeconds");
    }

    /** Once a cue has been answered after {@code took}. */
    Reaction answered(Duration took, Evidence how, Duration prior) {
        double seconds = took.toMillis() / 1000.0;
        if (seconds < SOONEST_SECONDS || seconds > LATEST_SECONDS) return this;
        double expected = StrictMath.log(seconds(prior));
        double off = StrictMath.log(seconds) + CAUTION_LOG - expected;
        double bounded = Math.max(-FARTHEST_LOG, Math.min(FARTHEST_LOG, off));
        double weight = how == Evidence.TOLD ? TOLD_WEIGHT : SEEN_WEIGHT;
        return new Reaction(answers + weight, logSeconds + weight * (expected + bounded));
    }

    /** From cue to act, with what was known before this session. */
    public Duration time(Duration prior) {
        return answers == 0 ? prior : Duration.ofMillis(Math.round(1000 * seconds(prior)));
    }

    private double seconds(Duration prior) {
        double before = StrictMath.log(Math.max(LEAST_SECONDS, prior.toMillis() / 1000.0));
        double mean = (PRIOR_WEIGHT * before + logSeconds) / (PRIOR_WEIGHT + answers);
        return Math.max(LEAST_SECONDS, Math.min(MOST_SECONDS, StrictMath.exp(mean)));
    }
}
