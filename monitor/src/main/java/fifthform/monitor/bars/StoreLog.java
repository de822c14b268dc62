package fifthform.monitor.bars;

import fifthform.curves.check.Problem;
import fifthform.curves.setting.StoreEvent;
import fifthform.curves.setting.StoreMinute;
import fifthform.curves.setting.StoreRecord;
import fifthform.curves.setting.StoreWatch;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.store.AddedLines;
import fifthform.monitor.store.SessionFiles;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * How warm the bars of one session were kept, in a slow file beside it: {@code h} where and with which probe, {@code m} a
 * minute with its mean, lowest and highest reading, {@code e} what was told, {@code b} the maker's own best-before note. Each line is on the disk before the next, so a
 * cut costs the minute that is under way. The watch may be begun again as often as one likes; the lines go on.
 */
public final class StoreLog {
    /** Ending of the file; what stands before it is the session's. */
    public static final String ENDING = ".store.jsonl";

    private final Path file;
    private final String session;

    private StoreLog(Path file, String session) {
        this.file = file;
        this.session = session;
    }

    /** The log that belongs to a session. */
    public static StoreLog beside(Path sessionFile, String session) {
        Objects.requireNonNull(session, "session");
        return new StoreLog(SessionFiles.beside(sessionFile, ENDING), session);
    }

    /** A log by its own name, to be read. */
    public static StoreLog of(Path file) {
        return new StoreLog(file, "");
    }

    public Path path() {
        return file;
    }

    /** Begins, or goes on. */
    public void begin(Instant at, String place, String probe) throws IOException {
        AddedLines.append(
                file,
                new JsonLine()
                        .text("k", "h")
                        .text("session", session)
                        .text("at", at.toString())
                        .text("place", place)
                        .text("probe", probe)
                        .end());
    }

    /** One minute. */
    public void minute(StoreMinute minute) throws IOException {
        AddedLines.append(file, line(minute).end());
    }

    /** The maker's own note of how long these bars are good for; a later one stands for an earlier. */
    public void bestBefore(Instant at, String words) throws IOException {
        AddedLines.append(
                file,
                new JsonLine()
                        .text("k", "b")
                        .text("session", session)
                        .text("at", at.toString())
                        .text("best_before", words)
                        .end());
    }

    /** What was told. */
    public void told(StoreEvent event) throws IOException {
        AddedLines.append(file, line(event).end());
    }

    /** A minute as a line, also for scripts. */
    public static JsonLine line(StoreMinute minute) {
        return new JsonLine()
                .text("k", "m")
                .text("at", minute.at().toString())
                .whole("n", minute.readings())
                .number("mean_c", minute.meanCelsius(), 3)
                .number("low_c", minute.lowCelsius(), 3)
                .number("high_c", minute.highCelsius(), 3);
    }

    /** An event as a line, also for scripts; of a swing the figures are kelvins. */
    public static JsonLine line(StoreEvent event) {
        JsonLine line = new JsonLine()
                .text("k", "e")
                .text("at", event.at().toString())
                .text("e", event.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        String unit = event.kind() == StoreEvent.Kind.SWINGS ? "_k" : "_c";
        if (event.celsius().isPresent())
            line.number("figure" + unit, event.celsius().getAsDouble(), 3);
        if (event.limitCelsius().isPresent())
            line.number("limit" + unit, event.limitCelsius().getAsDouble(), 3);
        event.time().ifPresent(time -> line.whole("until_s", time.toSeconds()));
        return line;
    }

    /** The figures as a line for scripts. */
    public static JsonLine line(StoreRecord record) {
        JsonLine line = new JsonLine()
                .text("k", "z")
                .number("watched_h", record.watched().toMinutes() / 60.0, 2)
                .number("unread_h", record.unread().toMinutes() / 60.0, 2)
                .number("above_20_h", record.aboveRecommended().toMinutes() / 60.0, 2)
                .number("above_24_h", record.aboveLimit().toMinutes() / 60.0, 2)
                .number("above_28_h", record.melting().toMinutes() / 60.0, 2)
                .number("largest_swing_k", record.largestSwingKelvin(), 2);
        if (!record.isEmpty())
            line.number("lowest_c", record.lowestCelsius(), 2).number("highest_c", record.highestCelsius(), 2);
        return line;
    }

    /**
     * What the file holds, gone through anew.
     *
     * @param watch where it stands, to be gone on from
     * @param events what is told of it now
     * @param bestBefore the maker's own note
     */
    public record Loaded(
            StoreWatch watch, List<StoreEvent> events, Optional<String> bestBefore, List<Problem> problems) {
        public Loaded {
            Objects.requireNonNull(watch, "watch");
            Objects.requireNonNull(bestBefore, "bestBefore");
            events = List.copyOf(events);
            problems = List.copyOf(problems);
        }
    }

    /** Reads all; never fails, but says what could not be read. */
    public Loaded load() {
        Taken taken = new Taken();
        List<Problem> problems = Lines.read(file, taken::take);
        return new Loaded(taken.watch, taken.events, taken.bestBefore, problems);
    }

    private static final class Taken {
        private StoreWatch watch = StoreWatch.START;
        private final List<StoreEvent> events = new ArrayList<>();
        private Optional<String> bestBefore = Optional.empty();

        void take(JsonObject line) throws UnreadableJson {
            if (line.text("k").equals("b")) bestBefore = Optional.of(line.text("best_before"));
            if (!line.text("k").equals("m")) return;
            StoreWatch.Step step = watch.next(new StoreMinute(
                    Instant.parse(line.text("at")),
                    (int) line.whole("n"),
                    line.number("mean_c"),
                    line.number("low_c"),
                    line.number("high_c")));
            events.addAll(step.events());
            watch = step.after();
        }
    }
}
