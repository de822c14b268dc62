package fifthform.curves.bowlcheck;

import fifthform.curves.setup.BowlAnswers;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * How the bowl answered cold water in this batch; empty where it was not seen.
 *
 * @param turn as in {@link BowlAnswers#turn}
 * @param pull as in {@link BowlAnswers#pull}
 * @param pullGuessed as in {@link BowlAnswers#pullGuessed}
 */
public record Answer(OptionalDouble turn, OptionalDouble pull, OptionalDouble pullGuessed) {
    static final Answer NONE = new Answer(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    public Answer {
        Objects.requireNonNull(turn, "turn");
        Objects.requireNonNull(pull, "pull");
        Objects.requireNonNull(pullGuessed, "pullGuessed");
    }

    /** What the next batch is told. */
    BowlAnswers after(BowlAnswers before) {
        return new BowlAnswers(
                turn.isPresent() ? before.turn().and(turn.getAsDouble()) : before.turn(),
                pull.isPresent() ? before.pull().and(pull.getAsDouble()) : before.pull(),
                pullGuessed.isPresent() ? before.pullGuessed().and(pullGuessed.getAsDouble()) : before.pullGuessed());
    }
}
