package fifthform.curves.recipe;

import fifthform.curves.check.Parsed;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;
import java.util.Locale;

/**
 * Targets worked out from what a chocolate is made of.
 *
 * <p>Milk fat softens cocoa butter: with {@code x} the share of milk fat in all fat, working range, warning and
 * melt-out lie {@code dT = −8.5 · ln(1 / (1 − x))} K from those of plain dark, the cool range 0.7 dT; nothing else in the
 * recipe moves them. Source: this project's reference tables (a synthesis of published targets; the constant is good to
 * ±40 %), valid to x = 0.25 and refused above 0.30. Temperatures for melting, which milk solids limit, are those of the
 * nearest of the built-in kinds.
 */
public final class CompositionTargets {
    private static final double SHIFT_KELVIN = -8.5;
    private static final double COOL_SHARE_OF_SHIFT = 0.7;
    private static final double KNOWN_TO_FRACTION = 0.25;
    private static final double REFUSED_ABOVE_FRACTION = 0.30;

    // Plain dark, from which the others are moved: row "dark, recommended default" of the reference table of targets.
    private static final CelsiusRange DARK_COOL = new CelsiusRange(27, 28);
    private static final CelsiusRange DARK_WORK = new CelsiusRange(31, 32);
    private static final double DARK_WARN_CELSIUS = 32.5;
    private static final double DARK_MELT_OUT_CELSIUS = 33.8;
    private static final Duration MELT_HOLD = Duration.ofMinutes(5);
    private static final Duration COOL_HOLD = Duration.ofMinutes(6);

    /** How a kind of chocolate is melted: rows "recommended default" of the same table, baths as in the built-in recipes. */
    private enum Kind {
        DARK(0.00, new CelsiusRange(45, 50), 55, 45),
        DARK_MILK(0.10, new CelsiusRange(43, 47), 50, 43),
        MILK(0.17, new CelsiusRange(43, 45), 50, 42),
        WHITE(0.21, new CelsiusRange(40, 43), 50, 40);

        final double milkFatInFatFraction;
        final CelsiusRange melt;
        final double scorchCelsius;
        final double bathCelsius;

        Kind(double milkFatInFatFraction, CelsiusRange melt, double scorchCelsius, double bathCelsius) {
            this.milkFatInFatFraction = milkFatInFatFraction;
            this.melt = melt;
            this.scorchCelsius = scorchCelsius;
            this.bathCelsius = bathCelsius;
        }

        static Kind nearest(double milkFatInFatFraction) {
            Kind best = DARK;
            for (Kind kind : values()) {
                if (kind.away(milkFatInFatFraction) < best.away(milkFatInFatFraction)) best = kind;
            }
            return best;
        }

        private double away(double fraction) {
            return Math.abs(milkFatInFatFraction - fraction);
        }

        String words() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    private CompositionTargets() {}

    /**
     * A recipe for a chocolate given in % of its mass; what is missing to 100 % is other solids.
     *
     * @param id id of the new recipe
     * @param cocoaButterPercent all cocoa butter: that of the beans and any added, 0 to 100 %
     * @param milkFatPercent milk fat, 0 to 100 %
     * @param sugarPercent sugar, 0 to 100 %
     * @return the recipe, or why there is none
     */
    public static Parsed<Recipe> fromPercent(
            String id, double cocoaButterPercent, double milkFatPercent, double sugarPercent) {
        double sum = cocoaButterPercent + milkFatPercent + sugarPercent;
        boolean shares = cocoaButterPercent >= 0 && milkFatPercent >= 0 && sugarPercent >= 0 && sum <= 100;
        if (!shares) {
            return Parsed.refused(
                    "composition",
                    "Cocoa butter " + cocoaButterPercent + " %, milk fat " + milkFatPercent + " % and sugar "
                            + sugarPercent + " % are not shares of one chocolate.",
                    "Give each as 0 or more; together they make at most 100 %.");
        }
        return from(
                id,
                new Composition(
                        fraction(cocoaButterPercent),
                        fraction(milkFatPercent),
                        fraction(sugarPercent),
                        fraction(100 - sum)));
    }

    /** As {@link #fromPercent} for a composition that is known already. */
    public static Parsed<Recipe> from(String id, Composition composition) {
        double milkFat = composition.milkFatInFatFraction();
        if (composition.fatFraction() == 0) {
            return Parsed.refused(
                    "composition",
                    "There is no fat in it, so there is nothing to temper.",
                    "Give the cocoa butter, for example: --cocoa-butter 38");
        }
        if (milkFat > REFUSED_ABOVE_FRACTION) {
            return Parsed.refused(
                    "composition",
                    "Milk fat is " + percent(milkFat) + " % of all fat. Above 30 % the rule behind these targets does"
                            + " not hold, and such a chocolate may never set hard.",
                    "Use less milk fat or more cocoa butter, or write a recipe with targets of your own.");
        }
        return Parsed.accepted(recipe(id, composition, Kind.nearest(milkFat)));
    }

    /** How far milk fat moves the targets of plain dark, K; 0 or less. */
    static double shiftKelvin(double milkFatInFatFraction) {
        return SHIFT_KELVIN * StrictMath.log(1 / (1 - milkFatInFatFraction));
    }

    private static Recipe recipe(String id, Composition composition, Kind kind) {
        double milkFat = composition.milkFatInFatFraction();
        double shift = shiftKelvin(milkFat);
        String basis = "worked out from the composition: milk fat is " + percent(milkFat)
                + " % of the fat (rule good to plus or minus 40 %), melted as " + kind.words()
                + (milkFat > KNOWN_TO_FRACTION
                        ? "; beyond the 25 % for which the rule is known: try it with care"
                        : "");
        return new Recipe(
                id,
                "From its composition (" + percent(composition.fatFraction()) + " % fat)",
                composition,
                new PhaseTarget(kind.melt, MELT_HOLD),
                new PhaseTarget(moved(DARK_COOL, COOL_SHARE_OF_SHIFT * shift), COOL_HOLD),
                new PhaseTarget(moved(DARK_WORK, shift), Duration.ZERO),
                new MeltOut(tenths(DARK_WARN_CELSIUS + shift), tenths(DARK_MELT_OUT_CELSIUS + shift)),
                kind.scorchCelsius,
                kind.bathCelsius,
                basis,
                List.of());
    }

    private static CelsiusRange moved(CelsiusRange range, double kelvin) {
        return new CelsiusRange(tenths(range.lowCelsius() + kelvin), tenths(range.highCelsius() + kelvin));
    }

    /** A rule good to 40 % does not give hundredths. */
    private static double tenths(double celsius) {
        return new BigDecimal(celsius).setScale(1, RoundingMode.HALF_UP).doubleValue();
    }

    private static double fraction(double percent) {
        return RecipeQuantity.rounded(new BigDecimal(percent)).movePointLeft(2).doubleValue();
    }

    private static String percent(double fraction) {
        return RecipeQuantity.write(new BigDecimal(fraction).movePointRight(2).setScale(1, RoundingMode.HALF_UP));
    }
}
