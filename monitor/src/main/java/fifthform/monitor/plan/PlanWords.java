package fifthform.monitor.plan;

import fifthform.curves.plan.BatchPlan;
import fifthform.curves.plan.BatchPlan.StepKind;
import fifthform.curves.plan.Caveat;
import fifthform.curves.plan.PlanKey;
import fifthform.curves.plan.Planned;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.PlanText;
import fifthform.monitor.texts.UnitText;
import java.util.stream.Collectors;

/** How the figures of a plan are written. */
final class PlanWords {
    private final Units units;

    PlanWords(Units units) {
        this.units = units;
    }

    /** For example {@code 28.1 °C}, {@code 8 min}, {@code 1.2 l}; without the band. */
    String value(Planned figure) {
        return written(figure.key(), figure.value());
    }

    /** The same with its band, nine times in ten; without it where the figure is a choice. */
    String banded(Planned figure) {
        if (figure.low() == figure.high()) return value(figure);
        return PlanText.VALUE_WITH_BAND.say(value(figure), end(figure, figure.low()), end(figure, figure.high()));
    }

    /** An end of its band. A time is in the unit of its middle: seconds and minutes in one band are hard to compare. */
    private String end(Planned figure, double value) {
        return figure.key().unit() == PlanKey.Unit.SECONDS
                ? time(value, inSeconds(figure.value()))
                : bare(figure.key(), value);
    }

    /** {@code 29.3 °C: 90 ml, 29.8 °C: 60 ml, …}: what to pour for a bowl that stands still there. */
    String topUps(BatchPlan plan) {
        return plan.topUps().stream()
                .map(row -> celsius(row.bowlCelsius()) + ": " + millilitres(row.waterGrams()))
                .collect(Collectors.joining(", "));
    }

    /** Poured water to five, the way a scale or a jug can follow; never more than is meant. */
    static String millilitres(double grams) {
        return UnitText.MILLILITRES.say((long) (5 * Math.floor(grams / 5)));
    }

    String celsius(double celsius) {
        return units.withUnit(celsius);
    }

    private String written(PlanKey key, double value) {
        return switch (key.unit()) {
            case CELSIUS -> units.withUnit(value);
            case KELVIN -> units.difference(value);
            case GRAMS -> water(key) ? litres(value) : grams(value);
            case SECONDS -> time(value);
            case PERCENT -> Math.round(value) + " %";
            case COUNT -> String.valueOf(Math.round(value));
        };
    }

    private String bare(PlanKey key, double value) {
        return switch (key.unit()) {
            case CELSIUS -> units.oneDecimal(value);
            case KELVIN -> Units.format("%.1f", units.shownDifference(value));
            case GRAMS, SECONDS, PERCENT, COUNT -> written(key, value);
        };
    }

    private static boolean water(PlanKey key) {
        return switch (key) {
            case COLD_WATER, COLD_STOPS_ITSELF, WARM_WATER, TOP_UP_WATER, QUICK_MOST_WATER -> true;
            default -> false;
        };
    }

    /** A litre of water is a kilogram here: at 40 °C it is 0.992. */
    private static String litres(double grams) {
        return grams < 1000
                ? UnitText.MILLILITRES.say(Math.round(grams / 10) * 10)
                : UnitText.LITRES.say(Units.format("%.1f", grams / 1000));
    }

    private static String grams(double grams) {
        return UnitText.GRAMS.say(Math.round(grams));
    }

    /** Seconds below two minutes, then minutes. */
    static String time(double seconds) {
        return time(seconds, inSeconds(seconds));
    }

    private static boolean inSeconds(double seconds) {
        return seconds < 120;
    }

    private static String time(double seconds, boolean inSeconds) {
        return inSeconds ? UnitText.SECONDS.say(Math.round(seconds)) : UnitText.MINUTES.say(Math.round(seconds / 60));
    }

    static String step(StepKind kind) {
        return switch (kind) {
            case MELT -> PlanText.STEP_MELT.say();
            case MELT_HOLD -> PlanText.STEP_MELT_HOLD.say();
            case COLD_BATH -> PlanText.STEP_COLD_BATH.say();
            case COOL_HOLD -> PlanText.STEP_COOL_HOLD.say();
            case WARM_BATH -> PlanText.STEP_WARM_BATH.say();
            case TOP_UP -> PlanText.STEP_TOP_UP.say();
            case PROVE -> PlanText.STEP_PROVE.say();
            case POUR -> PlanText.STEP_POUR.say();
            case SET -> PlanText.STEP_SET.say();
        };
    }

    static String caveat(Caveat caveat) {
        return switch (caveat) {
            case PROBE_UNCHECKED -> PlanText.THE_THERMOMETER_WAS_NOT.say();
            case ENDS_SHORT -> PlanText.EVEN_WITH_THE_SECOND_STEP_THE.say();
            case TAP_TOO_WARM -> PlanText.THE_TAP_IS_TOO_WARM_FOR.say();
            case QUICK_TOO_HOT -> PlanText.THE_HOTTER_BATH_LEAVES_HARDLY.say();
            case BOWL_GUESSED -> PlanText.THE_BOWL_WAS_NOT_WEIGHED_A.say();
            case PAN_GUESSED -> PlanText.THE_PAN_WAS_NOT_WEIGHED_0.say();
            case TAP_GUESSED -> PlanText.NOBODY_SAID_HOW_WARM_THE_TAP.say();
            case ROOM_GUESSED -> PlanText.NOBODY_SAID_HOW_WARM_THE_ROOM.say();
            case COAST_GUESSED -> PlanText.HOW_FAR_THIS_BOWL_COASTS_IS.say();
            case ROOM_WARM -> PlanText.THE_ROOM_IS_SO_WARM_THAT.say();
        };
    }
}
