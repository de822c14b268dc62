package fifthform.curves.recipe;

import static fifthform.curves.recipe.Ingredients.written;

import java.util.ArrayList;
import java.util.List;

/** What the rule behind the targets cannot carry. Limits are common practice without a source where none is named. */
final class CompositionWarnings {
    private static final double KNOWN_TO_FRACTION = 0.25;
    private static final double LEAST_FAT_PERCENT = 25;
    private static final double MOST_FAT_PERCENT = 60;

    /** From memory: Beckett ed., Industrial Chocolate Manufacture and Use. */
    private static final double LECITHIN_THINS_TO_PERCENT = 0.5;

    /** Directive 2000/36/EC, from memory. */
    private static final double OTHER_FAT_IN_CHOCOLATE_PERCENT = 5;

    private CompositionWarnings() {}

    static List<String> of(Ingredients of) {
        List<String> warnings = new ArrayList<>();
        if (of.softInFatFraction() > KNOWN_TO_FRACTION) {
            warnings.add(
                    "Over 25 % of its fat is soft: the rule is not known there, and it sets slowly and stays soft.");
        }
        if (of.is(OtherFat.SOFT)) {
            warnings.add("The other fat is reckoned like milk fat; oils differ, so make a small batch first.");
        }
        if (of.is(OtherFat.LAURIC)) {
            warnings.add(
                    "Coconut or palm-kernel fat sets badly with cocoa butter even at this share: expect it softer.");
        }
        if (of.is(OtherFat.LIKE_BUTTER)) {
            warnings.add("The other fat is reckoned as cocoa butter; where its maker gives temperatures, those count.");
        }
        if (of.otherFatPercent() > OTHER_FAT_IN_CHOCOLATE_PERCENT) {
            warnings.add(
                    "Over 5 % other fat: in the EU it may not be sold as chocolate (from memory; ask your food law).");
        }
        if (of.fatPercent() < LEAST_FAT_PERCENT) {
            warnings.add("With " + written(of.fatPercent())
                    + " % fat it hardly flows by hand; the temperatures are the same.");
        } else if (of.fatPercent() > MOST_FAT_PERCENT) {
            warnings.add("With " + written(of.fatPercent())
                    + " % fat it is thin and gives more heat when it sets; the temperatures are the same.");
        }
        if (of.lecithinPercent() > LECITHIN_THINS_TO_PERCENT) {
            warnings.add("Lecithin thins up to about 0.5 % and thickens again above; it moves no temperature.");
        }
        if (of.isTwoIngredientDark()) {
            warnings.add(
                    "Without added butter or lecithin it is thick: the targets are half a kelvin up, as the trade does"
                            + " it (from memory). Beans differ: 47 to 60 % fat is seen.");
        }
        return warnings;
    }
}
