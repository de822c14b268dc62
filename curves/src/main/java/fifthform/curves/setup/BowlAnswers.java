package fifthform.curves.setup;

import java.util.Objects;

/**
 * How a bowl answered cold water in earlier batches with the same amount, as far as it tells one bowl from another.
 *
 * @param turn natural logarithm of the time, s, from leaving the melting bath until it fell at most of its full rate
 * @param pull natural logarithm of its fall per kelvin above the water, 1/min, where a probe said how cold the water was
 * @param pullGuessed the same above water of the usual temperature, where no probe said it
 */
public record BowlAnswers(Usual turn, Usual pull, Usual pullGuessed) {
    /** A bowl that has not answered yet. */
    public static final BowlAnswers NONE = new BowlAnswers(Usual.NEVER, Usual.NEVER, Usual.NEVER);

    public BowlAnswers {
        Objects.requireNonNull(turn, "turn");
        Objects.requireNonNull(pull, "pull");
        Objects.requireNonNull(pullGuessed, "pullGuessed");
    }
}
