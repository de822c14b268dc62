package fifthform.monitor.model;

import fifthform.curves.engine.OtherReading;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.WatchText;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** What another thermometer said, in one line. */
public final class OtherWords {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    /** Less than this is what people call the same. */
    private static final double SAME_KELVIN = 0.05;

    /** How a line about another thermometer begins. */
    public static final WatchText BEGINNING = WatchText.OTHER_THERMOMETER;

    private OtherWords() {}

    /** For example {@code other thermometer 31.8 °C at 14:03, 0.4 °C above}. */
    public static String of(OtherReading other, Units units, ZoneId zone) {
        String said = WatchText.OTHER_AT.say(
                BEGINNING.say(),
                units.withUnit(other.celsius()),
                CLOCK.format(other.at().atZone(zone)));
        if (other.aboveKelvin().isEmpty()) return said;
        double above = other.aboveKelvin().getAsDouble();
        String apart = Math.abs(above) < SAME_KELVIN
                ? WatchText.THE_SAME.say()
                : ", " + units.difference(Math.abs(above))
                        + (above > 0 ? WatchText.ABOVE.say() : WatchText.BELOW.say());
        return said + apart + (other.disagrees() ? WatchText.CHECK_THE_PROBE_IN_ICE_WATER.say() : "");
    }
}
