package fifthform.monitor.model;

import fifthform.curves.engine.OtherReading;
import fifthform.monitor.settings.Units;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** What another thermometer said, in one line. */
public final class OtherWords {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    /** Less than this is what people call the same. */
    private static final double SAME_KELVIN = 0.05;

    /** How a line about another thermometer begins. */
    public static final String BEGINNING = "other thermometer ";

    private OtherWords() {}

    /** For example {@code other thermometer 31.8 °C at 14:03, 0.4 °C above}. */
    public static String of(OtherReading other, Units units, ZoneId zone) {
        String said = BEGINNING + units.withUnit(other.celsius()) + " at "
                + CLOCK.format(other.at().atZone(zone));
        if (other.aboveKelvin().isEmpty()) return said;
        double above = other.aboveKelvin().getAsDouble();
        String apart = Math.abs(above) < SAME_KELVIN
                ? ", the same"
                : ", " + units.difference(Math.abs(above)) + (above > 0 ? " above" : " below");
        return said + apart + (other.disagrees() ? ": check the probe in ice water" : "");
    }
}
