package fifthform.monitor.model;

import fifthform.curves.cue.CueRules;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.WatchText;
import fifthform.monitor.texts.WhyText;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** A reason in plain words with its figures: what was decided by, what is aimed at, and what that rests on. */
final class ReasonWords {
    private static final double STEADY_KELVIN_PER_MINUTE = 0.05;

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
            case STILL_HOLDING -> say(WhyText.HELD_SO_FAR.say(span(Figure.HELD_S), stands(WhyText.NOW_AT.say())));
            case TURN_REACHES_AIM, UPPER_END_REACHES_RANGE -> turning();
            case PAST_THE_RANGE -> {
                say(WhyText.IT_STANDS_AT_PAST_THE.say(celsius(Figure.CHOCOLATE_C), range(" ")));
                turning();
            }
            case DIP_IS_OVER -> {
                say(WhyText.THE_OF_THIS_DIP_ARE_OVER.say(seconds(Figure.DIP_S)));
                turn();
                coast();
            }
            case LEFT_THE_WATER -> {
                say(WhyText.THE_BOWL_HAS_LEFT_THE_WATER.say());
                turn();
                coast();
            }
            case FIRST_DIP -> said.addAll(dip.first());
            case SIZED_BY_EARLIER_DIPS -> said.addAll(dip.byEarlierDips());
            case SIZED_BY_COAST -> said.addAll(dip.byCoast());
            case DIPS_GIVE_TOO_LITTLE -> said.addAll(dip.tooLittle());
            case STAY_GIVES_TOO_LITTLE ->
                say(WhyText.IT_STANDS_OVER_THIS_BATH.say(
                        stands(WhyText.AT.say()),
                        rate(", "),
                        has(Figure.BATH_C) ? WhyText.OVER_BATH_OF.say(celsius(Figure.BATH_C)) : "",
                        celsius(Figure.RANGE_LOW_C)));
            case SETTLED ->
                say(WhyText.IT_STANDS_IN_THE_AND_HARDLY.say(
                        stands(WhyText.AT.say()), range(" "), isSteady() ? "" : rate(": ")));
            case LEAVES_THE_RANGE -> leavesTheRange();
            case SEED_KEEPS ->
                say(WhyText.IT_STANDS_UNDER_ABOVE_WHICH.say(
                        stands(WhyText.AT.say()),
                        celsius(Figure.RANGE_HIGH_C),
                        has(Figure.SEED_G) ? WhyText.PLANNED.say(grams()) : ""));
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
            case PROBE_SAID_OUT -> say(WhyText.YOU_SAID_THAT_THE_PROBE_IS.say());
            case JOURNAL_STUCK -> say(WhyText.THE_SESSIONS_FILE_CANNOT_BE.say());
        }
    }

    private void heldLongEnough() {
        String where = has(Figure.RANGE_LOW_C) ? WhyText.AT_OR_MORE.say(celsius(Figure.RANGE_LOW_C)) : "";
        say(WhyText.THE_HOLD_IS_OVER.say(
                has(Figure.HELD_S) ? span(Figure.HELD_S) : WhyText.ALL_OF_IT.say(),
                where,
                stands(WhyText.NOW_AT.say())));
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
                ? WhyText.BAND_TO.say(bare(Figure.TURN_LOWER_C), bare(Figure.TURN_UPPER_C))
                : "";
        String now = reason.rule() == Rule.LEFT_THE_WATER
                ? WhyText.TURNING_POINT_ABOUT.say()
                : WhyText.TURNING_POINT_NOW_ABOUT.say();
        say(now + celsius(Figure.TURN_C) + band + (has(Figure.RANGE_LOW_C) ? ";" + range(" ") : "") + ".");
        if (reason.rule() != Rule.UPPER_END_REACHES_RANGE) return;
        double width = figure(Figure.TURN_UPPER_C) - figure(Figure.TURN_LOWER_C);
        String wide = width > CueRules.UNSURE_KELVIN
                ? WhyText.THAT_BAND_IS_WIDE_TOO_UNSURE.say(units.difference(width))
                : WhyText.ITS_UPPER_END_DECIDES.say();
        say(WhyText.WHICH_REACHES_ONCE_HANDS_HAVE.say(wide, celsius(Figure.RANGE_HIGH_C)));
    }

    /** A lift's aim lies where it costs least ({@code Aim}); older sessions have the rule without the figure. */
    private void aim() {
        boolean warming = has(Figure.LEFT_S);
        if (has(Figure.AIM_C))
            say(WhyText.AIMED_AT.say(celsius(Figure.AIM_C), warming ? WhyText.LOWER_THE_LESS_SURE_IT_IS.say() : "."));
        else if (reason.rule() == Rule.TURN_REACHES_AIM) say(WhyText.AIMED_AT_INSIDE_THAT_RANGE.say());
    }

    private void time() {
        String hands = has(Figure.REACTION_S) ? WhyText.YOUR_HANDS_TAKE_ABOUT.say(seconds(Figure.REACTION_S)) : "";
        double left = has(Figure.LEFT_S) ? figure(Figure.LEFT_S) : -1;
        if (left >= 1) say(WhyText.LIFT_WITHIN.say(Spans.about(left), hands.isEmpty() ? "" : "; " + hands));
        else if (left >= 0) say(WhyText.THE_SECOND_IS_HERE.say(hands.isEmpty() ? "" : "; " + hands));
        else if (!hands.isEmpty()) say(Character.toUpperCase(hands.charAt(0)) + hands.substring(1) + ".");
    }

    private void coast() {
        if (!has(Figure.COAST_S)) return;
        String coasts = CoastWords.withBand(figure(Figure.COAST_S), figureOr(Figure.COAST_LOG_SPREAD, 0), units);
        long lifts = Math.round(figureOr(Figure.LIFTS_SEEN, 0));
        say(
                lifts > 0
                        ? WhyText.THIS_BOWL_COASTS.say(coasts, CoastWords.from(lifts))
                        : WhyText.NO_LIFT_OF_THIS_BOWL_WAS.say(coasts));
    }

    private void leavesTheRange() {
        say(WhyText.IT_STANDS.say(stands(WhyText.AT.say()), rate(", ")));
        if (has(Figure.LEFT_S) && has(Figure.RANGE_LOW_C))
            say(WhyText.SO_IT_IS_TOO_THICK_TO.say(Spans.about(figure(Figure.LEFT_S)), celsius(Figure.RANGE_LOW_C)));
    }

    private String stands(String before) {
        return has(Figure.CHOCOLATE_C) ? before + celsius(Figure.CHOCOLATE_C) : "";
    }

    private String rate(String before) {
        return has(Figure.RATE_K_PER_MIN) ? before + rate(figure(Figure.RATE_K_PER_MIN), units) : "";
    }

    private boolean isSteady() {
        return isSteady(figure(Figure.RATE_K_PER_MIN));
    }

    /** Slower than this is called steady; a rate of noise is no news. */
    static boolean isSteady(double kelvinPerMinute) {
        return Math.abs(kelvinPerMinute) < STEADY_KELVIN_PER_MINUTE;
    }

    /** For example {@code rising 1.0 °C a minute}. */
    static String rate(double kelvinPerMinute, Units units) {
        if (isSteady(kelvinPerMinute)) return WatchText.STEADY.say();
        WhyText rate = kelvinPerMinute < 0 ? WhyText.FALLING_A_MINUTE : WhyText.RISING_A_MINUTE;
        return rate.say(units.difference(Math.abs(kelvinPerMinute)));
    }

    private String range(String before) {
        return has(Figure.RANGE_LOW_C) && has(Figure.RANGE_HIGH_C)
                ? WhyText.RANGE_FROM_TO.say(before, bare(Figure.RANGE_LOW_C), bare(Figure.RANGE_HIGH_C))
                : WhyText.RANGE_BARE.say(before);
    }

    private String grams() {
        return WhyText.GRAMS.say(Math.round(figure(Figure.SEED_G)));
    }

    private String span(Figure figure) {
        return Spans.words(Duration.ofSeconds(Math.round(figure(figure))));
    }

    private String seconds(Figure figure) {
        return WhyText.SECONDS.say(Math.round(figure(figure)));
    }

    private String celsius(Figure figure) {
        return has(figure) ? units.withUnit(figure(figure)) : WhyText.ITS_LIMIT.say();
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
