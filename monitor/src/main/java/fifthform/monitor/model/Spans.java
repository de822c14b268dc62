package fifthform.monitor.model;

import fifthform.monitor.texts.UnitText;
import java.time.Duration;

/** Times in words. */
public final class Spans {
    private Spans() {}

    /** For example {@code 45 s}, {@code 2 min 10 s}, {@code 12 min}, {@code 1 h 5 min}, {@code 1 h}. */
    public static String words(Duration span) {
        long seconds = Math.max(0, span.toSeconds());
        if (seconds < 60) return UnitText.SECONDS.say(seconds);
        if (seconds < 10 * 60) {
            long rest = seconds % 60;
            return UnitText.MINUTES_AND.say(seconds / 60, rest == 0 ? "" : UnitText.AND_SECONDS.say(rest));
        }
        if (seconds < 3600) return UnitText.MINUTES.say(seconds / 60);
        return hours(seconds / 60);
    }

    /** Whole minutes, for headings that must not twitch each second. */
    static String minutes(Duration span) {
        long minutes = Math.max(0, span.toMinutes());
        return minutes < 60 ? UnitText.MINUTES.say(minutes) : hours(minutes);
    }

    private static String hours(long minutes) {
        return minutes % 60 == 0
                ? UnitText.HOURS.say(minutes / 60)
                : UnitText.HOURS_AND_MINUTES.say(minutes / 60, minutes % 60);
    }

    /** Seconds to five below a minute, so that a countdown can be read: {@code 45 s}, {@code 8 s}, {@code 2 min}. */
    static String about(double seconds) {
        long whole = Math.max(0, Math.round(seconds));
        if (whole < 15) return UnitText.SECONDS.say(whole);
        if (whole < 90) return UnitText.SECONDS.say(5 * Math.round(whole / 5.0));
        return UnitText.MINUTES.say(Math.round(whole / 60.0));
    }
}
