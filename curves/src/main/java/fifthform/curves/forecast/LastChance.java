package fifthform.curves.forecast;

import fifthform.curves.check.Require;

/**
 * The latest second at which lifting the bowl still keeps its turning point on this side of a limit, s from when the
 * forecast was made; negative once it has passed.
 *
 * @param cautiousSeconds for a turning point at the nearer edge of its 90 % band; at most {@code likelySeconds}
 * @param likelySeconds for one in the middle
 */
public record LastChance(double cautiousSeconds, double likelySeconds) {
    public LastChance {
        Require.finite(likelySeconds, "likelySeconds");
        Require.within(cautiousSeconds, -1e9, likelySeconds, "cautiousSeconds");
    }
}
