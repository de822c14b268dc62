package fifthform.monitor.model;

import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.UnitText;

/** How much chocolate, in words. */
final class Amounts {
    private Amounts() {}

    /** For example {@code 800 g} or {@code 1 kg}. */
    static String words(double grams) {
        return grams < 1000
                ? UnitText.GRAMS.say(Math.round(grams))
                : UnitText.KILOGRAMS.say(Units.format("%.1f", grams / 1000).replace(".0", ""));
    }
}
