package fifthform.curves.probecheck;

import fifthform.curves.check.Require;
import java.util.Objects;

/**
 * One part of the doubt that a check leaves at {@link Finding#WORK_CELSIUS}.
 *
 * @param standardKelvin standard uncertainty there, K, 0 to 20
 */
public record Part(Source source, double standardKelvin) {
    /** Where it comes from. */
    public enum Source {
        ICE_POINT("the ice point itself"),
        BOILING_POINT("the boiling point itself"),
        WIRE("slope of the wire, not seen by one point"),
        BETWEEN("curve between the two points"),
        CHIP("a converter that may take the wire's curve for straight"),
        JUNCTION("drift of the cold junction until the batch");

        private final String words;

        Source(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public Part {
        Objects.requireNonNull(source, "source");
        Require.within(standardKelvin, 0, 20, "standardKelvin");
    }
}
