package fifthform.curves.recipe;

import static fifthform.curves.recipe.Ingredients.written;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.recipe.WorkedTargets.Worked;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Targets worked out from what a chocolate is made of.
 *
 * <p>Milk fat, and any fat that is soft in the kitchen, softens cocoa butter: with {@code x} their share in all fat, working
 * range, warning and melt-out lie {@code dT = −8.5 · ln(1 / (1 − x))} K from those of plain dark, the cool range 0.7 dT;
 * nothing else in the recipe moves them. Source: this project's reference tables (a synthesis of published targets; the
 * constant is good to ±40 %), valid to x = 0.25 and refused above 0.30. Temperatures for melting, which milk solids limit,
 * are those of the nearest of the built-in kinds. Cacao and sugar alone are thicker: half a kelvin more, from memory.
 */
public final class CompositionTargets {
    private static final double SHIFT_KELVIN = -8.5;
    private static final double COOL_SHARE_OF_SHIFT = 0.7;
    private static final double SHIFT_GOOD_TO = 0.4;
    private static final double KNOWN_TO_FRACTION = 0.25;
    private static final double REFUSED_ABOVE_FRACTION = 0.30;

    /** From here on a fat of coconut or palm kernel is the coating's own fat. Own choice. */
    private static final double COMPOUND_FROM_FRACTION = 0.5;

    /** Up to here such a fat only softens. Common practice, no source. */
    private static final double LAURIC_TO_FRACTION = 0.05;

    // Plain dark, from which the others are moved: row "dark, recommended default" of the reference table of targets.
    private static final CelsiusRange DARK_COOL = new CelsiusRange(27, 28);
    private static final CelsiusRange DARK_WORK = new CelsiusRange(31, 32);
    private static final double DARK_WARN_CELSIUS = 32.5;
    private static final double DARK_MELT_OUT_CELSIUS = 33.8;

    // Row "two-ingredient dark" of the same table: trade practice from memory, low confidence.
    private static final double THICK_KELVIN = 0.5;
    private static final double THICK_WARN_KELVIN = 0.3;

    private static final Duration MELT_HOLD = Duration.ofMinutes(5);
    private static final Duration COOL_HOLD = Duration.ofMinutes(6);

    private final Ingredients of;
    private final ChocolateKind kind;
    private final double shift;

    private CompositionTargets(Ingredients of) {
        this.of = of;
        kind = ChocolateKind.nearest(of.softInFatFraction());
        shift = shiftKelvin(of.softInFatFraction());
    }

    /**
     * A recipe with the source, band and rule of each target.
     *
     * @param id id of the new recipe: lower-case letters, digits, hyphens
     * @return the targets, or why there are none
     */
    public static Parsed<WorkedTargets> of(String id, Ingredients ingredients) {
        List<Problem> problems = new ArrayList<>(ingredients.problems());
        if (problems.isEmpty()) outsideTheRule(ingredients).ifPresent(problems::add);
        if (!RecipeText.isId(id)) problems.add(RecipeText.notAnId("id", id));
        return problems.isEmpty()
                ? Parsed.accepted(new CompositionTargets(ingredients).worked(id))
                : Parsed.refused(problems);
    }

    /** How far soft fat moves the targets of plain dark, K; 0 or less. */
    static double shiftKelvin(double softInFatFraction) {
        return SHIFT_KELVIN * StrictMath.log(1 / (1 - softInFatFraction));
    }

    private static Optional<Problem> outsideTheRule(Ingredients of) {
        double soft = of.softInFatFraction();
        if (of.is(OtherFat.LAURIC) && of.otherInFatFraction() >= COMPOUND_FROM_FRACTION) {
            return problem(
                    "Most of its fat is coconut or palm-kernel fat. A compound coating of that kind needs no tempering:"
                            + " its fat has one form that sets by itself.",
                    "Melt it at 40 to 45 °C, use it, let it set in the cool (common practice, no source); its pack"
                            + " comes first.");
        }
        if (of.is(OtherFat.LAURIC) && of.otherInFatFraction() > LAURIC_TO_FRACTION) {
            return problem(
                    "Coconut or palm-kernel fat is " + percent(of.otherInFatFraction())
                            + " % of the fat. Above 5 % the two fats do not set together: such a mixture stays soft and"
                            + " blooms, tempered or not.",
                    "Use cocoa butter, or a coating whose fat is all of that kind.");
        }
        if (soft > REFUSED_ABOVE_FRACTION) {
            return problem(
                    (of.otherFatPercent() > 0 ? "Milk fat and soft fat are " : "Milk fat is ") + percent(soft)
                            + " % of all fat. Above 30 % the rule behind these targets does not hold, and such a"
                            + " chocolate may never set hard.",
                    "Use less of it or more cocoa butter, or write a recipe with targets of your own.");
        }
        return Optional.empty();
    }

    private static Optional<Problem> problem(String what, String whatToDo) {
        return Optional.of(new Problem("composition", what, whatToDo));
    }

    private WorkedTargets worked(String id) {
        boolean thick = of.isTwoIngredientDark();
        double more = thick ? THICK_KELVIN : 0;
        CelsiusRange cool = moved(DARK_COOL, COOL_SHARE_OF_SHIFT * shift + more);
        CelsiusRange work = moved(DARK_WORK, shift + more);
        double warn = tenths(DARK_WARN_CELSIUS + shift + (thick ? THICK_WARN_KELVIN : 0));
        double meltOut = tenths(DARK_MELT_OUT_CELSIUS + shift);
        List<Worked> targets = List.of(
                printed(Target.MELT, kind.melt, 0, "melted as " + kind.words() + ": milk solids thicken when hot"),
                printed(Target.COOL, cool, COOL_SHARE_OF_SHIFT, rule("27 to 28", "0.7 · ", more)),
                printed(Target.WORK, work, 1, rule("31 to 32", "", more)),
                chosen(
                        Target.WARN,
                        warn,
                        "own choice: between the working range and the guard 0.8 K below melt-out",
                        rule("32.5", "", thick ? THICK_WARN_KELVIN : 0)),
                meltOut(meltOut),
                chosen(Target.SCORCH, kind.scorchCelsius, scorchSource(), "as " + kind.words()),
                chosen(
                        Target.BATH,
                        kind.bathCelsius,
                        "own choice: hotter water stores more heat in the bowl's wall than the way to melt-out can take",
                        "as " + kind.words()));
        Recipe recipe = new Recipe(
                id,
                name(),
                of.composition(),
                new PhaseTarget(kind.melt, MELT_HOLD),
                new PhaseTarget(cool, COOL_HOLD),
                new PhaseTarget(work, Duration.ZERO),
                new MeltOut(warn, meltOut),
                kind.scorchCelsius,
                kind.bathCelsius,
                basis(),
                new CompositionSources(of).with(targets));
        return new WorkedTargets(recipe, targets, CompositionWarnings.of(of));
    }

    private String name() {
        return of.isTwoIngredientDark()
                ? "Two-ingredient dark, " + written(of.cacaoPercent()) + " % cacao"
                : "From its composition (" + percent(of.fatPercent() / 100) + " % fat)";
    }

    private String basis() {
        String soft = of.otherFatPercent() > 0 ? "milk fat and soft fat are " : "milk fat is ";
        double x = of.softInFatFraction();
        return "worked out from the composition: " + soft + percent(x)
                + " % of the fat (rule good to plus or minus 40 %), melted as " + kind.words()
                + (of.isTwoIngredientDark() ? "; upper half, for cacao and sugar alone are thicker" : "")
                + (x > KNOWN_TO_FRACTION ? "; beyond the 25 % for which the rule is known: try it with care" : "");
    }

    private String rule(String dark, String share, double more) {
        String moved = "dark's " + dark + " °C + " + share + "dT, dT = -8.5 ln(1/(1 - x)) = "
                + String.format(Locale.ROOT, "%.2f", shift + 0.0) + " K, x = " + percent(of.softInFatFraction())
                + " % soft in the fat";
        return more > 0 ? moved + "; + " + Printed.bare(more) + " K, for it is thicker" : moved;
    }

    /** Prints of this kind, and how far the rule's own constant may be off. */
    private Worked printed(Target target, CelsiusRange range, double shareOfShift, String why) {
        List<Printed> prints = Printed.of(target, kind.printedAs);
        double off = SHIFT_GOOD_TO * Math.abs(shareOfShift * shift);
        CelsiusRange band = joined(
                Printed.spread(prints).orElseThrow(),
                new CelsiusRange(range.lowCelsius() - off, range.highCelsius() + off));
        String thick = of.isTwoIngredientDark() && shareOfShift > 0
                ? "; half a kelvin more for cacao and sugar: trade practice from memory, low confidence"
                : "";
        return new Worked(
                target,
                range.lowCelsius(),
                range.highCelsius(),
                Optional.of(band),
                "printed for " + String.join(" and ", kind.printedAs) + ": " + Printed.words(prints) + thick,
                why);
    }

    private Worked meltOut(double celsius) {
        List<Printed> prints = Printed.of(Target.MELT_OUT, List.of("dark"));
        CelsiusRange formV = Printed.spread(prints).orElseThrow();
        CelsiusRange band = new CelsiusRange(
                tenths(formV.lowCelsius() + (1 + SHIFT_GOOD_TO) * shift),
                tenths(formV.highCelsius() + (1 - SHIFT_GOOD_TO) * shift));
        return new Worked(
                Target.MELT_OUT,
                celsius,
                celsius,
                Optional.of(band),
                "form V of cocoa butter melts at: " + Printed.words(prints)
                        + (shift < 0 ? "; moved by the milk-fat rule" : ""),
                rule("33.8", "", 0));
    }

    private String scorchSource() {
        return kind == ChocolateKind.DARK
                ? "top of the published melting range 50-55 (published chocolate cookbook)"
                : "never above 50 (published chocolate cookbook)";
    }

    private static Worked chosen(Target target, double celsius, String source, String why) {
        return new Worked(target, celsius, celsius, Optional.empty(), source, why);
    }

    private static CelsiusRange joined(CelsiusRange a, CelsiusRange b) {
        return new CelsiusRange(
                tenths(Math.min(a.lowCelsius(), b.lowCelsius())), tenths(Math.max(a.highCelsius(), b.highCelsius())));
    }

    private static CelsiusRange moved(CelsiusRange range, double kelvin) {
        return new CelsiusRange(tenths(range.lowCelsius() + kelvin), tenths(range.highCelsius() + kelvin));
    }

    /** A rule good to 40 % does not give hundredths. */
    private static double tenths(double celsius) {
        return new BigDecimal(celsius).setScale(1, RoundingMode.HALF_UP).doubleValue();
    }

    static String percent(double fraction) {
        return RecipeQuantity.write(new BigDecimal(fraction).movePointRight(2).setScale(1, RoundingMode.HALF_UP));
    }
}
