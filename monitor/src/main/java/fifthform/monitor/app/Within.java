package fifthform.monitor.app;

import fifthform.monitor.json.Decimal;
import fifthform.monitor.texts.CommandText;
import java.util.OptionalDouble;

/** Numbers of options that must lie in a range; one that does not ends the command before anything was done. */
final class Within {
    private Within() {}

    /**
     * The number itself.
     *
     * @param option as the maker types it
     * @param unit of value and bounds, in words or as a sign
     * @throws Refusal it is below {@code low}, above {@code high} or no number
     */
    static double number(double value, double low, double high, String option, String unit) throws Refusal {
        if (value >= low && value <= high) return value;
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                CommandText.WAS_NOTHING_WAS_DONE_GIVE_TO.say(
                        option, plain(value), Decimal.of(low), Decimal.of(high), unit));
    }

    /** The same of an option that may be left out: {@code null} is nothing. */
    static OptionalDouble optional(Double value, double low, double high, String option, String unit) throws Refusal {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(number(value, low, high, option, unit));
    }

    private static String plain(double value) {
        return Double.isFinite(value) ? Decimal.of(value) : String.valueOf(value);
    }
}
