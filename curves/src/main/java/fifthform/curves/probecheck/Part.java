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
        /** The ice point itself. */
        ICE_POINT,
        /** The boiling point itself. */
        BOILING_POINT,
        /** The slope of the wire, which one point does not show. */
        WIRE,
        /** The curve between the two points. */
        BETWEEN,
        /** A converter that may take the wire's curve for straight. */
        CHIP,
        /** What the cold junction drifts until the batch. */
        JUNCTION
    }

    public Part {
        Objects.requireNonNull(source, "source");
        Require.within(standardKelvin, 0, 20, "standardKelvin");
    }
}
