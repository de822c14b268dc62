package fifthform.monitor.app;

import fifthform.curves.recipe.CompositionTargets;
import fifthform.curves.recipe.Ingredients;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.WorkedTargets;
import fifthform.curves.recipe.WorkedTargets.Worked;
import fifthform.monitor.json.Decimal;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.texts.LearnText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far published targets agree, as remarks of a recipe file and as lines for scripts. */
final class TargetLines {
    private final Optional<WorkedTargets> worked;

    /** Of a recipe as it stands: what is printed for such a composition. */
    TargetLines(Recipe recipe) {
        worked = CompositionTargets.of(recipe.id(), Ingredients.of(recipe.composition()))
                .fold(Optional::of, problems -> Optional.empty());
    }

    TargetLines(WorkedTargets worked) {
        this.worked = Optional.of(worked);
    }

    /** Remarks, so that what is printed stays a recipe file. */
    List<String> remarks(boolean why) {
        List<String> lines = new ArrayList<>();
        if (worked.isEmpty()) return lines;
        lines.add("");
        lines.add(LearnText.WHERE_SOURCES_AND_THE_RULE_FOR.say());
        for (Worked target : worked.get().targets()) {
            target.band()
                    .ifPresent(band -> lines.add(LearnText.TO_C.say(
                            target.target().word(),
                            Decimal.of(band.lowCelsius(), 1),
                            Decimal.of(band.highCelsius(), 1))));
        }
        if (!why) return lines;
        lines.add(LearnText.WHY.say());
        for (Worked target : worked.get().targets()) {
            lines.add("#   " + target.target().word() + ": " + target.why());
            lines.add("#     " + target.source());
        }
        return lines;
    }

    /** A line a target, °C. */
    List<String> json() {
        List<String> lines = new ArrayList<>();
        for (Worked target : worked.map(WorkedTargets::targets).orElse(List.of())) {
            JsonLine line = new JsonLine()
                    .text("target", target.target().word())
                    .number("worked_low_c", target.lowCelsius())
                    .number("worked_high_c", target.highCelsius());
            target.band()
                    .ifPresent(band ->
                            line.number("band_low_c", band.lowCelsius()).number("band_high_c", band.highCelsius()));
            lines.add(line.text("source", target.source())
                    .text("why", target.why())
                    .end());
        }
        return lines;
    }
}
