package fifthform.monitor.model;

import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.monitor.settings.Units;
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
        said.add((bath ? "The bath stands at " + celsius(Figure.BATH_C) : stands()) + ": " + limit());
        if (of(Figure.DEADBAND_K).isPresent())
            said.add("It is over once it is back by " + difference(Figure.DEADBAND_K) + ".");
        return said;
    }

    List<String> forecast() {
        String band =
                of(Figure.TURN_LOWER_C).isPresent() && of(Figure.TURN_UPPER_C).isPresent()
                        ? ", band " + bare(Figure.TURN_LOWER_C) + " to " + bare(Figure.TURN_UPPER_C)
                        : "";
        String then = of(Figure.TURN_C).isPresent()
                ? "Off the heat it turns at about " + celsius(Figure.TURN_C) + band
                : "In " + Spans.about(of(Figure.AHEAD_S).orElse(0)) + " it will be at about " + celsius(Figure.AHEAD_C);
        if (of(Figure.TURN_C).isPresent() && of(Figure.AHEAD_C).isPresent())
            return List.of(
                    "Before hands have acted it is at about " + celsius(Figure.AHEAD_C) + ": " + limit(),
                    then + ".",
                    stands() + ".");
        return List.of(then + ": " + (isWithin() ? passesBeforeHandsAct() : limit()), stands() + ".");
    }

    /** A rise goes on until the hands act; it may pass by that alone. Sessions of an older version tell it so. */
    private boolean isWithin() {
        return of(Figure.PAST_LIMIT_K).orElse(0) < 0;
    }

    private String passesBeforeHandsAct() {
        return "within the limit, " + celsius(Figure.LIMIT_C) + ", which it passes before hands have acted.";
    }

    List<String> overdue() {
        return List.of(
                "“Lift now” has stood for " + whole(Figure.CUE_STOOD_S) + " s; your hands take about "
                        + whole(Figure.REACTION_S) + " s.",
                "The bowl is still being warmed. " + stands() + ".");
    }

    String faults() {
        return "The adapter reported " + whole(Figure.FAULTS) + " faults of probe or wire in a row.";
    }

    String silent() {
        String allowed = of(Figure.READING_AGE_ALLOWED_S).isPresent()
                ? "; this probe is in time up to " + whole(Figure.READING_AGE_ALLOWED_S) + " s"
                : "";
        return "The last good reading is " + whole(Figure.READING_AGE_S) + " s old" + allowed + ".";
    }

    String impossible() {
        String scatter = of(Figure.NOISE_K).isPresent()
                ? "; they scatter by " + difference(Figure.NOISE_K) + " around their curve"
                : "";
        return "The readings do what a tip in chocolate cannot do" + scatter + ". Nothing is forecast from them.";
    }

    private String limit() {
        return difference(Figure.PAST_LIMIT_K) + " past the limit, " + celsius(Figure.LIMIT_C) + ".";
    }

    private String stands() {
        return "It stands at " + celsius(Figure.CHOCOLATE_C) + rate();
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
