package fifthform.monitor.settings;

import java.util.Locale;

/** The maker's unit of temperature: how values are shown, never how they are stored. */
public enum Units {
    CELSIUS("°C", 1, 0),
    FAHRENHEIT("°F", 1.8, 32);

    private final String symbol;
    private final double factor;
    private final double offset;

    Units(String symbol, double factor, double offset) {
        this.symbol = symbol;
        this.factor = factor;
        this.offset = offset;
    }

    /** The word in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String symbol() {
        return symbol;
    }

    /** A temperature as it is shown. */
    public double shown(double celsius) {
        return celsius * factor + offset;
    }

    /** The temperature, °C, that is shown so. */
    public double celsius(double shown) {
        return (shown - offset) / factor;
    }

    /** A difference as it is shown. */
    public double shownDifference(double kelvin) {
        return kelvin * factor;
    }

    /** A temperature with one decimal, without its unit. */
    public String oneDecimal(double celsius) {
        return format("%.1f", shown(celsius));
    }

    /** A temperature without a decimal where it has none, else with one; without its unit. */
    public String plain(double celsius) {
        String text = oneDecimal(celsius);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    /** A temperature with one decimal and its unit. */
    public String withUnit(double celsius) {
        return oneDecimal(celsius) + " " + symbol;
    }

    /** A difference with one decimal and its unit. */
    public String difference(double kelvin) {
        return format("%.1f", shownDifference(kelvin)) + " " + symbol;
    }

    /** As {@link String#format}, the same in every country, and without a minus before zero. */
    public static String format(String pattern, Object... values) {
        String text = String.format(Locale.ROOT, pattern, values);
        // "-0.0" is a rounding's leftover and reads like a mistake.
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }
}
