package fifthform.monitor.model;

import fifthform.curves.alarm.AlarmTable;
import fifthform.curves.cue.CueId;
import fifthform.curves.cue.OpenCue;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.StoreTrouble;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.CueText;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the program says of cues and alarms, in one place: the same sentence on every screen and for every ear.
 */
public final class Phrases {
    /** Where moulds set: common practice, no source. */
    private static final CelsiusRange SETTING = new CelsiusRange(15, 20);

    private final Units units;
    private final Recipe recipe;
    private final KeyMap keys;

    /** With the keys as the program comes. */
    public Phrases(Units units, Recipe recipe) {
        this(units, recipe, KeyMap.USUAL);
    }

    /** @param keys which key does what */
    public Phrases(Units units, Recipe recipe, KeyMap keys) {
        this.units = units;
        this.recipe = recipe;
        this.keys = keys;
    }

    KeyMap keys() {
        return keys;
    }

    /** What to do, in one imperative line. */
    public String headline(CueId cue, OpenCue open, Phase phase) {
        return switch (cue) {
            case MELTED -> CueText.ALL_MELTED_INTO_THE_COLD_WATER.say();
            case MELT_FIRST -> CueText.NOT_MELTED_BACK_ON_HOT_WATER.say();
            case WARM_UP ->
                open.figure().isPresent()
                        ? CueText.OVER_THE_BATH_ABOUT_THEN_OFF.say(seconds(open.figure()))
                        : CueText.IN_TEMPER_OVER_MILD_WATER.say();
            case SEED_OUT -> CueText.TAKE_OUT_THE_LUMPS_OF_SEED.say();
            case TOUCH_OF_WARM_AIR -> CueText.ABOUT_OF_WARM_AIR.say(seconds(open.figure()));
            case BOX_WARMER -> CueText.BOX_IS_WARMER.say(difference(open.figure()));
            case BOX_COOLER -> CueText.BOX_IS_COOLER.say(difference(open.figure()));
            case KEEP_FLUID -> CueText.GROWING_THICK_UP_TO.say(celsius(open.figure()));
            case HOLD_OVER -> CueText.HELD_AS_PLANNED.say(minutes(open.figure()));
            case STOP_COOLING -> CueText.OUT_OF_THE_WATER_NOW.say();
            case STIR_ON -> CueText.STIR_HERE_MORE.say(minutes(open.figure()));
            case SEED_NOW -> CueText.ADD_SEED_NOW.say(grams(open.figure()));
            case CRYSTALS_ENOUGH ->
                open.figure().isPresent()
                        ? CueText.HELD_LONG_ENOUGH_OVER_THE_BATH.say(seconds(open.figure()))
                        : CueText.HELD_LONG_ENOUGH_BACK_OVER.say();
            case GET_READY -> CueText.GET_READY_LIFT.say(countdown(open.figure()));
            case LIFT_NOW -> CueText.LIFT_THE_BOWL_NOW.say();
            case OFF_NOW -> CueText.OFF_NOW.say();
            case WIPE_AND_STIR -> CueText.WIPE_THE_BOWL_AND_STIR.say();
            case WEAK_BATH -> CueText.THIS_BATH_IS_TOO_WEAK_WARM.say();
            case TOUCH_OF_WARMTH -> CueText.ABOUT_OVER_THE_BATH_THEN_STIR.say(seconds(open.figure()));
            case THICKENS_SOON -> CueText.ABOUT_LEFT_TO_POUR.say(seconds(open.figure()));
            case PUT_BACK ->
                phase == Phase.COOL
                        ? CueText.BACK_IN_COLD_WATER_FOR_ABOUT.say(seconds(open.figure()))
                        : CueText.BACK_ON_FOR_ABOUT_THEN_STIR.say(seconds(open.figure()));
            case IN_RANGE -> CueText.IN_RANGE_PROVE_A_SAMPLE_THEN.say();
        };
    }

    /** Why, or what else; may be empty. */
    public String aside(CueId cue, OpenCue open) {
        return new Asides(units, recipe).of(cue, open);
    }

    /** Hot glass in cold water; common practice, no source. */
    public String glassCaution() {
        return CueText.GLASS_CAN_CRACK_LUKEWARM_WATER.say();
    }

    /** Too cold, and out of the water already. */
    public String tooColdOffTheWater() {
        return CueText.TOO_COLD_WARM_IT_A_LITTLE.say();
    }

    /** An alarm in a few words. */
    public String headline(AlarmId alarm, OptionalDouble figure) {
        return switch (alarm) {
            case HEADING_OVER -> CueText.TOO_HOT_SOON_OFF_THE_HEAT.say();
            case OVER_RANGE -> CueText.OVER_THE_WORKING_RANGE_OFF_THE.say();
            case NEAR_MELT_OUT -> CueText.GOOD_CRYSTALS_SOON_MELT_COOL.say();
            case MELT_OUT -> CueText.MELT_OUT_COOL_NOW_STOP_POURING.say();
            case HEADING_UNDER -> CueText.WILL_THICKEN_SOON_A_TOUCH_OF.say();
            case TOO_COOL -> CueText.THICKENING_WARM_IT_IN_SHORT.say();
            case OVER_COOLED -> CueText.TOO_COLD_OUT_OF_THE_WATER.say();
            case MELT_TOO_HOT -> CueText.TOO_HOT_FOR_THIS_CHOCOLATE.say();
            case BATH_HOT -> CueText.BATH_TOO_HOT_COOL_IT_OR.say();
            case PROBE_FAULT -> CueText.NO_TRUE_TEMPERATURE_CHECK_THE.say();
            case NO_READING -> CueText.NO_READING_CHECK_THE_USB_PLUG.say();
            case READING_DOUBTFUL -> CueText.READING_IN_DOUBT_LOOK_AT_THE.say();
            case NOT_RECORDING -> CueText.NOT_SAVED_FREE_SOME_SPACE.say();
            case PROBE_OUT -> CueText.PROBE_IS_STILL_OUT_PUT_IT.say();
        };
    }

    /** What the journal complains of; after it is over, that it did. */
    public String storeHeadline(Optional<StoreTrouble.What> trouble) {
        if (trouble.isEmpty()) return CueText.SAVING_WAS_IN_TROUBLE.say();
        return switch (trouble.get()) {
            case CANNOT_WRITE -> CueText.NOT_SAVED_FREE_SOME_SPACE.say();
            case BEHIND -> CueText.SAVING_IS_LATE_CHECK_THE_DISK.say();
            case SPACE_LOW -> CueText.LITTLE_SPACE_LEFT_FREE_SOME.say();
            case WRITES_AGAIN -> CueText.SAVING_WORKS_AGAIN.say();
        };
    }

    /** What that means for the batch. */
    public String storeDetail(Optional<StoreTrouble.What> trouble) {
        boolean saved = trouble.isEmpty() || trouble.get() == StoreTrouble.What.SPACE_LOW;
        return saved ? CueText.EVERYTHING_IS_SAVED_SO_FAR.say() : CueText.READINGS_ARE_KEPT_IN_MEMORY.say();
    }

    /** What an alarm is about, with its figure. */
    public String detail(AlarmId alarm, OptionalDouble figure) {
        return switch (alarm) {
            case HEADING_OVER -> headedFor(figure);
            case OVER_RANGE ->
                CueText.OVER.say(past(figure, recipe.work().range().highCelsius(), 1));
            case NEAR_MELT_OUT, MELT_OUT -> CueText.COOL_WATER_UNDER_THE_BOWL_WAS.say(celsius(figure));
            case HEADING_UNDER -> CueText.IN_3_MIN.say(celsius(figure));
            case TOO_COOL ->
                CueText.UNDER.say(past(figure, recipe.work().range().lowCelsius(), -1));
            case OVER_COOLED -> celsius(figure);
            case MELT_TOO_HOT -> CueText.STIR.say(celsius(figure));
            case BATH_HOT -> CueText.BATH_STEAM_AND_WATER_SCALD.say(celsius(figure));
            case PROBE_FAULT, NO_READING, READING_DOUBTFUL, NOT_RECORDING, PROBE_OUT -> shortAction(alarm);
        };
    }

    /** The same of an alarm about the chocolate itself, while its reading is good. */
    String detailNow(AlarmId alarm, double celsius) {
        OptionalDouble now = OptionalDouble.of(celsius);
        return alarm == AlarmId.NEAR_MELT_OUT || alarm == AlarmId.MELT_OUT
                ? CueText.COOL_WATER_UNDER_THE_BOWL_NOW.say(celsius(now))
                : detail(alarm, now);
    }

    /** An alarm that is over and was not seen: what was, and no order any more. All others end by themselves or by a choice. */
    String passed(AlarmId alarm, String until) {
        return switch (alarm) {
            case NEAR_MELT_OUT ->
                CueText.NEAR_MELT_OUT_WAS_OVER.say(
                        units.withUnit(recipe.meltOut().guardCelsius()), until);
            case PROBE_FAULT -> CueText.NO_TRUE_TEMPERATURE_UNTIL.say(until);
            case NOT_RECORDING -> CueText.SAVING_WAS_IN_TROUBLE_UNTIL.say(until);
            default -> throw new IllegalArgumentException(alarm + " does not wait to be seen");
        };
    }

    /** The whole advice of an alarm. */
    public String action(AlarmId alarm) {
        return AlarmTable.of(alarm).action();
    }

    /** What to do while nothing is due. */
    public String calm(Phase phase) {
        return switch (phase) {
            case MELT -> CueText.MELT_GENTLY_STIR_NOW_AND_THEN.say();
            case COOL -> CueText.COOL_IT_KEEP_STIRRING.say();
            case SEED -> CueText.KEEP_STIRRING.say();
            case REWARM -> CueText.KEEP_STIRRING.say();
            case WORK -> CueText.PROVE_A_SAMPLE_THEN_POUR.say();
            case REST -> CueText.BATCH_DONE.say();
        };
    }

    /** What to do while nothing is due and a sample has shown temper. */
    String pour() {
        return CueText.POUR_AND_STIR_BETWEEN_MOULDS.say();
    }

    /** Where pouring is next, with surely too few crystals for it. */
    String tooFew() {
        return CueText.IN_RANGE_BUT_TOO_FEW_CRYSTALS.say();
    }

    /** Where this phase is going, in a few words. */
    public String calmAside(Phase phase) {
        return switch (phase) {
            case MELT ->
                CueText.FOR.say(
                        range(recipe.melt().range()), Spans.words(recipe.melt().dwell()));
            case COOL, SEED -> CueText.AIM.say(range(recipe.cool().range()));
            case REWARM, WORK -> CueText.AIM.say(range(recipe.work().range()));
            case REST -> CueText.SET_AT_LOOK_AFTER_A_DAY.say(range(SETTING));
        };
    }

    /** How long the melt has been held hot enough. */
    public String held(Duration dwell) {
        return CueText.HELD_OF.say(Spans.words(dwell), Spans.words(recipe.melt().dwell()));
    }

    /** A range with its unit, for example {@code 31 to 32 °C}. */
    public String range(CelsiusRange range) {
        return bareRange(range) + " " + units.symbol();
    }

    /** A range without its unit. */
    public String bareRange(CelsiusRange range) {
        return CueText.FROM_TO.say(units.plain(range.lowCelsius()), units.plain(range.highCelsius()));
    }

    /** It speaks of a lift that is overdue as well, whose peak may still lie within the range, and off the bath. */
    private String headedFor(OptionalDouble figure) {
        if (figure.isEmpty()) return CueText.COOL_CLOTH_STIR.say();
        boolean within = figure.getAsDouble() <= recipe.work().range().highCelsius();
        return within
                ? CueText.LIFT_IT_NOW_IT_STILL_TURNS.say(celsius(figure))
                : CueText.IT_HEADS_FOR.say(celsius(figure));
    }

    private String shortAction(AlarmId alarm) {
        return switch (alarm) {
            case PROBE_FAULT -> CueText.PLUG_AND_LEAD_SECOND.say();
            case NO_READING -> CueText.WE_KEEP_TRYING_SECOND.say();
            case READING_DOUBTFUL -> CueText.TOUCHING_THE_BOWL_OR_OUT.say();
            case PROBE_OUT -> keys.fill(CueText.THEN_PROBE_OUT_NOTHING_IS.say());
            default -> CueText.READINGS_ARE_KEPT_IN_MEMORY.say();
        };
    }

    /** Never less than nothing: for some seconds an alarm still stands when all is well again. */
    private String past(OptionalDouble figure, double limitCelsius, int way) {
        return figure.isPresent() ? units.difference(Math.max(0, way * (figure.getAsDouble() - limitCelsius))) : "";
    }

    private static String grams(OptionalDouble figure) {
        return figure.isPresent() ? CueText.G_OF.say(Math.round(figure.getAsDouble())) : CueText.THE.say();
    }

    /** At its end it waits for the forecast to agree: a nought that stands would be a lie. */
    private static String countdown(OptionalDouble figure) {
        boolean soon = figure.isPresent() && Math.round(figure.getAsDouble()) < 1;
        return soon ? CueText.ANY_SECOND.say() : CueText.IN_ABOUT.say(seconds(figure));
    }

    private String celsius(OptionalDouble figure) {
        return figure.isPresent() ? units.withUnit(figure.getAsDouble()) : "–";
    }

    private String difference(OptionalDouble figure) {
        return figure.isPresent() ? units.difference(figure.getAsDouble()) : CueText.A_LITTLE.say();
    }

    private static String seconds(OptionalDouble figure) {
        return figure.isPresent() ? Spans.about(figure.getAsDouble()) : CueText.A_FEW_SECONDS.say();
    }

    private static String minutes(OptionalDouble figure) {
        double minutes = figure.orElse(0);
        return minutes < 1 ? Spans.about(60 * minutes) : CueText.MINUTES.say(Math.round(Math.ceil(minutes)));
    }
}
