package fifthform.monitor.store;

import fifthform.monitor.json.Decimal;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.texts.FileText;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;

/**
 * Times in a journal: seconds since the session's start, to the nanosecond, so that every instant comes back exactly.
 *
 * @param start the session's start
 */
record SessionTime(Instant start) {
    static final String KEY = "t";
    private static final int NANO_PLACES = 9;

    /** {@code at} as seconds since the start. */
    String text(Instant at) {
        return text(Duration.between(start, at));
    }

    static String text(Duration duration) {
        return Decimal.scaled(duration.toNanos(), NANO_PLACES);
    }

    /** The instant that a line tells. */
    Instant read(JsonObject line) throws UnreadableJson {
        try {
            return start.plus(duration(line, KEY));
        } catch (DateTimeException | ArithmeticException e) {
            throw new UnreadableJson(FileText.T_IS_NO_TIME_OF_THIS.say());
        }
    }

    static Duration duration(JsonObject line, String key) throws UnreadableJson {
        BigDecimal seconds = line.exact(key);
        try {
            return Duration.ofNanos(seconds.movePointRight(NANO_PLACES).longValueExact());
        } catch (ArithmeticException e) {
            throw new UnreadableJson(FileText.IS_NO_NUMBER_OF_SECONDS_TO.say(key));
        }
    }
}
