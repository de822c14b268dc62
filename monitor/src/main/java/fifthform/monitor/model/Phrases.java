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
            case MELTED -> "All melted: into the cold water";
            case MELT_FIRST -> "Not melted: back on hot water";
            case WARM_UP ->
                open.figure().isPresent()
                        ? "Over the bath about " + seconds(open.figure()) + ", then off"
                        : "In temper: over mild warm water, stir";
            case SEED_OUT -> "Take out the lumps of seed";
            case TOUCH_OF_WARM_AIR -> "About " + seconds(open.figure()) + " of warm air";
            case BOX_WARMER -> "Box " + difference(open.figure()) + " warmer";
            case BOX_COOLER -> "Box " + difference(open.figure()) + " cooler";
            case KEEP_FLUID -> "Growing thick: up to " + celsius(open.figure()) + ", no higher";
            case HOLD_OVER -> "Held as planned: " + minutes(open.figure()) + " are over";
            case STOP_COOLING -> "Out of the water now";
            case STIR_ON -> "Stir here " + minutes(open.figure()) + " more";
            case SEED_NOW -> "Add" + grams(open.figure()) + " seed now";
            case CRYSTALS_ENOUGH ->
                open.figure().isPresent()
                        ? "Enough: over the bath about " + seconds(open.figure()) + ", then off"
                        : "Held long enough: back over warm water";
            case GET_READY -> "Get ready: lift " + countdown(open.figure());
            case LIFT_NOW -> "LIFT THE BOWL NOW";
            case OFF_NOW -> "OFF NOW";
            case WIPE_AND_STIR -> "Wipe the bowl, and stir";
            case WEAK_BATH -> "This bath is too weak: warm it";
            case TOUCH_OF_WARMTH -> "About " + seconds(open.figure()) + " over the steam, then stir";
            case THICKENS_SOON -> "About " + seconds(open.figure()) + " left to pour";
            case PUT_BACK ->
                phase == Phase.COOL
                        ? "Back in cold water for about " + seconds(open.figure())
                        : "Back on for about " + seconds(open.figure()) + ", then stir";
            case IN_RANGE -> "In range: prove a sample, then pour";
        };
    }

    /** Why, or what else; may be empty. */
    public String aside(CueId cue, OpenCue open) {
        return new Asides(units, recipe).of(cue, open);
    }

    /** Hot glass in cold water; common practice, no source. */
    public String glassCaution() {
        return "glass can crack: lukewarm water first";
    }

    /** Too cold, and out of the water already. */
    public String tooColdOffTheWater() {
        return "Too cold: warm it a little, stir";
    }

    /** An alarm in a few words. */
    public String headline(AlarmId alarm, OptionalDouble figure) {
        return switch (alarm) {
            case HEADING_OVER -> "Too hot soon: off the heat";
            case OVER_RANGE -> "Over the working range: off the heat";
            case NEAR_MELT_OUT -> "Good crystals soon melt: cool now";
            case MELT_OUT -> "Melt-out: cool now, stop pouring";
            case HEADING_UNDER -> "Will thicken soon: a touch of warmth";
            case TOO_COOL -> "Thickening: warm it in short touches";
            case OVER_COOLED -> "Too cold: out of the water, stir";
            case MELT_TOO_HOT -> "Too hot for this chocolate: heat down";
            case BATH_HOT -> "Bath too hot: cool it or lift the bowl";
            case PROBE_FAULT -> "No true temperature: check the probe";
            case NO_READING -> "No reading: check the USB plug";
            case READING_DOUBTFUL -> "Reading in doubt: look at the tip";
            case NOT_RECORDING -> "Not saved: free some space";
            case PROBE_OUT -> "Probe is still out: put it back";
        };
    }

    /** What the journal complains of; after it is over, that it did. */
    public String storeHeadline(Optional<StoreTrouble.What> trouble) {
        if (trouble.isEmpty()) return "Saving was in trouble";
        return switch (trouble.get()) {
            case CANNOT_WRITE -> "Not saved: free some space";
            case BEHIND -> "Saving is late: check the disk";
            case SPACE_LOW -> "Little space left: free some";
            case WRITES_AGAIN -> "Saving works again";
        };
    }

    /** What that means for the batch. */
    public String storeDetail(Optional<StoreTrouble.What> trouble) {
        boolean saved = trouble.isEmpty() || trouble.get() == StoreTrouble.What.SPACE_LOW;
        return saved ? "everything is saved so far" : "readings are kept in memory";
    }

    /** What an alarm is about, with its figure. */
    public String detail(AlarmId alarm, OptionalDouble figure) {
        return switch (alarm) {
            case HEADING_OVER -> headedFor(figure);
            case OVER_RANGE -> over(figure, recipe.work().range().highCelsius()) + " over";
            case NEAR_MELT_OUT, MELT_OUT -> "cool water under the bowl; was " + celsius(figure);
            case HEADING_UNDER -> celsius(figure) + " in 3 min";
            case TOO_COOL -> over(figure, recipe.work().range().lowCelsius()) + " under";
            case OVER_COOLED -> celsius(figure);
            case MELT_TOO_HOT -> celsius(figure) + "; stir";
            case BATH_HOT -> "bath " + celsius(figure) + "; steam and water scald";
            case PROBE_FAULT, NO_READING, READING_DOUBTFUL, NOT_RECORDING, PROBE_OUT -> shortAction(alarm);
        };
    }

    /** The whole advice of an alarm. */
    public String action(AlarmId alarm) {
        return AlarmTable.of(alarm).action();
    }

    /** What to do while nothing is due. */
    public String calm(Phase phase) {
        return switch (phase) {
            case MELT -> "Melt gently, stir now and then";
            case COOL -> "Cool it, keep stirring";
            case SEED -> "Keep stirring";
            case REWARM -> "Keep stirring";
            case WORK -> "Pour, and stir between moulds";
            case REST -> "Batch done";
        };
    }

    /** Where this phase is going, in a few words. */
    public String calmAside(Phase phase) {
        return switch (phase) {
            case MELT ->
                range(recipe.melt().range()) + " for "
                        + Spans.words(recipe.melt().dwell());
            case COOL, SEED -> "aim " + range(recipe.cool().range());
            case REWARM, WORK -> "aim " + range(recipe.work().range());
            case REST -> "set at " + range(SETTING) + ", look after a day";
        };
    }

    /** How long the melt has been held hot enough. */
    public String held(Duration dwell) {
        return "held " + Spans.words(dwell) + " of " + Spans.words(recipe.melt().dwell());
    }

    /** A range with its unit, for example {@code 31 to 32 °C}. */
    public String range(CelsiusRange range) {
        return bareRange(range) + " " + units.symbol();
    }

    /** A range without its unit. */
    public String bareRange(CelsiusRange range) {
        return units.plain(range.lowCelsius()) + " to " + units.plain(range.highCelsius());
    }

    /** It speaks of a lift that is overdue as well, whose peak may still lie within the range, and off the bath. */
    private String headedFor(OptionalDouble figure) {
        if (figure.isEmpty()) return "cool cloth, stir";
        boolean within = figure.getAsDouble() <= recipe.work().range().highCelsius();
        return within ? "lift it now: it still turns at " + celsius(figure) : "it heads for " + celsius(figure);
    }

    private String shortAction(AlarmId alarm) {
        return switch (alarm) {
            case PROBE_FAULT -> "plug and lead; second thermometer";
            case NO_READING -> "we keep trying; second thermometer";
            case READING_DOUBTFUL -> "touching the bowl, or out?";
            case PROBE_OUT -> keys.fill("then {probe-out}; nothing is watched meanwhile");
            default -> "readings are kept in memory";
        };
    }

    private String over(OptionalDouble figure, double limitCelsius) {
        return figure.isPresent() ? units.difference(Math.abs(figure.getAsDouble() - limitCelsius)) : "";
    }

    private static String grams(OptionalDouble figure) {
        return figure.isPresent() ? " " + Math.round(figure.getAsDouble()) + " g of" : " the";
    }

    /** At its end it waits for the forecast to agree: a nought that stands would be a lie. */
    private static String countdown(OptionalDouble figure) {
        boolean soon = figure.isPresent() && Math.round(figure.getAsDouble()) < 1;
        return soon ? "any second" : "in about " + seconds(figure);
    }

    private String celsius(OptionalDouble figure) {
        return figure.isPresent() ? units.withUnit(figure.getAsDouble()) : "–";
    }

    private String difference(OptionalDouble figure) {
        return figure.isPresent() ? units.difference(figure.getAsDouble()) : "a little";
    }

    private static String seconds(OptionalDouble figure) {
        return figure.isPresent() ? Spans.about(figure.getAsDouble()) : "a few seconds";
    }

    private static String minutes(OptionalDouble figure) {
        double minutes = figure.orElse(0);
        return minutes < 1 ? Spans.about(60 * minutes) : Math.round(Math.ceil(minutes)) + " min";
    }
}
