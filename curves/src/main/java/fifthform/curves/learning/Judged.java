package fifthform.curves.learning;

import java.util.Objects;
import java.util.Optional;

/**
 * What a batch's looks say together.
 *
 * @param outcome how the bars came out; empty where the looks do not say
 * @param leftOut why not, where they do not
 */
public record Judged(Optional<Outcome> outcome, Optional<LeftOut> leftOut) {
    public Judged {
        Objects.requireNonNull(outcome, "outcome");
        Objects.requireNonNull(leftOut, "leftOut");
        if (outcome.isPresent() == leftOut.isPresent()) {
            throw new IllegalArgumentException("either an outcome or why there is none");
        }
    }

    static Judged in(Outcome outcome) {
        return new Judged(Optional.of(outcome), Optional.empty());
    }

    static Judged out(LeftOut why) {
        return new Judged(Optional.empty(), Optional.of(why));
    }
}
