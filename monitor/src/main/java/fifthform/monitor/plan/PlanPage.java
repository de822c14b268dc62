package fifthform.monitor.plan;

import fifthform.curves.plan.BatchPlan;
import fifthform.curves.plan.BatchPlan.Step;
import fifthform.curves.plan.BatchPlan.WarmBathFor;
import fifthform.curves.plan.PlanKey;
import fifthform.curves.plan.Planned;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.model.Phrases;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.PlanText;
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
        lines.add(PlanText.IN_BRACKETS_NINE_TIMES_IN_TEN.say());
        lines.add("");
        for (Row row : rows()) lines.add(String.format("%-11s%s", row.head(), row.words()));
        lines.add("");
        lines.addAll(times(start));
        if (!plan.caveats().isEmpty()) {
            lines.add("");
            for (String note : notes()) lines.add(PlanText.NOTE.say(note));
        }
        if (why) {
            lines.add("");
            lines.add(PlanText.WHY_FORMULAS_IN_C_KG_J.say());
            lines.addAll(why());
        }
        return lines;
    }

    /** What it is the plan of. */
    public String title() {
        long grams = Math.round(plan.request().grams());
        String chocolate = plan.request().recipe().name();
        BowlMaterial material = plan.request().bowl().material();
        return material == BowlMaterial.UNKNOWN
                ? PlanText.PLAN_FOR_G_OF_ANY_BOWL.say(grams, chocolate)
                : PlanText.PLAN_FOR_G_OF_BOWL_OF.say(grams, chocolate, InWords.of(material));
    }

    /** The figures, paragraph by paragraph. */
    public List<Row> rows() {
        Recipe recipe = plan.request().recipe();
        List<Row> rows = new ArrayList<>();
        rows.add(new Row(
                PlanText.MELT_HEAD.say(),
                PlanText.TO_NEVER_ABOVE_ABOUT_THEN_HOLD.say(
                        phrases.range(recipe.melt().range()),
                        words.celsius(recipe.scorchCelsius()),
                        banded(PlanKey.MELT_TIME),
                        value(PlanKey.MELT_HOLD))));
        rows.add(new Row(
                PlanText.COLD_BATH_HEAD.say(),
                PlanText.OF_TAP_WATER_STIR_LIFT_AT.say(
                        value(PlanKey.COLD_WATER),
                        plan.figure(PlanKey.COLD_ICE)
                                .map(ice -> PlanText.OF_IT_AS_ICE.say(words.value(ice)))
                                .orElse(""),
                        value(PlanKey.COLD_LIFT),
                        banded(PlanKey.COLD_TIME))));
        rows.add(new Row(
                "",
                PlanText.IT_FALLS_ON_BY_FORGOTTEN_IT.say(
                        banded(PlanKey.COLD_FALL), banded(PlanKey.COLD_FORGOTTEN), value(PlanKey.COLD_STOPS_ITSELF))));
        rows.add(new Row(
                PlanText.HOLD_HEAD.say(),
                PlanText.FOR_STIRRING.say(phrases.range(recipe.cool().range()), value(PlanKey.COOL_HOLD))));
        rows.add(new Row(
                PlanText.WARM_BATH_HEAD.say(),
                PlanText.SLOW_AND_SAFE_AT_AT_MOST.say(
                        value(PlanKey.WARM_WATER),
                        value(PlanKey.WARM_BATH),
                        // The one figure is for the middle of the cool range; the rows below have the others.
                        words.celsius(recipe.cool().range().midCelsius()),
                        banded(PlanKey.WARM_PEAK),
                        banded(PlanKey.WARM_TIME))));
        rows.add(new Row("", PlanText.IF_THE_BOWL_STANDS_AT.say(table())));
        rows.add(new Row(
                "",
                PlanText.SECOND_STEP_WHEN_IT_HAS_NOT.say(banded(PlanKey.TOP_UP_PEAK), banded(PlanKey.TOP_UP_TIME))));
        rows.add(new Row("", PlanText.IF_THE_BOWL_STANDS_STILL_AT.say(words.topUps(plan))));
        rows.add(new Row(
                PlanText.OR_HEAD.say(),
                PlanText.QUICK_WATCHED_LIFT_AT_AFTER.say(
                        value(PlanKey.QUICK_BATH),
                        value(PlanKey.QUICK_LIFT),
                        banded(PlanKey.QUICK_TIME),
                        banded(PlanKey.QUICK_COAST),
                        value(PlanKey.QUICK_LATEST))));
        double most = plan.value(PlanKey.QUICK_MOST_WATER);
        rows.add(new Row(
                "",
                (most < 50
                        ? PlanText.ITS_PAN_ALONE_HOLDS_TOO_MUCH.say()
                        : PlanText.AT_MOST_OF_IT_COULD_BE.say(value(PlanKey.QUICK_MOST_WATER)))));
        rows.add(new Row(
                PlanText.SEED_HEAD.say(),
                PlanText.INSTEAD_OF_THE_COLD_BATHS.say(
                        banded(PlanKey.SEED),
                        value(PlanKey.SEED_AT),
                        banded(PlanKey.SEED_STILL_SOLID),
                        value(PlanKey.SEED_OUT))));
        rows.add(new Row(
                "",
                PlanText.A_QUARTER_KEEPS_ENOUGH_ONLY.say(
                        banded(PlanKey.QUARTER_AT), value(PlanKey.QUARTER_STILL_SOLID))));
        rows.add(new Row(
                PlanText.SLAB_HEAD.say(),
                PlanText.TO_BACK_WHEN_THE_REST_STANDS.say(
                        value(PlanKey.SLAB), value(PlanKey.SLAB_AT), banded(PlanKey.SLAB_REST))));
        rows.add(new Row(
                PlanText.POUR_HEAD.say(),
                PlanText.THICKENS_AFTER_AT_ITS_LOWER.say(
                        phrases.range(recipe.work().range())
                                + plan.figure(PlanKey.HOLD_TIME)
                                        .map(f -> PlanText.NEEDS_A_TOUCH_OF_WARMTH_AFTER.say(words.banded(f)))
                                        .orElse(""),
                        banded(PlanKey.WORKING_TIME),
                        banded(PlanKey.HOLD_ADD))));
        rows.add(new Row(
                PlanText.MOULDS_HEAD.say(),
                banded(PlanKey.MOULD)
                        + plan.figure(PlanKey.BARS)
                                .map(f -> PlanText.BARS.say(words.banded(f)))
                                .orElse("") + "."));
        plan.figure(PlanKey.DEW_POINT)
                .ifPresent(f -> rows.add(new Row(
                        PlanText.COOL_HEAD.say(), PlanText.BARS_COLDER_THAN_GET_WET_WHEN.say(words.banded(f)))));
        return rows;
    }

    /**
     * When a step begins.
     *
     * @param at usually
     * @param span earliest and latest; empty where they are the same
     * @param step what begins
     */
    public record Time(String at, String span, String step) {}

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
            lines.add(PlanText.SOURCE.say(f.source()));
        }
        return lines;
    }

    /** {@code 27.0 °C: 33.1 °C, 28.0 °C: …}. */
    private String table() {
        List<String> rows = new ArrayList<>();
        for (WarmBathFor row : plan.warmBaths()) {
            rows.add(PlanText.BOWL_AND_BATH.say(words.celsius(row.bowlCelsius()), words.celsius(row.bathCelsius())));
        }
        return String.join(", ", rows);
    }

    /** When each step begins, and when all is done, in columns; a heading first. */
    private List<String> times(Optional<LocalTime> start) {
        List<Time> times = timetable(start);
        int widest = times.stream().mapToInt(time -> time.span().length()).max().orElse(1);
        List<String> lines = new ArrayList<>();
        lines.add(timesHead(start));
        for (Time time : times)
            lines.add(String.format("  %s %-" + widest + "s  %s", time.at(), time.span(), time.step()));
        return lines;
    }

    /** What stands over the times. */
    public static String timesHead(Optional<LocalTime> start) {
        return start.isPresent()
                ? PlanText.TIMES_EARLIEST_AND_LATEST_IN.say()
                : PlanText.TIMES_H_MIN_FROM_THE_START.say();
    }

    /** When each step begins, and when all is done. */
    public List<Time> timetable(Optional<LocalTime> start) {
        List<Time> times = new ArrayList<>();
        LocalTime from = start.orElse(LocalTime.MIDNIGHT);
        Duration least = Duration.ZERO;
        Duration usual = Duration.ZERO;
        Duration most = Duration.ZERO;
        for (Step step : plan.steps()) {
            times.add(time(from.plus(usual), from.plus(least), from.plus(most), PlanWords.step(step.kind())));
            least = least.plus(step.least());
            usual = usual.plus(step.usual());
            most = most.plus(step.most());
        }
        times.add(time(from.plus(usual), from.plus(least), from.plus(most), PlanText.DONE.say()));
        return times;
    }

    private static Time time(LocalTime usual, LocalTime least, LocalTime most, String step) {
        String early = least.format(CLOCK);
        String late = most.format(CLOCK);
        String span = early.equals(late) ? "" : PlanText.EARLIEST_TO_LATEST.say(early, late);
        return new Time(usual.format(CLOCK), span, step);
    }

    private String value(PlanKey key) {
        return words.value(plan.figure(key).orElseThrow());
    }

    private String banded(PlanKey key) {
        return words.banded(plan.figure(key).orElseThrow());
    }
}
