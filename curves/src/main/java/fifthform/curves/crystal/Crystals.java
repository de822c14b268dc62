package fifthform.curves.crystal;

import fifthform.curves.check.Require;

/**
 * What is solid in the fat, kg per kg of fat (not of chocolate).
 *
 * @param formTwo II, alpha; the model's A
 * @param formFour III and IV, beta prime; the model's B
 * @param formFive V, beta; the model's V
 * @param formSix VI; the model's S
 * @param seedMass what the dispersed form-V seeds weighed at birth, a measure of their number, at most
 *     {@code formFive} in any state that has been stepped; about 0.05 of it in ordinary temper; the model's N
 */
public record Crystals(double formTwo, double formFour, double formFive, double formSix, double seedMass) {
    /** Solid chocolate as it comes out of a wrapper. */
    public static final Crystals SOLID = new Crystals(0, 0, 0.75, 0, 0.003);

    /** Bars that bloomed: of the same solid a good half as form VI, which melts last. The share is assumed, no source. */
    static final Crystals BLOOMED = new Crystals(0, 0, 0.35, 0.40, 0.002);

    /** Melted without a trace. */
    public static final Crystals MELTED = new Crystals(0, 0, 0, 0, 0);

    public Crystals {
        Require.within(formTwo, 0, 1, "formTwo");
        Require.within(formFour, 0, 1, "formFour");
        Require.within(formFive, 0, 1, "formFive");
        Require.within(formSix, 0, 1, "formSix");
        Require.within(seedMass, 0, 1, "seedMass");
    }

    /** All that is solid, kg per kg of fat. */
    public double solids() {
        return formTwo + formFour + formFive + formSix;
    }

    /** The stable seed, V and VI, kg per kg of fat: what a temper lives on. */
    public double stableSeed() {
        return formFive + formSix;
    }

    /** What is liquid, kg per kg of fat. */
    public double melt() {
        return 1 - solids();
    }

    /** This share of one state with the rest of the other, by the mass of their fat. */
    Crystals mixed(Crystals other, double shareOfOther) {
        double rest = 1 - shareOfOther;
        return new Crystals(
                rest * formTwo + shareOfOther * other.formTwo,
                rest * formFour + shareOfOther * other.formFour,
                rest * formFive + shareOfOther * other.formFive,
                rest * formSix + shareOfOther * other.formSix,
                rest * seedMass + shareOfOther * other.seedMass);
    }
}
