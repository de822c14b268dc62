package fifthform.monitor.analyse;

import fifthform.curves.engine.Event;
import fifthform.curves.review.Tally;
import fifthform.curves.setup.Setup;
import fifthform.monitor.json.JsonLine;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** The closing figures of a batch, the same in a session's last line and in an analysis. */
public final class BatchFigures {
    private static final int PLACES = 3;

    private BatchFigures() {}

    /** The figures as an object; times are seconds since {@code start}. */
    public static JsonLine of(Setup setup, Tally tally, Instant start) {
        JsonLine line = new JsonLine()
                .whole("readings", tally.readings())
                .number("gaps_s", seconds(tally.gaps()), PLACES)
                .objects("phases", phases(tally, start));
        optional(
                line,
                "highest_work_c",
                tally.highestWorkCelsius().isPresent(),
                tally.highestWorkCelsius().orElse(0));
        optional(
                line,
                "lowest_cool_c",
                tally.lowestCoolCelsius().isPresent(),
                tally.lowestCoolCelsius().orElse(0));
        line.number("over_range_s", seconds(tally.overRange()), PLACES);
        tally.firstTrouble()
                .ifPresentOrElse(
                        t -> line.object(
                                "first_trouble",
                                new JsonLine()
                                        .text("what", t.what().word())
                                        .number("time_s", seconds(Duration.between(start, t.at())), PLACES)),
                        () -> line.raw("first_trouble", "null"));
        tally.crystals().ifPresentOrElse(word -> line.text("crystals", word), () -> line.raw("crystals", "null"));
        tally.seedLost()
                .ifPresentOrElse(
                        lost -> line.object("seed_lost", loss(lost, start)), () -> line.raw("seed_lost", "null"));
        return line.text("verdict", tally.verdict(setup.recipe()).word());
    }

    /** When heat first cost the temper its seed, and what it had been up to then. */
    private static JsonLine loss(Event.SeedLost lost, Instant start) {
        return new JsonLine()
                .number("time_s", seconds(Duration.between(start, lost.at())), PLACES)
                .number("highest_c", lost.highestCelsius(), PLACES)
                .number("above_warning_s", lost.aboveSeconds(), PLACES);
    }

    private static List<JsonLine> phases(Tally tally, Instant start) {
        return tally.spans().stream()
                .map(span -> new JsonLine()
                        .text("name", span.phase().word())
                        .number("from_s", seconds(Duration.between(start, span.from())), PLACES)
                        .number("to_s", seconds(Duration.between(start, span.to())), PLACES))
                .toList();
    }

    private static void optional(JsonLine line, String key, boolean present, double value) {
        if (present) line.number(key, value, PLACES);
        else line.raw(key, "null");
    }

    static double seconds(Duration duration) {
        return duration.getSeconds() + duration.getNano() / 1e9;
    }
}
