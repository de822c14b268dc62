package fifthform.monitor.model;

import java.time.Duration;

/** Times in words. */
public final class Spans {
    private Spans() {}

    /** For example {@code 45 s}, {@code 2 min 10 s}, {@code 12 min}, {@code 1 h 5 min}. */
    public static String words(Duration span) {
        long seconds = Math.max(0, span.toSeconds());
        if (seconds < 60) return seconds + " s";
        if (seconds < 10 * 60) {
            long rest = seconds % 60;
            return seconds / 60 + " min" + (rest == 0 ? "" : " " + rest + " s");
        }
        if (seconds < 3600) return seconds / 60 + " min";
        return seconds / 3600 + " h " + seconds % 3600 / 60 + " min";
    }

    /** Whole minutes, for headings that must not twitch each second. */
    static String minutes(Duration span) {
        long minutes = Math.max(0, span.toMinutes());
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
    }

    /** Seconds to five below a minute, so that a countdown can be read: {@code 45 s}, {@code 8 s}, {@code 2 min}. */
    static String about(double seconds) {
        long whole = Math.max(0, Math.round(seconds));
        if (whole < 15) return whole + " s";
        if (whole < 90) return 5 * Math.round(whole / 5.0) + " s";
        return Math.round(whole / 60.0) + " min";
    }
}
