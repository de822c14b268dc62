package fifthform.monitor.bars;

import fifthform.curves.check.Problem;
import fifthform.curves.setting.Condensation;
import fifthform.curves.setting.CoolingPlace;
import fifthform.curves.setting.SetEvent;
import fifthform.curves.setting.SetInput;
import fifthform.curves.setting.SetPlan;
import fifthform.curves.setting.SetRecord;
import fifthform.curves.setting.SetTime;
import fifthform.curves.setting.SettingWatch;
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
import java.util.OptionalDouble;

/**
 * How the bars of one session set, in a file beside it: {@code h} what was planned, {@code r} a reading every five seconds,
 * {@code a} what the maker said, {@code e} what was told. Each line is on the disk before the next; a later {@code h} begins
 * anew.
 */
public final class SetLog {
    /** Ending of the file; what stands before it is the session's. */
    public static final String ENDING = ".set.jsonl";

    private final Path file;
    private final String session;

    private SetLog(Path file, String session) {
        this.file = file;
        this.session = session;
    }

    /** The log that belongs to a session. */
    public static SetLog beside(Path sessionFile, String session) {
        Objects.requireNonNull(session, "session");
        return new SetLog(SessionFiles.beside(sessionFile, ENDING), session);
    }

    public Path path() {
        return file;
    }

    /** Begins. */
    public void begin(Instant at, SetPlan plan, SetTime.Air moving) throws IOException {
        JsonLine line = new JsonLine()
                .text("k", "h")
                .text("session", session)
                .text("at", at.toString())
                .text("place", plan.place().word())
                .number("place_c", plan.placeCelsius(), 2)
                .text("air", moving.name().toLowerCase(Locale.ROOT))
                .number("mm", plan.millimetres(), 1);
        plan.air().ifPresent(a -> line.number("room_c", a.roomCelsius(), 2).number("dew_c", a.dewCelsius(), 4));
        AddedLines.append(file, line.end());
    }

    /** One input. */
    public void input(SetInput input) throws IOException {
        if (input instanceof SetInput.Reading r) {
            AddedLines.append(
                    file,
                    new JsonLine()
                            .text("k", "r")
                            .text("at", r.at().toString())
                            .number("c", r.celsius(), 3)
                            .end());
        } else if (input instanceof SetInput.Said s) {
            AddedLines.append(
                    file,
                    new JsonLine()
                            .text("k", "a")
                            .text("at", s.at().toString())
                            .text("do", s.act() == SetInput.Act.PULLS_AWAY ? "pulls-away" : "taken-out")
                            .end());
        }
    }

    /** What was told. */
    public void told(SetEvent event) throws IOException {
        AddedLines.append(file, line(event).end());
    }

    /** An event as a line, also for scripts. */
    public static JsonLine line(SetEvent event) {
        JsonLine line =
                new JsonLine().text("k", "e").text("at", event.at().toString()).text("e", word(event.kind()));
        if (event.celsius().isPresent()) line.number("c", event.celsius().getAsDouble(), 3);
        if (event.limitCelsius().isPresent())
            line.number("limit_c", event.limitCelsius().getAsDouble(), 3);
        event.time().ifPresent(time -> line.whole("time_s", time.toSeconds()));
        return line;
    }

    private static String word(SetEvent.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * What the file holds, gone through anew.
     *
     * @param record what is known of the last setting; empty where there is none
     * @param events what is told of it now
     */
    public record Loaded(Optional<SetRecord> record, List<SetEvent> events, List<Problem> problems) {
        public Loaded {
            events = List.copyOf(events);
            problems = List.copyOf(problems);
        }
    }

    /** Reads all; never fails, but says what could not be read. */
    public Loaded load() {
        Taken taken = new Taken();
        List<Problem> problems = Lines.read(file, taken::take);
        return new Loaded(taken.watch.map(SettingWatch::record), taken.events, problems);
    }

    private static final class Taken {
        private Optional<SettingWatch> watch = Optional.empty();
        private List<SetEvent> events = new ArrayList<>();

        void take(JsonObject line) throws UnreadableJson {
            switch (line.text("k")) {
                case "h" -> {
                    watch = Optional.of(SettingWatch.of(plan(line)));
                    events = new ArrayList<>();
                }
                case "r" -> next(new SetInput.Reading(Instant.parse(line.text("at")), line.number("c")));
                case "a" ->
                    next(new SetInput.Said(
                            Instant.parse(line.text("at")),
                            line.text("do").equals("pulls-away") ? SetInput.Act.PULLS_AWAY : SetInput.Act.TAKEN_OUT));
                default -> {
                    // What was told then is told anew from the readings.
                }
            }
        }

        private void next(SetInput input) {
            if (watch.isEmpty()) return;
            SettingWatch.Step step = watch.get().next(input);
            events.addAll(step.events());
            watch = Optional.of(step.after());
        }

        private static SetPlan plan(JsonObject line) throws UnreadableJson {
            CoolingPlace place = line.choice("place", CoolingPlace.values(), CoolingPlace::word);
            SetTime.Air air =
                    line.choice("air", SetTime.Air.values(), a -> a.name().toLowerCase(Locale.ROOT));
            Optional<Condensation> room = Optional.empty();
            if (line.has("dew_c")) {
                double dew = line.number("dew_c");
                room = Optional.of(new Condensation(dew, dew + 1, line.number("room_c")));
            }
            return SetPlan.of(place, OptionalDouble.of(line.number("place_c")), air, line.number("mm"), room);
        }
    }
}
