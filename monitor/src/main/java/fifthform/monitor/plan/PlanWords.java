package fifthform.monitor.plan;

import fifthform.curves.plan.BatchPlan;
import fifthform.curves.plan.BatchPlan.StepKind;
import fifthform.curves.plan.Caveat;
import fifthform.curves.plan.PlanKey;
import fifthform.curves.plan.Planned;
import fifthform.monitor.settings.Units;
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
        return value(figure) + " (" + bare(figure.key(), figure.low()) + " to " + bare(figure.key(), figure.high())
                + ")";
    }

    /** {@code 29.3 °C: 90 ml, 29.8 °C: 60 ml, …}: what to pour for a bowl that stands still there. */
    String topUps(BatchPlan plan) {
        return plan.topUps().stream()
                .map(row -> celsius(row.bowlCelsius()) + ": " + millilitres(row.waterGrams()))
                .collect(Collectors.joining(", "));
    }

    /** Poured water to five, the way a scale or a jug can follow; never more than is meant. */
    static String millilitres(double grams) {
        return (long) (5 * Math.floor(grams / 5)) + " ml";
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
        return grams < 1000 ? Math.round(grams / 10) * 10 + " ml" : Units.format("%.1f l", grams / 1000);
    }

    private static String grams(double grams) {
        return Math.round(grams) + " g";
    }

    /** Seconds below two minutes, then minutes. */
    static String time(double seconds) {
        return seconds < 120 ? Math.round(seconds) + " s" : Math.round(seconds / 60) + " min";
    }

    static String step(StepKind kind) {
        return switch (kind) {
            case MELT -> "melt";
            case MELT_HOLD -> "hold it melted";
            case COLD_BATH -> "cold bath";
            case COOL_HOLD -> "hold it cool, stirring";
            case WARM_BATH -> "warm bath, slow and safe";
            case TOP_UP -> "warm bath, second step";
            case PROVE -> "smear and wait";
            case POUR -> "fill the moulds";
            case SET -> "in the cool";
        };
    }

    static String caveat(Caveat caveat) {
        return switch (caveat) {
            case PROBE_UNCHECKED ->
                "The thermometer was not checked, so the bath is kept far below. Check it in ice (check-probe), then say --thermometer checked.";
            case ENDS_SHORT -> "Even with the second step the slow bath stays below the range. Finish with short dips.";
            case TAP_TOO_WARM -> "The tap is too warm for a cold bath without ice.";
            case QUICK_TOO_HOT ->
                "The hotter bath leaves hardly time to lift. Take a cooler one (--quick-bath), or short dips.";
            case BOWL_GUESSED -> "The bowl was not weighed: a usual one stands in (--bowl-weight).";
            case PAN_GUESSED -> "The pan was not weighed: 0.8 kg stands in (--pan-weight).";
            case TAP_GUESSED -> "Nobody said how warm the tap is: 16 °C stands in (--tap).";
            case ROOM_GUESSED -> "Nobody said how warm the room is: 21 °C stands in (--room).";
            case COAST_GUESSED -> "How far this bowl coasts is a guess from its material until batches have shown it.";
            case ROOM_WARM -> "The room is so warm that the bowl hardly cools on the table.";
        };
    }
}
