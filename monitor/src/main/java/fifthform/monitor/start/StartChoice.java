package fifthform.monitor.start;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the maker chose to begin with.
 *
 * @param chocolate id of the recipe
 * @param bowl its name; empty for one that nothing is kept of
 * @param grams chocolate in the bowl, where it was said
 * @param port where the bowl's probe is; empty for practice
 */
public record StartChoice(
        Way way, String chocolate, Optional<String> bowl, OptionalDouble grams, Optional<String> port) {
    /** What is watched. */
    public enum Way {
        /** A real bowl, by the probe on this port. */
        PROBE,
        /** A real bowl as the last one was, wherever its probe is plugged in now. */
        AS_LAST,
        /** The batch that was cut off. */
        GO_ON,
        /** An invented bowl in the hands of a simulated maker. */
        PRACTICE,
        /** An invented bowl in the maker's own hands. */
        OWN_HANDS
    }

    public StartChoice {
        Objects.requireNonNull(way, "way");
        Objects.requireNonNull(chocolate, "chocolate");
        Objects.requireNonNull(bowl, "bowl");
        Objects.requireNonNull(grams, "grams");
        Objects.requireNonNull(port, "port");
        if ((way == Way.PROBE) != port.isPresent())
            throw new IllegalArgumentException("a port belongs to a real bowl and to nothing else, was " + port);
    }
}
