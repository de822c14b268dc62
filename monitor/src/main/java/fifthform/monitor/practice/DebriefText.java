package fifthform.monitor.practice;

import fifthform.curves.crystal.Copies;
import fifthform.curves.cue.CueId;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.model.Spans;
import fifthform.monitor.model.SurvivedWords;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.PracticeText;
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
        lines.add("Debrief. These are the true temperatures of the simulated chocolate; only training can tell them.");
        lines.add(ended() + ".");
        lines.addAll(facts());
        lines.add("Next time: " + advice());
        return lines;
    }

    /** Where the batch ended, in one line. */
    public String ended() {
        OptionalDouble peak = debrief.ending().outcome().highestAfterCoolCelsius();
        CelsiusRange work = recipe.work().range();
        String hottest = peak.isPresent()
                ? ": hottest after the cool " + units.withUnit(peak.getAsDouble()) + ", wanted "
                        + units.plain(work.lowCelsius()) + " to " + units.plain(work.highCelsius())
                : "";
        return switch (debrief.ending().landed()) {
            case NEVER_REWARMED -> "It ended before it was warmed again";
            case UNDER -> "It stayed under the working range" + hottest;
            case IN_RANGE -> "It landed in the working range" + hottest;
            case OVER -> "It went over the working range" + hottest;
            case MELTED_OUT -> "It melted out" + hottest;
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
                            ? "Coolest before the rewarm " + units.withUnit(lowest.getAsDouble()) + ", wanted "
                                    + units.plain(recipe.cool().range().lowCelsius()) + " to "
                                    + units.plain(recipe.cool().range().highCelsius()) + "."
                            : "It never was in cold water.");
        List<Lift> lifts = debrief.ending().outcome().lifts();
        for (int i = 0; i < lifts.size(); i++) facts.add(lift(i + 1, lifts.get(i), shown(i)));
        facts.add("Over the range for " + seconds(debrief.ending().overFor()) + ", under it for "
                + seconds(debrief.underFor()) + "; melt-out "
                + (debrief.meltOuts() == 0 ? "not reached" : "reached " + times(debrief.meltOuts())) + ".");
        if (!debrief.answers().isEmpty())
            facts.add("Cues answered, in the kitchen's time: "
                    + debrief.answers().stream().map(DebriefText::answer).collect(Collectors.joining(" · ")) + ".");
        facts.add("Stirred for " + Math.round(100 * debrief.stirredFraction()) + " % of the time, dried "
                + times(debrief.timesDried()) + ".");
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
                stay.plan().warmth().word(),
                Long.toString(percent));
    }

    /** What was said beside what there was: the one place where somebody can know. */
    private Optional<String> crystals() {
        String lost = debrief.crystals()
                .lostAfter()
                .map(span -> "; it had said that heat cost the seed after " + Spans.words(span))
                .orElse("");
        OptionalDouble seed = debrief.crystals().seedFraction();
        String really = seed.isPresent()
                ? ". Really there were " + SurvivedWords.percentOfFat(seed.getAsDouble())
                        + " % of the fat in good ones; a temper needs "
                        + SurvivedWords.percentOfFat(Copies.LEAST_SEED) + " %"
                : "";
        return debrief.crystals()
                .said()
                .map(word ->
                        "Crystals: the screen's last word was " + SurvivedWords.spaced(word) + lost + really + ".");
    }

    private OptionalDouble shown(int lift) {
        List<OptionalDouble> shown = debrief.shownCelsius();
        return lift < shown.size() ? shown.get(lift) : OptionalDouble.empty();
    }

    private String lift(int number, Lift lift, OptionalDouble shown) {
        String said = shown.isPresent()
                ? "the screen had said " + units.oneDecimal(shown.getAsDouble())
                : "the screen had said nothing yet";
        return "Lift " + number + " at " + units.withUnit(lift.celsius()) + ": coasted "
                + units.difference(lift.coastKelvin()) + " to " + units.oneDecimal(lift.turnedCelsius()) + "; " + said
                + ".";
    }

    private static String answer(CueAnswer answer) {
        String what = switch (answer.cue()) {
            case MELTED -> "off the hot water";
            case STOP_COOLING -> "out of the cold";
            case MELT_FIRST -> "back to hot water";
            case CRYSTALS_ENOUGH, WARM_UP -> "back to warm water";
            case LIFT_NOW -> "lift";
            case OFF_NOW -> "off after a touch";
            case PUT_BACK -> "put back";
            case TOUCH_OF_WARMTH -> "touch of warmth";
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
                    THICKENS_SOON -> answer.cue().word();
        };
        return what + " " + answer.took().map(DebriefText::late).orElse("not answered");
    }

    private static String late(Duration took) {
        return Units.format("%.1f s", took.toMillis() / 1000.0);
    }

    private static String seconds(Duration span) {
        long s = span.toSeconds();
        return s < 120 ? s + " s" : s / 60 + " min";
    }

    private static String times(int count) {
        return count == 1 ? "once" : count + " times";
    }

    /** It sinks on by the cold in wall and film; only where the cue stood open was it the hands. */
    private String tooCold(double celsius) {
        String sank = "it sank to " + units.withUnit(celsius) + ", below the cool range. ";
        String water = "warmer tap water makes it sink slower and less far on, and gives time.";
        List<CueAnswer> told = debrief.answers().stream()
                .filter(a -> a.cue() == CueId.STOP_COOLING)
                .toList();
        if (told.isEmpty()) return sank + "Have it out a little before the range; " + water;
        Optional<Duration> took = told.get(told.size() - 1).took();
        if (took.isEmpty()) return sank + "\"Out of the water\" was said and it stayed in; " + water;
        return took.get().compareTo(Answer.IN_TIME) <= 0
                ? sank
                        + "You had it out in time: the cold was in wall and clinging water already. Dry the bowl at once, and "
                        + water
                : sank + "It was out " + late(took.get()) + " after the cue: a hand at the bowl helps, and " + water;
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
        if (landed == Landed.NEVER_REWARMED)
            return "go through to the end; the key “step done” does what stands on the screen.";
        if (debrief.beginning().isInTemper() && landed == Landed.MELTED_OUT)
            return PracticeText.ADVICE_KEPT_MELTED.say();
        if (!debrief.beginning().isInTemper()
                && coolest.isPresent()
                && coolest.getAsDouble() > recipe.cool().range().highCelsius())
            return "cool further before you warm it again, until the screen says that it is enough.";
        if (tooHot && missed) return "lift when the band says so; the number on the thermometer comes too late.";
        if (tooHot && slowest.filter(s -> s.compareTo(Answer.IN_TIME) > 0).isPresent())
            return "have a hand at the bowl from \"get ready\" on; the lift came " + late(slowest.get())
                    + " after the cue.";
        if (tooHot && debrief.timesDried() == 0)
            return "dry the bowl after the lift: the water that clings to it goes on warming it.";
        if (debrief.stirredFraction() < LITTLE_STIRRING)
            return "stir more: what is not stirred is warmer at the wall than at the probe.";
        if (tooHot) return "lift a little sooner, and put it into cold water for a moment if it still heads over.";
        if (!debrief.beginning().isInTemper()
                && coolest.isPresent()
                && coolest.getAsDouble() < recipe.cool().range().lowCelsius() - FAR_BELOW_KELVIN)
            return tooCold(coolest.getAsDouble());
        if (landed == Landed.UNDER || debrief.underFor().compareTo(LONG_UNDER) > 0)
            return "put it back for a few seconds at a time, before it has become too cool.";
        return "the same in a harder kitchen, or faster; monitor/run practice lists them.";
    }
}
