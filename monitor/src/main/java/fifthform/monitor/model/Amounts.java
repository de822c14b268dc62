package fifthform.monitor.model;

import fifthform.monitor.settings.Units;

/** How much chocolate, in words. */
final class Amounts {
    private Amounts() {}

    /** For example {@code 800 g} or {@code 1 kg}. */
    static String words(double grams) {
        return grams < 1000
                ? Math.round(grams) + " g"
                : Units.format("%.1f", grams / 1000).replace(".0", "") + " kg";
    }
}
