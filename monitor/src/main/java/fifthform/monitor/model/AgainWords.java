package fifthform.monitor.model;

import fifthform.curves.review.Cause;
import fifthform.curves.review.Causes;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Setup;
import fifthform.monitor.settings.Units;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is said before a batch that is no whole one: of the batch before it, of what is to be kept, of what warms it. */
public final class AgainWords {
    private static final String NOT_SAVED =
            "Melting does not save bars that had water in them, taste burnt, or show furry growth: throw those away.";

    private final CauseWords causes;

    /** In these units, at the clock of the earlier batch's kitchen. */
    public AgainWords(Units units, ZoneId zone) {
        causes = new CauseWords(units, zone);
    }

    /** What went wrong first then, one thing to do otherwise this time, and what no melting saves. */
    public List<String> lines(String session, Causes then) {
        List<String> lines = new ArrayList<>();
        Optional<Cause> first = then.first();
        lines.add("Again, of " + session + ". What went wrong first then: "
                + first.map(causes::line).orElse("nothing, as far as the temperatures tell") + ".");
        lines.add("This time: "
                + first.map(Cause::kind).map(AgainWords::otherwise).orElse(LOOK_AT_THE_REST));
        lines.add(NOT_SAVED);
        return lines;
    }

    private static final String LOOK_AT_THE_REST =
            "prove a sample before you pour, and let the moulds set at 15 to 20 °C: what temperatures do not show.";

    private static String otherwise(Cause.Kind kind) {
        return switch (kind) {
            case MELTED_TOO_COOL, MELTED_TOO_SHORT -> "do not leave the hot water before the screen says “all melted”.";
            case MELTED_TOO_HOT -> "turn the burner down before it melts, and keep the bowl clear of the water.";
            case COOLED_TOO_LITTLE -> "stay in the cold water until the screen says “out of the water now”.";
            case HELD_TOO_SHORT -> "stir on in the cool until the screen says that it is long enough.";
            case COOLED_TOO_DEEP -> "take cold water that is less cold, and lift when told: it sinks on.";
            case COOLED_TOO_LONG -> "go back over warm water as soon as the screen says enough.";
            case NOT_STIRRED -> "stir from the cold water on, without a rest: crystals need it as much as the cold.";
            case BATH_TOO_HOT -> "let the warm water cool to its plan before the bowl goes over it.";
            case LIFTED_LATE -> "have your hands at the bowl from “get ready” on, or go by short dips: --lift touches.";
            case OVERSHOT, SEED_LOST -> "go up by short dips, --lift touches, and keep seed at hand.";
            case WORKED_TOO_COOL -> "plan the hold: --hold, with --warm-by bath, air or box.";
            case PROBE_OUT -> "put the probe back before the bowl goes into any water.";
            case PROBE_FAULTY, READINGS_DOUBTFUL, READINGS_MISSING ->
                "look at plug, lead and tip first: monitor/run check-probe.";
            case CUE_IGNORED, UNFINISHED, NOT_PROVED -> LOOK_AT_THE_REST;
        };
    }

    /** What must be known before it begins; empty for a whole batch without a plan to hold it. */
    public static List<String> before(Setup setup, Units units) {
        List<String> lines = new ArrayList<>();
        double warn = setup.recipe().meltOut().warnCelsius();
        if (setup.beginning().isInTemper()) {
            lines.add(
                    "In temper already: warm it gently, stir, and never let it pass " + units.withUnit(warn)
                            + "; at " + units.withUnit(setup.recipe().meltOut().limitCelsius())
                            + " the good crystals are gone. No melt, no cold water. Nobody saw its temper made: prove a sample.");
        }
        setup.holding().map(Holding::warmth).map(AgainWords::caution).ifPresent(lines::add);
        return lines;
    }

    private static String caution(Holding.Warmth warmth) {
        return switch (warmth) {
            case BATH -> "Held by the bath: steam scalds, tilt the bowl away from you and wipe it each time.";
            case AIR ->
                "Held by warm air: a heat gun blows at 300 °C and more, burns skin and scorches chocolate within"
                        + " seconds. Keep it moving, a hand's breadth off or more, and mains tools away from water and"
                        + " steam.";
            case BOX ->
                "Held in a warm box: cover the bowl against drops, and use no lamp or heater that is not made for it."
                        + " Set it to the middle of the working range at first.";
        };
    }

    /** What kind of batch it is, for lists: empty for a whole one. */
    public static String kind(Beginning beginning) {
        if (beginning.isInTemper()) return "in temper at the start";
        return beginning.again().map(of -> "again, of " + of).orElse("");
    }
}
