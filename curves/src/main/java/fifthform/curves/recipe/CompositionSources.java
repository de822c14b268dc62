package fifthform.curves.recipe;

import static fifthform.curves.recipe.Ingredients.written;

import fifthform.curves.recipe.WorkedTargets.Worked;
import java.util.ArrayList;
import java.util.List;

/** What stands behind each value of a recipe that was worked out from a composition. */
final class CompositionSources {
    private static final String SAID = "as you said";

    private final Ingredients of;

    CompositionSources(Ingredients of) {
        this.of = of;
    }

    List<Source> with(List<Worked> targets) {
        List<Source> sources = new ArrayList<>();
        sources.add(source(RecipeKey.COCOA_BUTTER, butter()));
        sources.add(source(RecipeKey.MILK_FAT, milkFat()));
        sources.add(source(RecipeKey.SUGAR, SAID));
        sources.add(source(RecipeKey.OTHER_SOLIDS, solids()));
        for (Worked worked : targets) {
            sources.add(source(worked.target().low, worked.source()));
            if (worked.target().high != worked.target().low) {
                sources.add(
                        source(worked.target().high, "as " + worked.target().low.word()));
            }
            if (worked.target() == Target.MELT) {
                sources.add(source(RecipeKey.MELT_HOLD, "common practice, no source"));
            } else if (worked.target() == Target.COOL) {
                sources.add(source(
                        RecipeKey.COOL_HOLD, "computed with this project's crystal model for a textbook programme"));
            }
        }
        return sources;
    }

    private String butter() {
        List<String> parts = new ArrayList<>();
        if (of.cacaoPercent() > 0) {
            parts.add(written(of.cacaoPercent()) + " % cacao of " + written(of.cacaoFatPercent())
                    + " % fat (54 % usual, from memory; 47 to 60 % in cocoa mass: Codex Stan 141-1983, from memory)");
        }
        if (of.cocoaButterPercent() > 0 && of.cacaoPercent() > 0) {
            parts.add(written(of.cocoaButterPercent()) + " % added");
        }
        if (of.is(OtherFat.LIKE_BUTTER)) {
            parts.add(written(of.otherFatPercent()) + " % of it fat that sets like cocoa butter");
        }
        return parts.isEmpty() ? SAID : String.join("; ", parts);
    }

    private String milkFat() {
        return of.is(OtherFat.SOFT) || of.is(OtherFat.LAURIC)
                ? written(of.otherFatPercent()) + " % of it is other soft fat, reckoned like milk fat"
                : SAID;
    }

    private String solids() {
        return "the rest"
                + (of.lecithinPercent() > 0 ? "; " + written(of.lecithinPercent()) + " % of it lecithin" : "");
    }

    private static Source source(RecipeKey key, String text) {
        return new Source(key.word(), text);
    }
}
