package fifthform.curves.crystal;

import fifthform.curves.check.Require;
import java.util.Objects;

/**
 * Tempered chocolate, or powder of form VI, that goes into the bowl. Both mix by the mass of their fat.
 *
 * @param shareOfFat the seed's fat in all fat afterwards, 0 to 1
 * @param crystals what is solid in the seed's fat
 */
public record AddedSeed(double shareOfFat, Crystals crystals) {
    /** In what shape seed comes, as the mass its crystals had at birth in what they weigh; assumed, no source. */
    public enum Shape {
        CHOPPED(0.004),
        GRATED(0.02),
        /** Left in temper in another bowl. */
        FROM_ANOTHER_BOWL(0.05),
        FINE_PASTE(0.1);

        private final double seedMassFraction;

        Shape(double seedMassFraction) {
            this.seedMassFraction = seedMassFraction;
        }

        double ofMass() {
            return seedMassFraction;
        }
    }

    public AddedSeed {
        Require.within(shareOfFat, 0, 1, "shareOfFat");
        Objects.requireNonNull(crystals, "crystals");
    }

    /**
     * Seed of the chocolate's own kind. Its temperature when it mixes is what the probe reads afterwards.
     *
     * @param seedGrams what goes in, above 0
     * @param bowlGrams what is in the bowl, above 0
     * @param seedCelsius temperature of the seed, 0 to 33 °C
     */
    public static AddedSeed chocolate(
            Kinetics kinetics, double seedGrams, double bowlGrams, double seedCelsius, Shape shape) {
        Require.within(seedGrams, Double.MIN_NORMAL, 1e6, "seedGrams");
        Require.within(bowlGrams, Double.MIN_NORMAL, 1e6, "bowlGrams");
        Require.within(seedCelsius, 0, 33, "seedCelsius");
        double five = kinetics.liquidus(Form.FIVE, seedCelsius);
        return new AddedSeed(
                seedGrams / (seedGrams + bowlGrams), new Crystals(0, 0, five, 0, shape.seedMassFraction * five));
    }

    /**
     * Powder of pure form VI.
     *
     * @param kilogramPerKilogramFat powder for each kg of the bowl's fat, above 0 and at most 0.2
     */
    public static AddedSeed formSixPowder(double kilogramPerKilogramFat) {
        double f = Require.within(kilogramPerKilogramFat, Double.MIN_NORMAL, 0.2, "kilogramPerKilogramFat");
        return new AddedSeed(f / (1 + f), new Crystals(0, 0, 0, 1, 0));
    }

    /** The bowl once it is mixed in. */
    Copies into(Copies copies) {
        return new Copies(into(copies.lower()), into(copies.middle()), into(copies.higher()));
    }

    private TwoNodes into(TwoNodes nodes) {
        return new TwoNodes(
                nodes.bulk().mixed(crystals, shareOfFat), nodes.wall().mixed(crystals, shareOfFat));
    }
}
