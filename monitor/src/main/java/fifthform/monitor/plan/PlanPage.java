package fifthform.monitor.plan;

import fifthform.curves.plan.BatchPlan;
import fifthform.curves.plan.BatchPlan.Step;
import fifthform.curves.plan.BatchPlan.WarmBathFor;
import fifthform.curves.plan.PlanKey;
import fifthform.curves.plan.Planned;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.model.Phrases;
import fifthform.monitor.settings.Units;
import java.time.Duration;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The plan as a page that is followed from top to bottom. */
public final class PlanPage {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private final BatchPlan plan;
    private final PlanWords words;
    private final Phrases phrases;

    public PlanPage(BatchPlan plan, Units units) {
        this.plan = plan;
        words = new PlanWords(units);
        phrases = new Phrases(units, plan.request().recipe());
    }

    /**
     * A paragraph of the page.
     *
     * @param head what it is of; empty where it goes on
     * @param words what is said
     */
    public record Row(String head, String words) {}

    /**
     * The page as lines.
     *
     * @param start when the melting begins; without it times count from nought
     * @param why whether the formula and source of every figure follow
     */
    public List<String> lines(Optional<LocalTime> start, boolean why) {
        List<String> lines = new ArrayList<>();
        lines.add(title());
        lines.add("In brackets: nine times in ten between these.");
        lines.add("");
        for (Row row : rows()) lines.add(String.format("%-11s%s", row.head(), row.words()));
        lines.add("");
        lines.addAll(times(start));
        if (!plan.caveats().isEmpty()) {
            lines.add("");
            for (String note : notes()) lines.add("Note: " + note);
        }
        if (why) {
            lines.add("");
            lines.add("Why (formulas in °C, kg, J, s):");
            lines.addAll(why());
        }
        return lines;
    }

    /** What it is the plan of. */
    public String title() {
        return "Plan for " + Math.round(plan.request().grams()) + " g of "
                + plan.request().recipe().name() + ", bowl of "
                + plan.request().bowl().material().word() + ".";
    }

    /** The figures, paragraph by paragraph. */
    public List<Row> rows() {
        Recipe recipe = plan.request().recipe();
        List<Row> rows = new ArrayList<>();
        rows.add(new Row(
                "MELT",
                "to " + phrases.range(recipe.melt().range()) + ", never above "
                        + words.celsius(recipe.scorchCelsius()) + ". About " + banded(PlanKey.MELT_TIME)
                        + ", then hold "
                        + value(PlanKey.MELT_HOLD) + "."));
        rows.add(new Row(
                "COLD BATH",
                value(PlanKey.COLD_WATER) + " of tap water"
                        + plan.figure(PlanKey.COLD_ICE)
                                .map(ice -> ", of it " + words.value(ice) + " as ice")
                                .orElse("")
                        + ". Stir. Lift at " + value(PlanKey.COLD_LIFT) + ", after about " + banded(PlanKey.COLD_TIME)
                        + "."));
        rows.add(new Row(
                "",
                "It falls on by " + banded(PlanKey.COLD_FALL) + ". Forgotten it ends at "
                        + banded(PlanKey.COLD_FORGOTTEN) + "; in " + value(PlanKey.COLD_STOPS_ITSELF)
                        + " it would stop by itself."));
        rows.add(new Row(
                "HOLD", phrases.range(recipe.cool().range()) + " for " + value(PlanKey.COOL_HOLD) + ", stirring."));
        rows.add(new Row(
                "WARM BATH",
                "Slow and safe: " + value(PlanKey.WARM_WATER) + " at " + value(PlanKey.WARM_BATH)
                        + " at most, pan off the hob, a towel round it. It comes to " + banded(PlanKey.WARM_PEAK)
                        + " by itself, most of the way in " + banded(PlanKey.WARM_TIME) + "."));
        rows.add(new Row("", "If the bowl stands at " + table() + "."));
        rows.add(new Row(
                "",
                "Second step, when it has not risen for 3 min: lift the bowl, pour boiling water into the bath, stir the"
                        + " bath, bowl back. It comes to " + banded(PlanKey.TOP_UP_PEAK) + " in "
                        + banded(PlanKey.TOP_UP_TIME) + "."));
        rows.add(new Row(
                "",
                "If the bowl stands still at " + words.topUps(plan) + ". Nothing above, and the same again"
                        + " where it stops short."));
        rows.add(new Row(
                "or",
                "Quick, watched: " + value(PlanKey.QUICK_BATH) + ". Lift at " + value(PlanKey.QUICK_LIFT)
                        + ", after about " + banded(PlanKey.QUICK_TIME) + "; it coasts on by "
                        + banded(PlanKey.QUICK_COAST) + ". By the clock alone: " + value(PlanKey.QUICK_LATEST)
                        + " at the latest."));
        double most = plan.value(PlanKey.QUICK_MOST_WATER);
        rows.add(new Row(
                "",
                (most < 50
                        ? "Its pan alone holds too much heat to be forgotten."
                        : "At most " + value(PlanKey.QUICK_MOST_WATER) + " of it could be forgotten.")));
        rows.add(new Row(
                "SEED",
                "Instead of the cold bath's crystals: " + banded(PlanKey.SEED) + " at "
                        + value(PlanKey.SEED_AT) + "; " + banded(PlanKey.SEED_STILL_SOLID)
                        + " stays solid. Take out what is left at " + value(PlanKey.SEED_OUT) + "."));
        rows.add(new Row(
                "",
                "A quarter keeps enough only below " + banded(PlanKey.QUARTER_AT) + "; at melting heat "
                        + value(PlanKey.QUARTER_STILL_SOLID)
                        + " of it stays solid, and at 0 % it did no more than ice."));
        rows.add(new Row(
                "SLAB",
                value(PlanKey.SLAB) + " to " + value(PlanKey.SLAB_AT) + ", back when the rest stands at "
                        + banded(PlanKey.SLAB_REST) + "."));
        rows.add(new Row(
                "POUR",
                phrases.range(recipe.work().range())
                        + plan.figure(PlanKey.HOLD_TIME)
                                .map(f -> ". Needs a touch of warmth after " + words.banded(f))
                                .orElse("")
                        + ". Thickens after " + banded(PlanKey.WORKING_TIME) + ". At its lower end it takes "
                        + banded(PlanKey.HOLD_ADD) + " of warm chocolate; count on the least."));
        rows.add(new Row(
                "MOULDS",
                banded(PlanKey.MOULD)
                        + plan.figure(PlanKey.BARS)
                                .map(f -> ". Bars: " + words.banded(f))
                                .orElse("") + "."));
        plan.figure(PlanKey.DEW_POINT)
                .ifPresent(f -> rows.add(new Row(
                        "COOL",
                        "Bars colder than " + words.banded(f)
                                + " get wet when opened: keep them closed until they are a degree above it.")));
        return rows;
    }

    /** What must be known of it. */
    public List<String> notes() {
        return plan.caveats().stream().map(PlanWords::caveat).toList();
    }

    /** Formula and source of every figure, in °C, kg, J, s. */
    public List<String> why() {
        List<String> lines = new ArrayList<>();
        for (Planned f : plan.figures()) {
            lines.add("  " + f.key().word() + " = " + words.banded(f));
            lines.add("    " + f.formula());
            lines.add("    source: " + f.source());
        }
        return lines;
    }

    /** {@code 27.0 °C: 33.1 °C, 28.0 °C: …}. */
    private String table() {
        List<String> rows = new ArrayList<>();
        for (WarmBathFor row : plan.warmBaths()) {
            rows.add(words.celsius(row.bowlCelsius()) + ": bath " + words.celsius(row.bathCelsius()));
        }
        return String.join(", ", rows);
    }

    /** When each step begins, and when all is done; a heading first. */
    public List<String> times(Optional<LocalTime> start) {
        List<String> lines = new ArrayList<>();
        LocalTime from = start.orElse(LocalTime.MIDNIGHT);
        lines.add(
                start.isPresent() ? "TIMES      (earliest and latest in brackets)" : "TIMES      h:min from the start");
        Duration least = Duration.ZERO;
        Duration usual = Duration.ZERO;
        Duration most = Duration.ZERO;
        for (Step step : plan.steps()) {
            String early = from.plus(least).format(CLOCK);
            String late = from.plus(most).format(CLOCK);
            String span = early.equals(late) ? "" : " (" + early + " to " + late + ")";
            lines.add("  " + from.plus(usual).format(CLOCK) + span + "  " + PlanWords.step(step.kind()));
            least = least.plus(step.least());
            usual = usual.plus(step.usual());
            most = most.plus(step.most());
        }
        lines.add("  " + from.plus(usual).format(CLOCK) + " ("
                + from.plus(least).format(CLOCK) + " to " + from.plus(most).format(CLOCK) + ")  done");
        return lines;
    }

    private String value(PlanKey key) {
        return words.value(plan.figure(key).orElseThrow());
    }

    private String banded(PlanKey key) {
        return words.banded(plan.figure(key).orElseThrow());
    }
}
