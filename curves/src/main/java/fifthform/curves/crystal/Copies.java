package fifthform.curves.crystal;

import java.util.Objects;

/**
 * Three copies of the model, which read the temperature 0.5 K lower, as it is, and 0.5 K higher: probe, mixing and the
 * butter's origin are each worth some tenths of a kelvin, and half a kelvin moves the seed by a factor of 2 to 3.4.
 *
 * @param lower the copy that reads 0.5 K less
 * @param middle the copy that reads what there is
 * @param higher the copy that reads 0.5 K more
 */
public record Copies(TwoNodes lower, TwoNodes middle, TwoNodes higher) {
    /** How far the outer copies read off, K. */
    public static final double SPREAD_KELVIN = 0.5;

    /** Stable seed below which a temper cannot be trusted, kg per kg of fat; a fence under the published 1 to 3 %. */
    public static final double LEAST_SEED = 0.005;

    /** Stable seed above which a bowl pours poorly, kg per kg of fat. */
    public static final double THICK_SEED = 0.06;

    public Copies {
        Objects.requireNonNull(lower, "lower");
        Objects.requireNonNull(middle, "middle");
        Objects.requireNonNull(higher, "higher");
    }

    /** All three begin alike. */
    public static Copies all(Crystals crystals) {
        TwoNodes nodes = TwoNodes.all(crystals);
        return new Copies(nodes, nodes, nodes);
    }

    /** One step without a wall of another temperature; temperatures beyond the model's range count as at its end. */
    public Copies step(Kinetics kinetics, double celsius, double shearPerSecond, double seconds) {
        return new Copies(
                lower.step(kinetics, Kinetics.within(celsius - SPREAD_KELVIN), shearPerSecond, seconds),
                middle.step(kinetics, Kinetics.within(celsius), shearPerSecond, seconds),
                higher.step(kinetics, Kinetics.within(celsius + SPREAD_KELVIN), shearPerSecond, seconds));
    }

    /** One step with a layer at the wall, {@code wallKelvin} warmer than the bulk. */
    public Copies step(Kinetics kinetics, double celsius, double wallKelvin, double shearPerSecond, double seconds) {
        return new Copies(
                lower.step(kinetics, Kinetics.within(celsius - SPREAD_KELVIN), wallKelvin, shearPerSecond, seconds),
                middle.step(kinetics, Kinetics.within(celsius), wallKelvin, shearPerSecond, seconds),
                higher.step(kinetics, Kinetics.within(celsius + SPREAD_KELVIN), wallKelvin, shearPerSecond, seconds));
    }

    /** The stable seed of the three. */
    public SeedRange seed(Kinetics kinetics) {
        return new SeedRange(
                lower.mean(kinetics).stableSeed(),
                middle.mean(kinetics).stableSeed(),
                higher.mean(kinetics).stableSeed());
    }
}
