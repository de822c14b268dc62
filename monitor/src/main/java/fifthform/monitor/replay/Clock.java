package fifthform.monitor.replay;

import fifthform.monitor.texts.Dates;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How moments of a batch are written: as time of day in the kitchen, and as time since the start. */
public final class Clock {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    private final Instant start;
    private final ZoneId zone;

    Clock(Instant start, ZoneId zone) {
        this.start = start;
        this.zone = zone;
    }

    /** Time of day, for example {@code 14:02:10}. */
    String time(long nanos) {
        return TIME.format(start.plusNanos(nanos).atZone(zone));
    }

    /** The day the batch began. */
    String day() {
        return Dates.day(start.atZone(zone));
    }

    /** Since the start, for example {@code 41:30} or {@code 1:02:03}. */
    public static String elapsed(long nanos) {
        Duration d = Duration.ofNanos(nanos);
        long h = d.toHours();
        return h > 0
                ? String.format(Locale.ROOT, "%d:%02d:%02d", h, d.toMinutesPart(), d.toSecondsPart())
                : String.format(Locale.ROOT, "%d:%02d", d.toMinutesPart(), d.toSecondsPart());
    }
}
