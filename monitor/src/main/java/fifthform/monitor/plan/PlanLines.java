package fifthform.monitor.plan;

import fifthform.curves.plan.BatchPlan;
import fifthform.curves.plan.BatchPlan.Step;
import fifthform.curves.plan.BatchPlan.TopUpFor;
import fifthform.curves.plan.BatchPlan.WarmBathFor;
import fifthform.curves.plan.Caveat;
import fifthform.curves.plan.Planned;
import fifthform.monitor.json.JsonLine;
import java.util.ArrayList;
import java.util.List;

/** The plan for scripts: one JSON object a line, temperatures in °C whatever is shown to people. */
public final class PlanLines {
    private PlanLines() {}

    public static List<String> of(BatchPlan plan) {
        List<String> lines = new ArrayList<>();
        for (Planned f : plan.figures()) {
            lines.add(new JsonLine()
                    .text("figure", f.key().word())
                    .text("unit", f.key().unit().word())
                    .number("value", f.value(), 3)
                    .number("low", f.low(), 3)
                    .number("high", f.high(), 3)
                    .text("formula", f.formula())
                    .text("source", f.source())
                    .end());
        }
        for (WarmBathFor row : plan.warmBaths()) {
            lines.add(new JsonLine()
                    .number("bowl_c", row.bowlCelsius(), 3)
                    .number("bath_at_most_c", row.bathCelsius(), 3)
                    .end());
        }
        for (TopUpFor row : plan.topUps()) {
            lines.add(new JsonLine()
                    .number("bowl_still_at_c", row.bowlCelsius(), 3)
                    .number("boiling_water_g", row.waterGrams(), 3)
                    .end());
        }
        for (Step step : plan.steps()) {
            lines.add(new JsonLine()
                    .text("step", step.kind().word())
                    .whole("least_s", step.least().toSeconds())
                    .whole("usual_s", step.usual().toSeconds())
                    .whole("most_s", step.most().toSeconds())
                    .end());
        }
        for (Caveat caveat : plan.caveats()) {
            lines.add(new JsonLine().text("caveat", caveat.word()).end());
        }
        return lines;
    }
}
