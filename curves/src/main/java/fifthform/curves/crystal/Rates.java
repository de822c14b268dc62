package fifthform.curves.crystal;

/**
 * How fast the crystals change, per second, in kg per kg of fat.
 *
 * @param formTwo of II
 * @param formFour of IV
 * @param formFive of V
 * @param formSix of VI
 * @param seedMass of the seeds' mass at birth
 * @param crystallising what leaves the melt for any form, less what returns to it; steps from form to form are not in it
 */
public record Rates(
        double formTwo, double formFour, double formFive, double formSix, double seedMass, double crystallising) {}
