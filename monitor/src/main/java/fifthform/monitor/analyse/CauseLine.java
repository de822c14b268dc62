package fifthform.monitor.analyse;

import fifthform.curves.review.Cause;
import fifthform.monitor.json.JsonLine;
import java.time.Duration;
import java.time.Instant;

/** One cause as an object; a figure that it has not is left out. Times are seconds since the start, temperatures °C. */
final class CauseLine {
    private static final int PLACES = 3;

    private CauseLine() {}

    static JsonLine of(Cause cause, Instant start) {
        JsonLine line = new JsonLine()
                .text("what", cause.kind().word())
                .text("weight", cause.weight() == Cause.Weight.FAULT ? "fault" : "remark")
                .text("phase", cause.phase().word())
                .number("time_s", seconds(start, cause.at()), PLACES);
        cause.lasted().ifPresent(d -> line.number("lasted_s", BatchFigures.seconds(d), PLACES));
        if (cause.celsius().isPresent())
            line.number("celsius_c", cause.celsius().getAsDouble(), PLACES);
        if (cause.limitCelsius().isPresent())
            line.number("limit_c", cause.limitCelsius().getAsDouble(), PLACES);
        cause.off().ifPresent(d -> line.number("off_s", BatchFigures.seconds(d), PLACES));
        if (cause.said() instanceof Cause.Said.Told told) {
            line.text("said", told.word()).number("said_s", seconds(start, told.at()), PLACES);
        }
        return line;
    }

    private static double seconds(Instant start, Instant at) {
        return BatchFigures.seconds(Duration.between(start, at));
    }
}
