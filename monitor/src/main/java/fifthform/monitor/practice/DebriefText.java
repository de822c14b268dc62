package fifthform.monitor.practice;

import fifthform.curves.crystal.Copies;
import fifthform.curves.cue.CueId;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.model.Spans;
import fifthform.monitor.model.SurvivedWords;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.PracticeText;
import fifthform.monitor.texts.UnitText;
import fifthform.simulator.bench.Answer;
import fifthform.simulator.bench.Lift;
import fifthform.simulator.scenario.Landed;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** A {@link Debrief} in words. */
public final class DebriefText {
    /** Less stirring than this leaves the warm layer at the wall; our own choice, half of what the cues ask for. */
    private static final double LITTLE_STIRRING = 0.3;

    /** Further below the cool range than this it grows thick; our own choice. */
    private static final double FAR_BELOW_KELVIN = 1;

    private static final Duration LONG_UNDER = Duration.ofSeconds(60);

    private final Debrief debrief;
    private final Recipe recipe;
    private final Units units;

    public DebriefText(Debrief debrief, Units units) {
        this.debrief = Objects.requireNonNull(debrief, "debrief");
        this.recipe = debrief.recipe();
        this.units = Objects.requireNonNull(units, "units");
    }

    /** Everything, a fact a line. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(PracticeText.DEBRIEF_THESE_ARE_THE_TRUE.say());
        lines.add(ended() + ".");
        lines.addAll(facts());
        lines.add(PracticeText.NEXT_TIME.say(advice()));
        return lines;
    }

    /** Where the batch ended, in one line. */
    public String ended() {
        OptionalDouble peak = debrief.ending().outcome().highestAfterCoolCelsius();
        CelsiusRange work = recipe.work().range();
        String hottest = peak.isPresent()
                ? PracticeText.HOTTEST_AFTER_THE_COOL_WANTED.say(
                        units.withUnit(peak.getAsDouble()),
                        units.plain(work.lowCelsius()),
                        units.plain(work.highCelsius()))
                : "";
        return switch (debrief.ending().landed()) {
            case NEVER_REWARMED -> PracticeText.IT_ENDED_BEFORE_IT_WAS_WARMED.say();
            case UNDER -> PracticeText.IT_STAYED_UNDER_THE_WORKING.say(hottest);
            case IN_RANGE -> PracticeText.IT_LANDED_IN_THE_WORKING_RANGE.say(hottest);
            case OVER -> PracticeText.IT_WENT_OVER_THE_WORKING_RANGE.say(hottest);
            case MELTED_OUT -> PracticeText.IT_MELTED_OUT.say(hottest);
        };
    }

    /** Lifts, times out of range, cues and hands. */
    List<String> facts() {
        List<String> facts = new ArrayList<>();
        OptionalDouble lowest = debrief.ending().outcome().lowestCoolCelsius();
        boolean kept = debrief.beginning().isInTemper();
        if (kept) facts.add(PracticeText.CAME_IN_TEMPER.say());
        else
            facts.add(
                    lowest.isPresent()
                            ? PracticeText.COOLEST_BEFORE_THE_REWARM.say(
                                    units.withUnit(lowest.getAsDouble()),
                                    units.plain(recipe.cool().range().lowCelsius()),
                                    units.plain(recipe.cool().range().highCelsius()))
                            : PracticeText.IT_NEVER_WAS_IN_COLD_WATER.say());
        List<Lift> lifts = debrief.ending().outcome().lifts();
        for (int i = 0; i < lifts.size(); i++) facts.add(lift(i + 1, lifts.get(i), shown(i)));
        facts.add(PracticeText.OVER_THE_RANGE_FOR_UNDER_IT.say(
                seconds(debrief.ending().overFor()),
                seconds(debrief.underFor()),
                debrief.meltOuts() == 0
                        ? PracticeText.NOT_REACHED.say()
                        : PracticeText.REACHED.say(times(debrief.meltOuts()))));
        if (!debrief.answers().isEmpty())
            facts.add(PracticeText.CUES_ANSWERED_IN_THE_KITCHENS.say(
                    debrief.answers().stream().map(DebriefText::answer).collect(Collectors.joining(" · "))));
        facts.add(PracticeText.STIRRED_FOR_OF_THE_TIME_DRIED.say(
                Math.round(100 * debrief.stirredFraction()), times(debrief.timesDried())));
        debrief.stay().map(DebriefText::stay).ifPresent(facts::add);
        crystals().ifPresent(facts::add);
        return facts;
    }

    private static String stay(Debrief.Stay stay) {
        if (stay.held().isZero()) return PracticeText.HOLD_NOT_REACHED.say();
        long percent =
                Math.round(100.0 * stay.inRange().toMillis() / stay.held().toMillis());
        return PracticeText.HELD_REALLY.say(
                Spans.words(stay.held()),
                Spans.words(stay.plan().time()),
                InWords.of(stay.plan().warmth()),
                Long.toString(percent));
    }

    /** What was said beside what there was: the one place where somebody can know. */
    private Optional<String> crystals() {
        String lost = debrief.crystals()
                .lostAfter()
                .map(span -> PracticeText.IT_HAD_SAID_THAT_HEAT_COST.say(Spans.words(span)))
                .orElse("");
        OptionalDouble seed = debrief.crystals().seedFraction();
        String really = seed.isPresent()
                ? PracticeText.REALLY_THERE_WERE_OF_THE_FAT.say(
                        SurvivedWords.percentOfFat(seed.getAsDouble()), SurvivedWords.percentOfFat(Copies.LEAST_SEED))
                : "";
        return debrief.crystals()
                .said()
                .map(word -> PracticeText.CRYSTALS_THE_SCREENS_LAST_WORD.say(InWords.crystals(word), lost, really));
    }

    private OptionalDouble shown(int lift) {
        List<OptionalDouble> shown = debrief.shownCelsius();
        return lift < shown.size() ? shown.get(lift) : OptionalDouble.empty();
    }

    private String lift(int number, Lift lift, OptionalDouble shown) {
        String said = shown.isPresent()
                ? PracticeText.THE_SCREEN_HAD_SAID.say(units.oneDecimal(shown.getAsDouble()))
                : PracticeText.THE_SCREEN_HAD_SAID_NOTHING.say();
        return PracticeText.LIFT_AT_COASTED_TO.say(
                number,
                units.withUnit(lift.celsius()),
                units.difference(lift.coastKelvin()),
                units.oneDecimal(lift.turnedCelsius()),
                said);
    }

    private static String answer(CueAnswer answer) {
        String what = switch (answer.cue()) {
            case MELTED -> PracticeText.OFF_THE_HOT_WATER.say();
            case STOP_COOLING -> PracticeText.OUT_OF_THE_COLD.say();
            case MELT_FIRST -> PracticeText.BACK_TO_HOT_WATER.say();
            case CRYSTALS_ENOUGH, WARM_UP -> PracticeText.BACK_TO_WARM_WATER.say();
            case LIFT_NOW -> PracticeText.LIFT_ALONE.say();
            case OFF_NOW -> PracticeText.OFF_AFTER_A_TOUCH.say();
            case PUT_BACK -> PracticeText.PUT_BACK.say();
            case TOUCH_OF_WARMTH -> PracticeText.TOUCH_OF_WARMTH.say();
            case STIR_ON,
                    GET_READY,
                    IN_RANGE,
                    SEED_NOW,
                    SEED_OUT,
                    WIPE_AND_STIR,
                    WEAK_BATH,
                    TOUCH_OF_WARM_AIR,
                    BOX_WARMER,
                    BOX_COOLER,
                    KEEP_FLUID,
                    HOLD_OVER,
                    THICKENS_SOON -> InWords.of(answer.cue());
        };
        return what + " " + answer.took().map(DebriefText::late).orElse(PracticeText.NOT_ANSWERED.say());
    }

    private static String late(Duration took) {
        return UnitText.SECONDS.say(Units.format("%.1f", took.toMillis() / 1000.0));
    }

    private static String seconds(Duration span) {
        long s = span.toSeconds();
        return s < 120 ? UnitText.SECONDS.say(s) : UnitText.MINUTES.say(s / 60);
    }

    private static String times(int count) {
        return count == 1 ? PracticeText.ONCE.say() : PracticeText.TIMES.say(count);
    }

    /** It sinks on by the cold in wall and film; only where the cue stood open was it the hands. */
    private String tooCold(double celsius) {
        String sank = PracticeText.IT_SANK_TO_BELOW_THE_COOL.say(units.withUnit(celsius));
        String water = PracticeText.WARMER_TAP_WATER_MAKES_IT_SINK.say();
        List<CueAnswer> told = debrief.answers().stream()
                .filter(a -> a.cue() == CueId.STOP_COOLING)
                .toList();
        if (told.isEmpty()) return PracticeText.HAVE_IT_OUT_A_LITTLE_BEFORE.say(sank, water);
        Optional<Duration> took = told.get(told.size() - 1).took();
        if (took.isEmpty()) return PracticeText.OUT_OF_THE_WATER_WAS_SAID.say(sank, water);
        return took.get().compareTo(Answer.IN_TIME) <= 0
                ? PracticeText.YOU_HAD_IT_OUT_IN_TIME.say(sank, water)
                : PracticeText.IT_WAS_OUT_AFTER_THE_CUE.say(sank, late(took.get()), water);
    }

    /** The one thing that would have helped most. */
    public String advice() {
        Landed landed = debrief.ending().landed();
        OptionalDouble coolest = debrief.ending().outcome().lowestCoolCelsius();
        Optional<Duration> slowest = debrief.answers().stream()
                .filter(a -> a.cue() == CueId.LIFT_NOW)
                .flatMap(a -> a.took().stream())
                .max(Duration::compareTo);
        boolean missed = debrief.answers().stream()
                .anyMatch(a -> a.cue() == CueId.LIFT_NOW && a.took().isEmpty());
        boolean tooHot = landed == Landed.OVER || landed == Landed.MELTED_OUT;
        if (landed == Landed.NEVER_REWARMED) return PracticeText.GO_THROUGH_TO_THE_END_THE.say();
        if (debrief.beginning().isInTemper() && landed == Landed.MELTED_OUT)
            return PracticeText.ADVICE_KEPT_MELTED.say();
        if (!debrief.beginning().isInTemper()
                && coolest.isPresent()
                && coolest.getAsDouble() > recipe.cool().range().highCelsius())
            return PracticeText.COOL_FURTHER_BEFORE_YOU_WARM.say();
        if (tooHot && missed) return PracticeText.LIFT_WHEN_THE_BAND_SAYS_SO.say();
        if (tooHot && slowest.filter(s -> s.compareTo(Answer.IN_TIME) > 0).isPresent())
            return PracticeText.HAVE_A_HAND_AT_THE_BOWL.say(late(slowest.get()));
        if (tooHot && debrief.timesDried() == 0) return PracticeText.DRY_THE_BOWL_AFTER_THE_LIFT.say();
        if (debrief.stirredFraction() < LITTLE_STIRRING) return PracticeText.STIR_MORE_WHAT_IS_NOT_STIRRED.say();
        if (tooHot) return PracticeText.LIFT_A_LITTLE_SOONER_AND_PUT.say();
        if (!debrief.beginning().isInTemper()
                && coolest.isPresent()
                && coolest.getAsDouble() < recipe.cool().range().lowCelsius() - FAR_BELOW_KELVIN)
            return tooCold(coolest.getAsDouble());
        if (landed == Landed.UNDER || debrief.underFor().compareTo(LONG_UNDER) > 0)
            return PracticeText.PUT_IT_BACK_FOR_A_FEW.say();
        return PracticeText.THE_SAME_IN_A_HARDER_KITCHEN.say();
    }
}
