package fifthform.monitor.chart;

import java.util.Locale;

/** Temperatures as they stand beside a scale, where each letter costs room. */
final class Figures {
    private Figures() {}

    /** One decimal, and none where it is nought. */
    static String of(double shown) {
        String one = String.format(Locale.ROOT, "%.1f", shown);
        return one.endsWith(".0") ? one.substring(0, one.length() - 2) : one;
    }

    /** From the lower to the upper end. */
    static String range(double lowShown, double highShown) {
        return of(lowShown) + "–" + of(highShown);
    }
}
