package fifthform.monitor.model;

import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.WhyText;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Why an alarm stands. */
final class TroubleWords {
    private final Reason reason;
    private final Units units;

    TroubleWords(Reason reason, Units units) {
        this.reason = reason;
        this.units = units;
    }

    List<String> past() {
        boolean bath = of(Figure.BATH_C).isPresent() && of(Figure.CHOCOLATE_C).isEmpty();
        List<String> said = new ArrayList<>();
        said.add((bath ? WhyText.THE_BATH_STANDS_AT.say(celsius(Figure.BATH_C)) : stands()) + ": " + limit());
        if (of(Figure.DEADBAND_K).isPresent()) said.add(WhyText.THE_ALARM_ENDS_AT.say(units.withUnit(endsAtCelsius())));
        return said;
    }

    private double endsAtCelsius() {
        double deadband = of(Figure.DEADBAND_K).orElse(0);
        return of(Figure.LIMIT_C).orElse(0) + (isOnTheColdSide() ? deadband : -deadband);
    }

    List<String> forecast() {
        String band =
                of(Figure.TURN_LOWER_C).isPresent() && of(Figure.TURN_UPPER_C).isPresent()
                        ? WhyText.BAND_TO.say(bare(Figure.TURN_LOWER_C), bare(Figure.TURN_UPPER_C))
                        : "";
        String then = of(Figure.TURN_C).isPresent()
                ? WhyText.OFF_THE_HEAT_IT_TURNS_AT.say(celsius(Figure.TURN_C), band)
                : WhyText.IN_IT_WILL_BE_AT_ABOUT.say(
                        Spans.about(of(Figure.AHEAD_S).orElse(0)), celsius(Figure.AHEAD_C));
        if (of(Figure.TURN_C).isPresent() && of(Figure.AHEAD_C).isPresent())
            return List.of(
                    WhyText.BEFORE_HANDS_HAVE_ACTED_IT_IS.say(celsius(Figure.AHEAD_C), limit()),
                    then + ".",
                    stands() + ".");
        return List.of(then + ": " + (isWithin() ? passesBeforeHandsAct() : limit()), stands() + ".");
    }

    /** A rise goes on until the hands act; it may pass by that alone. Sessions of an older version tell it so. */
    private boolean isWithin() {
        return of(Figure.PAST_LIMIT_K).orElse(0) < 0;
    }

    private String passesBeforeHandsAct() {
        return WhyText.WITHIN_THE_LIMIT_WHICH_IT.say(celsius(Figure.LIMIT_C));
    }

    List<String> overdue() {
        return List.of(
                WhyText.LIFT_NOW_HAS_STOOD_FOR_S.say(whole(Figure.CUE_STOOD_S), whole(Figure.REACTION_S)),
                WhyText.THE_BOWL_IS_STILL_BEING_WARMED.say(stands()));
    }

    String faults() {
        return WhyText.THE_ADAPTER_REPORTED_FAULTS_OF.say(whole(Figure.FAULTS));
    }

    String silent() {
        String allowed = of(Figure.READING_AGE_ALLOWED_S).isPresent()
                ? WhyText.THIS_PROBE_IS_IN_TIME_UP.say(whole(Figure.READING_AGE_ALLOWED_S))
                : "";
        return WhyText.THE_LAST_GOOD_READING_IS_S.say(whole(Figure.READING_AGE_S), allowed);
    }

    String impossible() {
        String scatter = of(Figure.NOISE_K).isPresent()
                ? WhyText.THEY_SCATTER_BY_AROUND_THEIR.say(difference(Figure.NOISE_K))
                : "";
        return WhyText.THE_READINGS_DO_WHAT_A_TIP.say(scatter);
    }

    private String limit() {
        if (of(Figure.PAST_LIMIT_K).orElse(0) <= 0) return WhyText.BACK_WITHIN_THE_LIMIT.say(celsius(Figure.LIMIT_C));
        WhyText past = isOnTheColdSide() ? WhyText.UNDER_THE_LIMIT : WhyText.OVER_THE_LIMIT;
        return past.say(difference(Figure.PAST_LIMIT_K), celsius(Figure.LIMIT_C));
    }

    /** Whether it warns of the cold: what is past its limit lies below it, and what is back within it above. */
    private boolean isOnTheColdSide() {
        boolean below = first(Figure.BATH_C, Figure.AHEAD_C, Figure.TURN_C, Figure.CHOCOLATE_C)
                < of(Figure.LIMIT_C).orElse(0);
        return below == of(Figure.PAST_LIMIT_K).orElse(0) > 0;
    }

    private double first(Figure... figures) {
        for (Figure figure : figures)
            if (of(figure).isPresent()) return of(figure).getAsDouble();
        return Double.POSITIVE_INFINITY;
    }

    private String stands() {
        return WhyText.IT_STANDS_AT_TROUBLE.say(celsius(Figure.CHOCOLATE_C), rate());
    }

    private String rate() {
        OptionalDouble rate = of(Figure.RATE_K_PER_MIN);
        return rate.isEmpty() ? "" : ", " + ReasonWords.rate(rate.getAsDouble(), units);
    }

    private String celsius(Figure figure) {
        return of(figure).isPresent() ? units.withUnit(of(figure).getAsDouble()) : "–";
    }

    private String bare(Figure figure) {
        return units.oneDecimal(of(figure).orElseThrow());
    }

    private String difference(Figure figure) {
        return units.difference(Math.abs(of(figure).orElse(0)));
    }

    private String whole(Figure figure) {
        return Math.round(of(figure).orElse(0)) + "";
    }

    private OptionalDouble of(Figure figure) {
        return reason.figure(figure);
    }
}
