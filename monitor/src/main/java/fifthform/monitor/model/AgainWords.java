package fifthform.monitor.model;

import fifthform.curves.review.Cause;
import fifthform.curves.review.Causes;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Setup;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.HoldText;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is said before a batch that is no whole one: of the batch before it, of what is to be kept, of what warms it. */
public final class AgainWords {
    private final CauseWords causes;

    /** In these units, at the clock of the earlier batch's kitchen. */
    public AgainWords(Units units, ZoneId zone) {
        causes = new CauseWords(units, zone);
    }

    /** What went wrong first then, one thing to do otherwise this time, and what no melting saves. */
    public List<String> lines(String session, Causes then) {
        List<String> lines = new ArrayList<>();
        Optional<Cause> first = then.first();
        lines.add(
                HoldText.AGAIN_FIRST_THEN.say(session, first.map(causes::line).orElseGet(HoldText.NOTHING_FOUND::say)));
        lines.add(HoldText.THIS_TIME.say(first.map(Cause::kind)
                .map(AgainWords::otherwise)
                .orElse(HoldText.LOOK_AT_THE_REST)
                .say()));
        lines.add(HoldText.NOT_SAVED.say());
        return lines;
    }

    private static HoldText otherwise(Cause.Kind kind) {
        return switch (kind) {
            case MELTED_TOO_COOL, MELTED_TOO_SHORT -> HoldText.INSTEAD_MELTED_TOO_COOL;
            case MELTED_TOO_HOT -> HoldText.INSTEAD_MELTED_TOO_HOT;
            case COOLED_TOO_LITTLE -> HoldText.INSTEAD_COOLED_TOO_LITTLE;
            case HELD_TOO_SHORT -> HoldText.INSTEAD_HELD_TOO_SHORT;
            case COOLED_TOO_DEEP -> HoldText.INSTEAD_COOLED_TOO_DEEP;
            case COOLED_TOO_LONG -> HoldText.INSTEAD_COOLED_TOO_LONG;
            case NOT_STIRRED -> HoldText.INSTEAD_NOT_STIRRED;
            case BATH_TOO_HOT -> HoldText.INSTEAD_BATH_TOO_HOT;
            case LIFTED_LATE -> HoldText.INSTEAD_LIFTED_LATE;
            case OVERSHOT, SEED_LOST -> HoldText.INSTEAD_OVERSHOT;
            case WORKED_TOO_COOL -> HoldText.INSTEAD_WORKED_TOO_COOL;
            case PROBE_OUT -> HoldText.INSTEAD_PROBE_OUT;
            case PROBE_FAULTY, READINGS_DOUBTFUL, READINGS_MISSING -> HoldText.INSTEAD_PROBE_FAULTY;
            case CUE_IGNORED, UNFINISHED, NOT_PROVED -> HoldText.LOOK_AT_THE_REST;
        };
    }

    /** What must be known before it begins; empty for a whole batch without a plan to hold it. */
    public static List<String> before(Setup setup, Units units) {
        List<String> lines = new ArrayList<>();
        double warn = setup.recipe().meltOut().warnCelsius();
        if (setup.beginning().isInTemper()) {
            lines.add(HoldText.WARM_IT_GENTLY.say(
                    units.withUnit(warn),
                    units.withUnit(setup.recipe().meltOut().limitCelsius())));
        }
        setup.holding().map(Holding::warmth).map(AgainWords::caution).ifPresent(lines::add);
        return lines;
    }

    private static String caution(Holding.Warmth warmth) {
        return switch (warmth) {
            case BATH -> HoldText.CAUTION_BATH.say();
            case AIR -> HoldText.CAUTION_AIR.say();
            case BOX -> HoldText.CAUTION_BOX.say();
        };
    }

    /**
     * The batch whose bars these were and those that its own were melted for, a sentence each.
     *
     * @param madeAgain sessions that were made from its bars
     */
    public static List<String> links(Beginning beginning, List<String> madeAgain) {
        List<String> lines = new ArrayList<>();
        beginning.again().ifPresent(from -> lines.add(HoldText.LINK_FROM.say(from)));
        if (!madeAgain.isEmpty()) lines.add(HoldText.LINK_IN.say(String.join(", ", madeAgain)));
        return lines;
    }

    /** What kind of batch it is, for lists: empty for a whole one. */
    public static String kind(Beginning beginning) {
        if (beginning.isInTemper()) return HoldText.KIND_IN_TEMPER.say();
        return beginning.again().map(of -> HoldText.KIND_AGAIN.say(of)).orElse("");
    }
}
