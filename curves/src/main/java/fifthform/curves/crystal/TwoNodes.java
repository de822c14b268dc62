package fifthform.curves.crystal;

import java.util.Objects;

/**
 * The crystals of a bowl in two places: the bulk, and a layer at the wall (5 % of the mass), which is colder while the
 * bowl cools and warmer while it rewarms. The first crystals are made there, and stirring carries them into the bulk.
 *
 * @param bulk what is in the bulk
 * @param wall what is in the layer; the same as the bulk while no wall is known
 */
public record TwoNodes(Crystals bulk, Crystals wall) {
    public TwoNodes {
        Objects.requireNonNull(bulk, "bulk");
        Objects.requireNonNull(wall, "wall");
    }

    /** The same everywhere. */
    public static TwoNodes all(Crystals crystals) {
        return new TwoNodes(crystals, crystals);
    }

    /** The bowl stirred together: the mean by mass. */
    public Crystals mean(Kinetics kinetics) {
        return bulk.equals(wall) ? bulk : bulk.mixed(wall, kinetics.wallShare());
    }

    /** One second, or as many as said, without a wall of another temperature: the layer is as the rest. */
    public TwoNodes step(Kinetics kinetics, double celsius, double shearPerSecond, double seconds) {
        return all(kinetics.step(mean(kinetics), celsius, shearPerSecond, seconds));
    }

    /**
     * As {@link #step(Kinetics, double, double, double)} with a layer at the wall that is {@code wallKelvin} warmer than
     * the bulk. The layer changes places with the rest three times a minute (assumed, as its mass is).
     */
    public TwoNodes step(Kinetics kinetics, double celsius, double wallKelvin, double shearPerSecond, double seconds) {
        Rates inBulk = kinetics.rates(bulk, celsius, shearPerSecond);
        Rates atWall = kinetics.rates(wall, Kinetics.within(celsius + wallKelvin), shearPerSecond);
        double toWall = kinetics.wallExchangePerSecond();
        double toBulk = toWall * kinetics.wallShare() / (1 - kinetics.wallShare());
        return new TwoNodes(
                kinetics.after(bulk, exchanged(inBulk, bulk, wall, toBulk), seconds),
                kinetics.after(wall, exchanged(atWall, wall, bulk, toWall), seconds));
    }

    private static Rates exchanged(Rates r, Crystals here, Crystals there, double perSecond) {
        return new Rates(
                r.formTwo() + perSecond * (there.formTwo() - here.formTwo()),
                r.formFour() + perSecond * (there.formFour() - here.formFour()),
                r.formFive() + perSecond * (there.formFive() - here.formFive()),
                r.formSix() + perSecond * (there.formSix() - here.formSix()),
                r.seedMass() + perSecond * (there.seedMass() - here.seedMass()),
                r.crystallising());
    }
}
