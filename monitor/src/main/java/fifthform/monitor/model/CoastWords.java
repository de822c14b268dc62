package fifthform.monitor.model;

import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.WhyText;

/** How far a bowl coasts, in words. */
final class CoastWords {
    /** Standard deviations from the middle to the 5 and 95 % points of a normal distribution. */
    private static final double NINETY_PERCENT = 1.645;

    private CoastWords() {}

    /** For example {@code about 1.1 °C at 1 °C/min}. */
    static String about(double coastSeconds, Units units) {
        return WhyText.ABOUT_AT.say(units.difference(coastSeconds / 60), perMinute(units));
    }

    /** The same with its band, for example {@code about 1.1 °C at 1 °C/min (0.8 to 1.5)}. */
    static String withBand(double coastSeconds, double logSpread, Units units) {
        double factor = StrictMath.exp(NINETY_PERCENT * logSpread);
        return WhyText.WITH_BAND.say(
                about(coastSeconds, units), figure(coastSeconds / factor, units), figure(coastSeconds * factor, units));
    }

    /** For example {@code from 3 lifts}. */
    static String from(long lifts) {
        return WhyText.FROM_LIFTS.say(lifts);
    }

    private static String figure(double coastSeconds, Units units) {
        return Units.format("%.1f", units.shownDifference(coastSeconds / 60));
    }

    /** One kelvin a minute in the maker's unit, without a decimal where it has none. */
    private static String perMinute(Units units) {
        return WhyText.PER_MINUTE.say(units.difference(1).replace(".0 ", " "));
    }
}
