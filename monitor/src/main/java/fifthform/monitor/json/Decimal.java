package fifthform.monitor.json;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Numbers as short decimals. {@code Double.toString} gives other digits on JDK 17 than on 19 and later; a journal must
 * not, for its events are compared byte by byte.
 */
public final class Decimal {
    /** Most decimals that any file of ours holds: a millionth of a kelvin. */
    public static final int MOST_PLACES = 6;

    private static final long[] POWER_OF_TEN = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};
    /** Up to here value × 10⁶ is rounded to the right integer by a double's 53 bits. */
    private static final double LARGEST_FAST = 1e9;

    private Decimal() {}

    /** At most six decimals, trailing zeros dropped; a half is rounded up. */
    public static String of(double value) {
        return of(value, MOST_PLACES);
    }

    /**
     * At most {@code places} decimals, trailing zeros dropped; a half is rounded up.
     *
     * @param value any finite number
     * @param places 0 to 6
     */
    public static String of(double value, int places) {
        if (places < 0 || places > MOST_PLACES) {
            throw new IllegalArgumentException("places must be 0 to 6, was " + places);
        }
        if (!Double.isFinite(value)) throw new IllegalArgumentException("value must be finite, was " + value);
        if (Math.abs(value) > LARGEST_FAST) return large(value, places);
        return scaled(Math.round(value * POWER_OF_TEN[places]), places);
    }

    /** The number that {@link #of(double)} leaves of this one. */
    public static double rounded(double value) {
        return Double.parseDouble(of(value));
    }

    /**
     * {@code units / 10^places} exactly, trailing zeros dropped.
     *
     * @param places 0 to 18
     */
    public static String scaled(long units, int places) {
        String digits = Long.toString(Math.abs(units));
        StringBuilder text = new StringBuilder(places + 8);
        if (units < 0) text.append('-');
        int whole = digits.length() - places;
        text.append(whole > 0 ? digits.substring(0, whole) : "0");
        int last = digits.length();
        while (last > Math.max(whole, 0) && digits.charAt(last - 1) == '0') last--;
        if (last > Math.max(whole, 0)) {
            text.append('.').append("0".repeat(Math.max(0, -whole))).append(digits, Math.max(whole, 0), last);
        }
        // All decimals zero, and before the point too: no minus sign stands before a zero.
        return units == 0 ? "0" : text.toString();
    }

    private static String large(double value, int places) {
        BigDecimal exact = new BigDecimal(value).setScale(places, RoundingMode.HALF_UP);
        return exact.stripTrailingZeros().toPlainString();
    }
}
