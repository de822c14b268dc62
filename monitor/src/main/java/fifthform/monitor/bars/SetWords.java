package fifthform.monitor.bars;

import fifthform.curves.setting.Condensation;
import fifthform.curves.setting.CoolingPlace;
import fifthform.curves.setting.SetEvent;
import fifthform.curves.setting.SetPlan;
import fifthform.monitor.model.Spans;
import fifthform.monitor.settings.Units;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** What is said of bars that set. */
public final class SetWords {
    private final Units units;

    public SetWords(Units units) {
        this.units = Objects.requireNonNull(units, "units");
    }

    /** What to do, before the moulds go in. */
    public List<String> plan(SetPlan plan) {
        List<String> lines = new ArrayList<>();
        lines.add(
                switch (plan.place()) {
                    case ROOM ->
                        "In the room, 18 to 20 °C, out of the sun and off the stack "
                                + source("common practice, no source");
                    case COOL ->
                        "In a cool place, 12 to 16 °C with moving air, moulds apart "
                                + source("supplier's page, read: 2 h or more for filled moulds");
                    case FRIDGE ->
                        "In the fridge, 8 to 12 °C, for 10 to 20 min once the edges have lost their gloss, then in the"
                                + " room " + source("common practice, no source");
                });
        if (!plan.place().range().contains(plan.placeCelsius())) {
            lines.add("It is " + units.withUnit(plan.placeCelsius()) + " there, which is "
                    + (plan.placeCelsius() > plan.place().range().highCelsius() ? "warmer" : "colder") + " than that.");
        }
        lines.add(plan.toSet()
                .map(t -> "By heat alone bars of " + Units.format("%.0f", plan.millimetres()) + " mm set in about "
                        + Spans.words(rounded(t)) + " (reckoned, not measured). Look after "
                        + Spans.words(rounded(plan.look())) + "; leave them no longer than "
                        + Spans.words(rounded(plan.longest())) + ".")
                .orElse("At " + units.withUnit(plan.placeCelsius())
                        + " they do not set: the heat of setting cannot leave. Find a cooler place."));
        lines.add(
                "They are ready when they pull away from the mould all over: no dark, wet-looking patches seen through"
                        + " it. Do not twist the mould.");
        lines.add(
                plan.air()
                        .map(a -> out(plan, a))
                        .orElse(
                                "Say --room and --humidity, and the dew point tells whether water comes onto them when they come out."));
        return lines;
    }

    private String out(SetPlan plan, Condensation air) {
        String dew = "The dew point of your room is " + units.withUnit(air.dewCelsius()) + ". ";
        if (!air.wets(plan.placeCelsius())) {
            return dew + "At " + units.withUnit(plan.placeCelsius()) + " no water comes onto them.";
        }
        return dew + "Below " + units.withUnit(air.safeCelsius()) + " water comes onto bars, and dries to sugar bloom: "
                + closed(air.closedFor(plan.placeCelsius(), plan.millimetres()));
    }

    private String closed(Optional<Duration> time) {
        return time.map(t -> "take them out in a closed bag or box and leave it closed for about "
                        + Spans.words(rounded(t)) + " (reckoned).")
                .orElse("in this air they may never be opened cold. Dry the room first.");
    }

    private static Duration rounded(Duration time) {
        return Duration.ofMinutes(Math.max(1, Math.round(time.toSeconds() / 60.0)));
    }

    private static String source(String what) {
        return "(" + what + ").";
    }

    /** One event. */
    public String of(SetEvent event, SetPlan plan) {
        String celsius =
                event.celsius().isPresent() ? units.withUnit(event.celsius().getAsDouble()) : "";
        return switch (event.kind()) {
            case BEGUN -> "They are in. Nothing to do until it says so.";
            case TOO_WARM ->
                "It has been above 24 °C for a quarter of an hour, now " + celsius
                        + ": the heat of setting stays in the core. Move them to a cooler place, apart, with moving air.";
            case TOO_COLD ->
                "It is " + celsius
                        + " in the first ten minutes: below 8 °C other forms set first. Move them to 10 to 16 °C.";
            case TOO_FAST -> "It falls faster than 3 °C a minute. Move them to a milder place.";
            case LOOK ->
                "Look now, after " + minutes(event)
                        + ": do they pull away all over? If so, press Enter. If dark patches are left, wait.";
            case COME_OUT ->
                plan.place() == CoolingPlace.FRIDGE
                        ? "Long enough for a fridge, " + minutes(event) + ": take them out, closed."
                        : "Long enough, " + minutes(event) + ": longer does no more good here.";
            case PULLS_AWAY -> "They pull away. Take them out, and press Enter again when they are out.";
            case KEEP_CLOSED ->
                "They come out at " + celsius + ", and water comes onto them below "
                        + units.withUnit(event.limitCelsius().orElse(Double.NaN)) + ". Leave them closed: "
                        + event.time()
                                .map(t -> "about " + Spans.words(rounded(t)) + ".")
                                .orElse("this air is too damp to open them at all while they are cold.");
            case MAYBE_WET ->
                "They come out at " + celsius
                        + ". The humidity was not said, so leave them closed until they are as warm" + " as the room.";
            case MAY_OPEN -> "They may be opened: no water comes onto them any more.";
            case SILENT -> "No reading for a minute. Look at the plug; what was read is kept.";
            case READS_AGAIN -> "It reads again, " + celsius + ".";
        };
    }

    private static String minutes(SetEvent event) {
        return event.time().map(t -> Spans.words(rounded(t))).orElse("a while");
    }
}
