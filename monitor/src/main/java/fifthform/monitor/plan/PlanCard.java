package fifthform.monitor.plan;

import fifthform.curves.plan.BatchPlan;
import fifthform.curves.plan.BatchPlan.TopUpFor;
import fifthform.curves.plan.BatchPlan.WarmBathFor;
import fifthform.curves.plan.PlanKey;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.model.Phrases;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.PlanText;
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
        lines.add(PlanText.G_BY_THERMOMETER.say(Math.round(plan.request().grams()), recipe.name()));
        lines.add("");
        lines.add(PlanText.MELT_TO_HOLD.say(phrases.range(recipe.melt().range()), value(PlanKey.MELT_HOLD)));
        lines.add(PlanText.COLD_BATH_STIR.say(
                value(PlanKey.COLD_WATER),
                plan.figure(PlanKey.COLD_ICE)
                        .map(f -> PlanText.OF_IT_ICE.say(words.value(f)))
                        .orElse("")));
        lines.add(PlanText.LIFT_AT_ABOUT_DRY_IT.say(value(PlanKey.COLD_LIFT), value(PlanKey.COLD_TIME)));
        lines.add(PlanText.HOLD_FOR_STIR.say(phrases.range(recipe.cool().range()), value(PlanKey.COOL_HOLD)));
        lines.add(PlanText.PAN_OFF_THE_HOB_A_TOWEL.say(value(PlanKey.WARM_WATER)));
        for (WarmBathFor row : plan.warmBaths()) {
            lines.add(
                    PlanText.BOWL_BATH_AT_MOST.say(words.celsius(row.bowlCelsius()), words.celsius(row.bathCelsius())));
        }
        lines.add(PlanText.STIR_ABOUT_UNTIL_IT_HAS_NOT.say(value(PlanKey.WARM_TIME)));
        lines.add(PlanText.BOWL_OUT_BOILING_WATER_INTO.say());
        for (TopUpFor row : plan.topUps()) {
            lines.add(PlanText.BOWL_STILL_AT_POUR.say(
                    words.celsius(row.bowlCelsius()), PlanWords.millilitres(row.waterGrams())));
        }
        lines.add(PlanText.IT_COMES_TO_BY_ITSELF_NEVER.say(value(PlanKey.TOP_UP_PEAK)));
        lines.add(PlanText.SMEAR_ON_A_COOL_KNIFE_SET.say());
        lines.add(PlanText.POUR_AT_MOULDS.say(phrases.range(recipe.work().range()), value(PlanKey.MOULD)));
        lines.add(PlanText.ABOVE_CRYSTALS_GONE_COOL_AGAIN.say(
                words.celsius(recipe.meltOut().limitCelsius())));
        lines.add("");
        lines.add(PlanText.HOT_WATER_AND_STEAM_SCALD_TILT.say());
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
                    "<text x=\"%d\" y=\"%d\" font-family=\"sans-serif\" font-size=\"%d\""
                            + " xml:space=\"preserve\">%s</text>%n",
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
