package fifthform.monitor.settings;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the last real batch was begun; practice is not remembered.
 *
 * @param probe port of the bowl's probe
 * @param chocolate id of its recipe
 * @param bowl its name, where it had one
 * @param grams chocolate in the bowl, where it was said
 */
public record LastStart(
        Optional<String> probe, Optional<String> chocolate, Optional<String> bowl, OptionalDouble grams) {
    /** No batch yet. */
    public static final LastStart NONE =
            new LastStart(Optional.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty());

    public LastStart {
        Objects.requireNonNull(probe, "probe");
        Objects.requireNonNull(chocolate, "chocolate");
        Objects.requireNonNull(bowl, "bowl");
        Objects.requireNonNull(grams, "grams");
    }

    LastStart withProbe(Optional<String> other) {
        return new LastStart(other, chocolate, bowl, grams);
    }

    LastStart withChocolate(Optional<String> other) {
        return new LastStart(probe, other, bowl, grams);
    }

    /** Whether a batch can be begun as this one was. */
    public boolean isKnown() {
        return probe.isPresent() && chocolate.isPresent();
    }
}
