package fifthform.curves.recipe;

import fifthform.curves.check.Problem;
import fifthform.curves.recipe.WorkedTargets.Worked;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether a maker's own targets make sense for what the chocolate is made of. Own targets are allowed; what lies outside of
 * all that is printed is said. The order of the values is checked where a recipe is read.
 */
public final class TargetSense {
    /** A tenth over the printed end is rounding. */
    private static final double ROUNDING_KELVIN = 0.05;

    private TargetSense() {}

    /** What should be looked at, whole sentences; empty where all lies within what is printed. */
    public static List<String> remarks(Recipe recipe) {
        return CompositionTargets.of(recipe.id(), Ingredients.of(recipe.composition()))
                .fold(
                        worked -> against(recipe, worked),
                        problems -> problems.stream().map(Problem::what).toList());
    }

    private static List<String> against(Recipe recipe, WorkedTargets worked) {
        List<String> remarks = new ArrayList<>();
        for (Worked target : worked.targets()) {
            target.band().ifPresent(band -> {
                double low = target.target().lowOf(recipe);
                double high = target.target().highOf(recipe);
                boolean above = high > band.highCelsius() + ROUNDING_KELVIN;
                if (!above && low >= band.lowCelsius() - ROUNDING_KELVIN) return;
                remarks.add(target.target().word() + " " + Printed.bare(low)
                        + (low == high ? "" : " to " + Printed.bare(high)) + " °C lies " + (above ? "above" : "below")
                        + " everything printed for such a chocolate, " + Printed.bare(band.lowCelsius()) + " to "
                        + Printed.bare(band.highCelsius()) + " °C." + consequence(target.target(), above));
            });
        }
        return remarks;
    }

    private static String consequence(Target target, boolean above) {
        return switch (target) {
            case MELT -> above ? " Mind scorching." : " Old crystals may be left.";
            case COOL -> above ? " Few crystals will form." : " It thickens quickly there.";
            case WORK -> above ? " Form V may melt while you pour." : " Form IV may be left.";
            case MELT_OUT -> above ? " The alarm would come after the crystals are gone." : " Alarms will ring early.";
            case WARN, SCORCH, BATH -> "";
        };
    }
}
