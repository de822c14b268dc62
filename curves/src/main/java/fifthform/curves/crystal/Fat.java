package fifthform.curves.crystal;

import fifthform.curves.check.Parsed;
import fifthform.curves.recipe.Composition;

/**
 * What of a chocolate's composition its crystals feel.
 *
 * @param milkFatInFatFraction milk fat in all fat, 0 to 0.30 (known to 0.25)
 * @param fatFraction fat in the chocolate, 0.2 to 0.7
 */
public record Fat(double milkFatInFatFraction, double fatFraction) {
    /** More milk fat than this, and the rules for its effect do not hold. */
    public static final double MOST_MILK_FAT = 0.30;

    private static final double LEAST_FAT = 0.2;
    private static final double MOST_FAT = 0.7;

    public Fat {
        if (!(milkFatInFatFraction >= 0 && milkFatInFatFraction <= MOST_MILK_FAT)) {
            throw new IllegalArgumentException(milkFatMessage(milkFatInFatFraction));
        }
        if (!(fatFraction >= LEAST_FAT && fatFraction <= MOST_FAT)) {
            throw new IllegalArgumentException(fatMessage(fatFraction));
        }
    }

    /** Plain dark with 32 % fat, for which the model was made. */
    public static final Fat DARK = new Fat(0, 0.32);

    /** The fat of a composition, or why its crystals cannot be followed. */
    public static Parsed<Fat> of(Composition composition) {
        double milkFat = composition.milkFatInFatFraction();
        double fat = composition.fatFraction();
        if (!(milkFat >= 0 && milkFat <= MOST_MILK_FAT)) {
            return Parsed.refused(
                    "milk fat",
                    milkFatMessage(milkFat),
                    "Judge the temper on a sample; the temperatures of the recipe still hold.");
        }
        if (!(fat >= LEAST_FAT && fat <= MOST_FAT)) {
            return Parsed.refused(
                    "fat",
                    fatMessage(fat),
                    "Check the composition in the recipe: cocoa butter and milk fat are shares of the whole chocolate.");
        }
        return Parsed.accepted(new Fat(milkFat, fat));
    }

    private static String milkFatMessage(double fraction) {
        return "Milk fat is " + percent(fraction) + " % of all fat; the crystal model holds from 0 to 30 %.";
    }

    private static String fatMessage(double fraction) {
        return "Fat is " + percent(fraction) + " % of the chocolate; the crystal model holds from 20 to 70 %.";
    }

    private static String percent(double fraction) {
        return Double.isFinite(fraction) ? String.valueOf(Math.round(fraction * 1000) / 10.0) : "not a number of";
    }
}
