package fifthform.curves.crystal;

/**
 * What is taken to be in chocolate that its maker says is in temper. Nobody saw it made, so the three copies begin far
 * apart: the word is doubtful until even the least favourable one has enough, or a sample shows it. The figures are our own
 * choice.
 */
final class KeptTemper {
    /** Below this it comes as bars, above it as a pourable mass from an earlier pour, °C less the milk fat's shift. */
    private static final double POURABLE_CELSIUS = 27;

    /** A pour that was kept warm: stable seed of a thick, of a good and of a hardly tempered one, kg per kg of fat. */
    private static final double MOST = 0.06;

    private static final double USUAL = 0.02;
    private static final double LEAST = 0.003;

    /** Small crystals, left in temper in another bowl. */
    private static final double SEED_MASS = AddedSeed.Shape.FROM_ANOTHER_BOWL.ofMass();

    private static final double BAR_SEED_MASS = AddedSeed.Shape.CHOPPED.ofMass();

    private KeptTemper() {}

    /** As it is found at this temperature, °C. */
    static Copies at(Kinetics kinetics, double celsius) {
        double here = Kinetics.within(celsius);
        double most = kinetics.liquidus(Form.FIVE, here);
        if (here < POURABLE_CELSIUS + kinetics.shiftKelvin()) {
            double solid = Math.min(Crystals.SOLID.formFive(), most);
            Crystals good = new Crystals(0, 0, solid, 0, BAR_SEED_MASS * solid);
            // Bars that were never well tempered are as hard and nearly as glossy: all but a trace of form IV.
            Crystals poor = new Crystals(0, solid - LEAST, LEAST, 0, SEED_MASS * LEAST);
            return new Copies(TwoNodes.all(good), TwoNodes.all(good), TwoNodes.all(poor));
        }
        return new Copies(kept(MOST, most), kept(USUAL, most), kept(LEAST, most));
    }

    private static TwoNodes kept(double wanted, double most) {
        double five = Math.min(wanted, most);
        return TwoNodes.all(new Crystals(0, 0, five, 0, SEED_MASS * five));
    }

    /** Once a sample was in temper: no copy has less than the best guess. */
    static Copies proved(Copies copies) {
        double middle = copies.middle().bulk().stableSeed();
        return new Copies(
                copies.lower().bulk().stableSeed() < middle ? copies.middle() : copies.lower(),
                copies.middle(),
                copies.higher().bulk().stableSeed() < middle ? copies.middle() : copies.higher());
    }
}
