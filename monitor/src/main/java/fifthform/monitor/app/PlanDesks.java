package fifthform.monitor.app;

import fifthform.curves.plan.BatchPlan;
import fifthform.curves.plan.PlanKey;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.bowls.Bowls;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.json.Decimal;
import fifthform.monitor.plan.PlanDesk;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Units;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The form of a plan with all that is known to choose from, and what to type for watching it. */
final class PlanDesks {
    private PlanDesks() {}

    /** With this chocolate chosen, and this bowl, where one was said. */
    static PlanDesk of(Recipe first, Optional<Bowl> said, Folders folders, Units units, Bowls.Loaded bowls) {
        Map<String, Bowl> choices = new LinkedHashMap<>();
        said.ifPresent(bowl -> choices.put(bowl.id(), bowl));
        for (KeptBowl kept : bowls.bowls()) choices.putIfAbsent(kept.id(), kept.with(OptionalDouble.empty()));
        for (BowlMaterial material : BowlMaterial.values()) {
            if (material == BowlMaterial.UNKNOWN) continue;
            choices.putIfAbsent(
                    material.word(), new Bowl(material.word(), material, OptionalDouble.empty(), Optional.empty()));
        }
        List<Recipe> recipes = Stream.concat(
                        Stream.of(first),
                        Recipes.load(folders.recipes()).known().stream().map(KnownRecipe::recipe))
                .distinct()
                .toList();
        return new PlanDesk(
                recipes, List.copyOf(choices.values()), units, folders.data().resolve("cards"), LocalDate::now);
    }

    /** What the plan in the form hands on to the watching. */
    static String watchLine(PlanDesk desk) {
        BatchPlan plan = desk.plan().orElseThrow();
        return watchLine(
                plan,
                PlanKey.WARM_BATH,
                Optional.of(desk.bowl().id()),
                plan.request().recipe().id());
    }

    /** What a plan hands on to the watching; one stay over the bath, since that is what the times are for. */
    static String watchLine(BatchPlan plan, PlanKey bath, Optional<String> bowlName, String chocolate) {
        StringBuilder line = new StringBuilder("monitor/run watch --chocolate ")
                .append(chocolate)
                .append(" --amount ")
                .append(Math.round(plan.request().grams()));
        bowlName.ifPresent(name -> line.append(" --bowl ").append(name.contains(" ") ? "\"" + name + "\"" : name));
        return line.append(" --bath ")
                .append(Decimal.of(plan.value(bath), 1))
                .append(bath == PlanKey.WARM_BATH ? " --lift one" : "")
                .toString();
    }
}
