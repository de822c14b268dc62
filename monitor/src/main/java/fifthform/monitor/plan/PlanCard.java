package fifthform.monitor.plan;

import fifthform.curves.plan.BatchPlan;
import fifthform.curves.plan.BatchPlan.TopUpFor;
import fifthform.curves.plan.BatchPlan.WarmBathFor;
import fifthform.curves.plan.PlanKey;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.model.Phrases;
import fifthform.monitor.settings.Units;
import java.util.ArrayList;
import java.util.List;

/** The same evening with a thermometer and a clock only, to be printed before the computer fails. */
public final class PlanCard {
    private static final int WIDTH = 720;
    private static final int LINE = 30;
    private static final int MARGIN = 40;

    private final BatchPlan plan;
    private final PlanWords words;
    private final Phrases phrases;

    public PlanCard(BatchPlan plan, Units units) {
        this.plan = plan;
        words = new PlanWords(units);
        phrases = new Phrases(units, plan.request().recipe());
    }

    /** The card, one line each, at most 62 characters. */
    public List<String> lines() {
        Recipe recipe = plan.request().recipe();
        List<String> lines = new ArrayList<>();
        lines.add(Math.round(plan.request().grams()) + " g " + recipe.name() + " – by thermometer");
        lines.add("");
        lines.add("[ ] Melt to " + phrases.range(recipe.melt().range()) + ", hold " + value(PlanKey.MELT_HOLD));
        lines.add("[ ] Cold bath " + value(PlanKey.COLD_WATER)
                + plan.figure(PlanKey.COLD_ICE)
                        .map(f -> ", " + words.value(f) + " of it ice")
                        .orElse("") + ", stir");
        lines.add("[ ] LIFT at " + value(PlanKey.COLD_LIFT) + " (about " + value(PlanKey.COLD_TIME) + "), dry it");
        lines.add("[ ] Hold " + phrases.range(recipe.cool().range()) + " for " + value(PlanKey.COOL_HOLD) + ", stir");
        lines.add("[ ] Pan OFF the hob, " + value(PlanKey.WARM_WATER) + ", a towel round it:");
        for (WarmBathFor row : plan.warmBaths()) {
            lines.add("      bowl " + words.celsius(row.bowlCelsius()) + "  ->  bath at most "
                    + words.celsius(row.bathCelsius()));
        }
        lines.add("[ ] Stir about " + value(PlanKey.WARM_TIME) + ", until it has not risen for 3 min");
        lines.add("[ ] Bowl out, boiling water into the bath, stir it, bowl back:");
        for (TopUpFor row : plan.topUps()) {
            lines.add("      bowl still at " + words.celsius(row.bowlCelsius()) + "  ->  pour "
                    + PlanWords.millilitres(row.waterGrams()));
        }
        lines.add("    It comes to " + value(PlanKey.TOP_UP_PEAK) + " by itself. Never pour twice unread.");
        lines.add("[ ] Smear on a cool knife: set within 5 min, or cool again");
        lines.add("[ ] Pour at " + phrases.range(recipe.work().range()) + ", moulds " + value(PlanKey.MOULD));
        lines.add("    Above " + words.celsius(recipe.meltOut().limitCelsius()) + ": crystals gone, cool again");
        lines.add("");
        lines.add("Hot water and steam scald. Tilt the bowl away, dry it.");
        return lines;
    }

    /** The card as a drawing, A5 upright, black on white. */
    public String svg() {
        List<String> lines = lines();
        int height = 2 * MARGIN + LINE * lines.size();
        StringBuilder svg = new StringBuilder();
        svg.append(Units.format(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"148mm\" viewBox=\"0 0 %d %d\">%n", WIDTH, height));
        svg.append(Units.format("<rect width=\"%d\" height=\"%d\" fill=\"white\" stroke=\"black\"/>%n", WIDTH, height));
        int y = MARGIN;
        for (String line : lines) {
            y += LINE;
            svg.append(Units.format(
                    "<text x=\"%d\" y=\"%d\" font-family=\"sans-serif\" font-size=\"%d\" xml:space=\"preserve\">%s</text>%n",
                    MARGIN, y, y == MARGIN + LINE ? 24 : 20, escaped(line)));
        }
        return svg.append("</svg>\n").toString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private String value(PlanKey key) {
        return words.value(plan.figure(key).orElseThrow());
    }
}
