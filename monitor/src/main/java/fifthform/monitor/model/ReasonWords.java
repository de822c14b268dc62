package fifthform.monitor.model;

import fifthform.curves.cue.CueRules;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import fifthform.monitor.settings.Units;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** A reason in plain words with its figures: what was decided by, what is aimed at, and what that rests on. */
final class ReasonWords {
    private final Reason reason;
    private final Units units;
    private final List<String> said = new ArrayList<>();

    private ReasonWords(Reason reason, Units units) {
        this.reason = reason;
        this.units = units;
    }

    /** The sentences, the deciding one first. */
    static List<String> of(Reason reason, Units units) {
        ReasonWords words = new ReasonWords(reason, units);
        words.rule();
        return List.copyOf(words.said);
    }

    private void rule() {
        DipWords dip = new DipWords(reason, units);
        HoldWords hold = new HoldWords(reason, units);
        TroubleWords trouble = new TroubleWords(reason, units);
        switch (reason.rule()) {
            case HELD_LONG_ENOUGH -> heldLongEnough();
            case STILL_HOLDING -> say("Held " + span(Figure.HELD_S) + " so far" + stands(", now at ") + ".");
            case TURN_REACHES_AIM, UPPER_END_REACHES_RANGE -> turning();
            case PAST_THE_RANGE -> {
                say("It stands at " + celsius(Figure.CHOCOLATE_C) + ", past the" + range(" ") + ".");
                turning();
            }
            case DIP_IS_OVER -> {
                say("The " + seconds(Figure.DIP_S) + " of this dip are over.");
                turn();
                coast();
            }
            case LEFT_THE_WATER -> {
                say("The bowl has left the water; what is in wall and film is still under way.");
                turn();
                coast();
            }
            case FIRST_DIP -> said.addAll(dip.first());
            case SIZED_BY_EARLIER_DIPS -> said.addAll(dip.byEarlierDips());
            case SIZED_BY_COAST -> said.addAll(dip.byCoast());
            case DIPS_GIVE_TOO_LITTLE -> said.addAll(dip.tooLittle());
            case SETTLED ->
                say("It stands" + stands(" at ") + ", in the" + range(" ") + ", and hardly moves" + rate(": ") + ".");
            case LEAVES_THE_RANGE -> leavesTheRange();
            case SEED_KEEPS ->
                say("It stands" + stands(" at ") + ", under " + celsius(Figure.RANGE_HIGH_C)
                        + ", above which seed melts away" + (has(Figure.SEED_G) ? "; planned: " + grams() : "") + ".");
            case KEPT_IN_TEMPER -> say(hold.kept());
            case NOT_ALL_MELTED -> say(hold.notMelted());
            case SEED_HAS_GIVEN -> say(hold.seedOut());
            case DRIFTS_IN_THE_BOX -> say(hold.box());
            case GROWS_THICK -> say(hold.thick());
            case HELD_AS_PLANNED -> say(hold.over());
            case PAST_A_LIMIT -> said.addAll(trouble.past());
            case FORECAST_PASSES_A_LIMIT -> said.addAll(trouble.forecast());
            case LIFT_IS_OVERDUE -> said.addAll(trouble.overdue());
            case FAULTS_IN_A_ROW -> say(trouble.faults());
            case SILENT_FOR_TOO_LONG -> say(trouble.silent());
            case READINGS_IMPOSSIBLE -> say(trouble.impossible());
            case PROBE_SAID_OUT -> say("You said that the probe is out, and not yet that it is back.");
            case JOURNAL_STUCK -> say("The session's file cannot be written as fast as readings come.");
        }
    }

    private void heldLongEnough() {
        String where = has(Figure.RANGE_LOW_C) ? " at " + celsius(Figure.RANGE_LOW_C) + " or more" : "";
        say("The hold is over: " + (has(Figure.HELD_S) ? span(Figure.HELD_S) : "all of it") + where
                + stands(", now at ") + ".");
    }

    private void turning() {
        turn();
        aim();
        time();
        coast();
    }

    /** Where it turns and how sure that is; where the band is wide, that it decides and not the middle. */
    private void turn() {
        if (!has(Figure.TURN_C)) return;
        String band = has(Figure.TURN_LOWER_C) && has(Figure.TURN_UPPER_C)
                ? ", band " + bare(Figure.TURN_LOWER_C) + " to " + bare(Figure.TURN_UPPER_C)
                : "";
        String now = reason.rule() == Rule.LEFT_THE_WATER ? "Turning point about " : "Turning point now about ";
        say(now + celsius(Figure.TURN_C) + band + (has(Figure.RANGE_LOW_C) ? ";" + range(" ") : "") + ".");
        if (reason.rule() != Rule.UPPER_END_REACHES_RANGE) return;
        double width = figure(Figure.TURN_UPPER_C) - figure(Figure.TURN_LOWER_C);
        String wide = width > CueRules.UNSURE_KELVIN
                ? "That band is " + units.difference(width) + " wide, too unsure for one lift; so its upper end decides"
                : "Its upper end decides";
        say(wide + ", which reaches " + celsius(Figure.RANGE_HIGH_C)
                + " once hands have acted; what is missing comes by" + " short dips.");
    }

    /** A lift's aim lies where it costs least ({@code Aim}); older sessions have the rule without the figure. */
    private void aim() {
        boolean warming = has(Figure.LEFT_S);
        if (has(Figure.AIM_C))
            say("Aimed at: " + celsius(Figure.AIM_C)
                    + (warming ? ", lower the less sure it is, since too hot costs a third more than too cool." : "."));
        else if (reason.rule() == Rule.TURN_REACHES_AIM)
            say(
                    "Aimed at: inside that range, lower the less sure it is, since too hot costs a third more than too cool.");
    }

    private void time() {
        String hands = has(Figure.REACTION_S) ? "your hands take about " + seconds(Figure.REACTION_S) : "";
        double left = has(Figure.LEFT_S) ? figure(Figure.LEFT_S) : -1;
        if (left >= 1) say("Lift within " + Spans.about(left) + (hands.isEmpty() ? "" : "; " + hands) + ".");
        else if (left >= 0) say("The second is here" + (hands.isEmpty() ? "" : "; " + hands) + ".");
        else if (!hands.isEmpty()) say(Character.toUpperCase(hands.charAt(0)) + hands.substring(1) + ".");
    }

    private void coast() {
        if (!has(Figure.COAST_S)) return;
        String coasts = CoastWords.withBand(figure(Figure.COAST_S), figureOr(Figure.COAST_LOG_SPREAD, 0), units);
        long lifts = Math.round(figureOr(Figure.LIFTS_SEEN, 0));
        say(
                lifts > 0
                        ? "This bowl coasts " + coasts + ", " + CoastWords.from(lifts) + "."
                        : "No lift of this bowl was seen yet; as a guess it coasts " + coasts + ".");
    }

    private void leavesTheRange() {
        say("It stands" + stands(" at ") + rate(", ") + ".");
        if (has(Figure.LEFT_S) && has(Figure.RANGE_LOW_C))
            say("So it is too thick to pour in " + Spans.about(figure(Figure.LEFT_S)) + ", somewhat under "
                    + celsius(Figure.RANGE_LOW_C) + ".");
    }

    private String stands(String before) {
        return has(Figure.CHOCOLATE_C) ? before + celsius(Figure.CHOCOLATE_C) : "";
    }

    private String rate(String before) {
        return has(Figure.RATE_K_PER_MIN) ? before + rate(figure(Figure.RATE_K_PER_MIN), units) : "";
    }

    /** For example {@code rising 1.0 °C a minute}. */
    static String rate(double kelvinPerMinute, Units units) {
        return (kelvinPerMinute < 0 ? "falling " : "rising ") + units.difference(Math.abs(kelvinPerMinute))
                + " a minute";
    }

    private String range(String before) {
        return has(Figure.RANGE_LOW_C) && has(Figure.RANGE_HIGH_C)
                ? before + "range " + bare(Figure.RANGE_LOW_C) + " to " + bare(Figure.RANGE_HIGH_C)
                : before + "range";
    }

    private String grams() {
        return Math.round(figure(Figure.SEED_G)) + " g";
    }

    private String span(Figure figure) {
        return Spans.words(Duration.ofSeconds(Math.round(figure(figure))));
    }

    private String seconds(Figure figure) {
        return Math.round(figure(figure)) + " s";
    }

    private String celsius(Figure figure) {
        return has(figure) ? units.withUnit(figure(figure)) : "its limit";
    }

    private String bare(Figure figure) {
        return units.oneDecimal(figure(figure));
    }

    private boolean has(Figure figure) {
        return reason.figure(figure).isPresent();
    }

    private double figure(Figure figure) {
        return figureOr(figure, 0);
    }

    private double figureOr(Figure figure, double other) {
        return reason.figure(figure).orElse(other);
    }

    private void say(String sentence) {
        said.add(sentence);
    }
}
