package fifthform.curves.recipe;

import fifthform.curves.check.Problem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a maker puts into a chocolate, in % of its mass; what is missing to 100 % is other solids. Nothing is checked until
 * {@link #problems()} is asked.
 *
 * @param cacaoPercent nibs or cocoa mass, with their own butter
 * @param cacaoFatPercent fat of these, % of their mass
 * @param cocoaButterPercent cocoa butter, that of {@code cacaoPercent} left out
 * @param milkFatPercent milk fat
 * @param otherFatPercent any other fat
 * @param otherFat what that fat does; needed where there is any
 * @param sugarPercent sugar
 * @param lecithinPercent lecithin
 */
public record Ingredients(
        double cacaoPercent,
        double cacaoFatPercent,
        double cocoaButterPercent,
        double milkFatPercent,
        double otherFatPercent,
        Optional<OtherFat> otherFat,
        double sugarPercent,
        double lecithinPercent) {
    /** Fat of nibs, % of mass. From memory; beans differ by some points. */
    public static final double USUAL_CACAO_FAT_PERCENT = 54;

    /** Cocoa butter that cocoa mass may hold, %: Codex Stan 141-1983, from memory. */
    private static final double LEAST_CACAO_FAT_PERCENT = 47;

    private static final double MOST_CACAO_FAT_PERCENT = 60;

    /** Ten times the usual dose: a slip of the decimal point. Own choice. */
    private static final double MOST_LECITHIN_PERCENT = 3;

    /** All cocoa butter, milk fat and sugar only. */
    public static Ingredients plain(double cocoaButterPercent, double milkFatPercent, double sugarPercent) {
        return new Ingredients(
                0, USUAL_CACAO_FAT_PERCENT, cocoaButterPercent, milkFatPercent, 0, Optional.empty(), sugarPercent, 0);
    }

    /** Cacao and sugar and nothing else. */
    public static Ingredients twoOf(double cacaoPercent, double sugarPercent) {
        return new Ingredients(cacaoPercent, USUAL_CACAO_FAT_PERCENT, 0, 0, 0, Optional.empty(), sugarPercent, 0);
    }

    /** The same chocolate as far as a recipe's composition tells. */
    public static Ingredients of(Composition composition) {
        return plain(
                100 * composition.cocoaButterFraction(),
                100 * composition.milkFatFraction(),
                100 * composition.sugarFraction());
    }

    /** Whether it is cacao and sugar only, thicker than a dark with added butter or lecithin. */
    public boolean isTwoIngredientDark() {
        return cacaoPercent > 0
                && cocoaButterPercent == 0
                && milkFatPercent == 0
                && otherFatPercent == 0
                && lecithinPercent == 0
                && cacaoPercent + sugarPercent > 99;
    }

    /** All cocoa butter, that of the cacao too, % of mass. */
    public double allCocoaButterPercent() {
        return cocoaButterPercent + cacaoPercent * cacaoFatPercent / 100;
    }

    /** All fat, % of mass. */
    public double fatPercent() {
        return allCocoaButterPercent() + milkFatPercent + otherFatPercent;
    }

    /** Fats that dissolve cocoa butter, as a fraction of all fat; 0 where there is no fat. */
    public double softInFatFraction() {
        return fatPercent() == 0 ? 0 : softPercent() / fatPercent();
    }

    /** Other fat as a fraction of all fat; 0 where there is no fat. */
    double otherInFatFraction() {
        return fatPercent() == 0 ? 0 : otherFatPercent / fatPercent();
    }

    private double softPercent() {
        return milkFatPercent + (is(OtherFat.LIKE_BUTTER) ? 0 : otherFatPercent);
    }

    boolean is(OtherFat kind) {
        return otherFatPercent > 0 && otherFat.filter(kind::equals).isPresent();
    }

    /**
     * As a recipe holds it: fats that set like cocoa butter counted with it, soft ones with milk fat, lecithin among the
     * other solids.
     */
    Composition composition() {
        double soft = softPercent();
        double butter = fatPercent() - soft;
        return new Composition(
                fraction(butter), fraction(soft), fraction(sugarPercent), fraction(100 - butter - soft - sugarPercent));
    }

    /** Everything that cannot be. */
    List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        double[] shares = {
            cacaoPercent, cocoaButterPercent, milkFatPercent, otherFatPercent, sugarPercent, lecithinPercent
        };
        double sum = 0;
        for (double share : shares) {
            sum += share;
            if (!(share >= 0 && share <= 100)) return List.of(notShares());
        }
        // A hundredth over is a rounding of the label.
        if (sum > 100.01) {
            return List.of(problem(
                    "The shares make " + written(sum) + " % of the chocolate.",
                    "Together they make at most 100 %; what is missing is other solids. Butter of the cacao is counted"
                            + " with the cacao: as cocoa butter give what is added."));
        }
        if (!(cacaoFatPercent >= LEAST_CACAO_FAT_PERCENT && cacaoFatPercent <= MOST_CACAO_FAT_PERCENT)) {
            problems.add(problem(
                    "Cacao with " + written(cacaoFatPercent) + " % fat is no cocoa mass, which has 47 to 60 %.",
                    "Give nibs or mass as cacao; cocoa powder and butter count as other solids and cocoa butter."));
        }
        if (otherFatPercent > 0 && otherFat.isEmpty()) {
            problems.add(problem(
                    "What kind of other fat it is was not said.",
                    "Say one of: " + String.join(", ", OtherFat.words()) + "."));
        }
        if (lecithinPercent > MOST_LECITHIN_PERCENT) {
            problems.add(problem(
                    "Lecithin of " + written(lecithinPercent) + " % is ten times what chocolate takes.",
                    "It is given in % of the whole, usually 0.3 to 0.5."));
        }
        if (problems.isEmpty() && fatPercent() == 0) {
            problems.add(problem(
                    "There is no fat in it, so there is nothing to temper.",
                    "Give the cocoa butter, for example: --cocoa-butter 38"));
        }
        return problems;
    }

    private Problem notShares() {
        return problem(
                "Cacao " + written(cacaoPercent) + " %, cocoa butter " + written(cocoaButterPercent) + " %, milk fat "
                        + written(milkFatPercent) + " %, other fat " + written(otherFatPercent) + " %, sugar "
                        + written(sugarPercent) + " % and lecithin " + written(lecithinPercent)
                        + " % are not shares of one chocolate.",
                "Give each as 0 or more; together they make at most 100 %.");
    }

    private static Problem problem(String what, String whatToDo) {
        return new Problem("composition", what, whatToDo);
    }

    private static double fraction(double percent) {
        return RecipeQuantity.rounded(new BigDecimal(Math.max(0, percent)))
                .movePointLeft(2)
                .doubleValue();
    }

    static String written(double percent) {
        String text = String.format(Locale.ROOT, "%.2f", percent);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
