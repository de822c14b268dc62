package fifthform.curves.crystal;

import fifthform.curves.check.Require;
import java.util.OptionalDouble;

/**
 * What besides the temperature the crystals feel.
 *
 * @param wallKelvin how much warmer the layer at the wall is than the bulk, K; empty where nothing is known of it
 * @param shearPerSecond shear rate, 1/s: 0 at rest, 5 slow folding, 20 steady hand stirring, 50 hard (order of magnitude,
 *     no source)
 * @param assumed whether nobody said and nothing showed how it is stirred: then "enough" is not said
 */
public record Circumstances(OptionalDouble wallKelvin, double shearPerSecond, boolean assumed) {
    /** Shear of steady hand stirring, 1/s. */
    public static final double STIRRED_PER_SECOND = 20;

    /** No wall in the bowl of published temperings is further from its chocolate, K. */
    public static final double MOST_WALL_KELVIN = 10;

    public Circumstances {
        Require.within(wallKelvin, -MOST_WALL_KELVIN, MOST_WALL_KELVIN, "wallKelvin");
        Require.within(shearPerSecond, 0, 1000, "shearPerSecond");
    }

    /** No wall, this shear. */
    public static Circumstances withoutWall(double shearPerSecond) {
        return new Circumstances(OptionalDouble.empty(), shearPerSecond, false);
    }
}
