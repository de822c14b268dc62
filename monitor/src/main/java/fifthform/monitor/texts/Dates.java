package fifthform.monitor.texts;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;

/** Days in the language of the words, in its order. */
public final class Dates {
    private Dates() {}

    /** For example {@code 31 January 2026}. */
    public static String day(ZonedDateTime moment) {
        return in(UnitText.DAY, moment);
    }

    /** For example {@code 31 January 2026, 10:15}. */
    public static String dayAndTime(ZonedDateTime moment) {
        return in(UnitText.DAY_AND_TIME, moment);
    }

    private static String in(UnitText order, ZonedDateTime moment) {
        return DateTimeFormatter.ofPattern(order.say(), Book.of(UnitText.class).language())
                .format(moment);
    }
}
