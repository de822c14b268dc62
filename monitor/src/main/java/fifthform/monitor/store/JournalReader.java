package fifthform.monitor.store;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.input.Recorded;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.texts.FileText;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads a session's file and refuses nothing that it can still use: a torn end is dropped and said, damaged lines are
 * left out and said, a check that does not agree is said, and lines from a newer program are kept aside. Only a header
 * that cannot be used makes the whole unusable.
 */
public final class JournalReader {
    private final SessionHeader header;
    private final InputCodec inputs;
    private final SessionTime time;
    private final CheckedLines sum = new CheckedLines();
    private final List<Entry> entries = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private final Set<String> unknownKinds = new TreeSet<>();

    private Instant lastWall;
    private int unknownLines;
    private int checkedTo;
    private long lastSequence;

    private JournalReader(SessionHeader header) {
        this.header = header;
        this.inputs = new InputCodec(header.start());
        this.time = new SessionTime(header.start());
        this.lastWall = header.start();
    }

    /** The session in this file, or why nothing of it can be used. */
    public static Parsed<Session> read(Path file) {
        try (LineScan scan = LineScan.of(file)) {
            Optional<RawLine> first = scan.next();
            Parsed<SessionHeader> header = header(file, first);
            List<Problem> refusals = header.fold(accepted -> List.<Problem>of(), List::copyOf);
            if (!refusals.isEmpty()) return Parsed.refused(refusals);
            JournalReader reader = new JournalReader(header.fold(accepted -> accepted, JournalReader::impossible));
            reader.noteFormat(first.orElseThrow());
            reader.sum.count(first.orElseThrow().bytes());
            Optional<RawLine> line = scan.next();
            while (line.isPresent()) {
                reader.take(line.get());
                line = scan.next();
            }
            return Parsed.accepted(reader.session(file));
        } catch (IOException e) {
            return Parsed.refused(unreadable(file, e));
        }
    }

    /** Only the header: enough for a list, and quick however long the session was. */
    public static Parsed<SessionHeader> readHeader(Path file) {
        try (LineScan scan = LineScan.of(file)) {
            return header(file, scan.next());
        } catch (IOException e) {
            return Parsed.refused(unreadable(file, e));
        }
    }

    private static List<Problem> unreadable(Path file, IOException why) {
        String what = why instanceof NoSuchFileException
                ? FileText.THERE_IS_NO_SUCH_FILE.say()
                : FileText.THE_FILE_CANNOT_BE_READ.say(why.getMessage());
        return List.of(new Problem(
                file.toString(), FileText.NO_SESSION_IS_SHOWN.say(what), FileText.CHECK_THE_PATH_AND_THAT_YOU.say()));
    }

    private static SessionHeader impossible(List<Problem> problems) {
        throw new IllegalStateException("refused after all: " + problems);
    }

    private static Parsed<SessionHeader> header(Path file, Optional<RawLine> first) {
        if (first.isEmpty()) {
            return Parsed.refused(
                    file.toString(), FileText.THE_FILE_IS_EMPTY_THE_SESSION.say(), FileText.IT_CAN_BE_DELETED.say());
        }
        try {
            return Parsed.accepted(
                    SessionHeader.read(JsonObject.parse(first.get().text())));
        } catch (UnreadableJson e) {
            return Parsed.refused(
                    file.toString(),
                    FileText.THE_FIRST_LINE_CANNOT_BE_USED.say(e.getMessage()),
                    FileText.CHECK_THAT_THIS_IS_A_SESSION.say());
        }
    }

    private void noteFormat(RawLine first) {
        try {
            long format = JsonObject.parse(first.text()).whole("format");
            if (format <= SessionHeader.FORMAT) return;
            problems.add(JournalProblems.newerFormat(format));
        } catch (UnreadableJson e) {
            problems.add(new Problem(
                    FileText.LINE_1.say(), e.getMessage() + ".", FileText.THE_SESSION_IS_READ_AS_WELL.say()));
        }
    }

    private void take(RawLine line) {
        try {
            JsonObject json = JsonObject.parse(line.text());
            String letter = json.text(LineKind.KEY);
            Optional<LineKind> kind = LineKind.of(letter);
            if (kind.isPresent() && kind.get() == LineKind.CHECK) {
                check(line, json);
                return;
            }
            sum.count(line.bytes());
            if (kind.isPresent()) keep(kind.get(), line, json);
            else keepUnknown(letter, line);
        } catch (UnreadableJson e) {
            sum.count(line.bytes());
            problems.add(
                    line.isBroken()
                            ? JournalProblems.torn(line)
                            : JournalProblems.damaged(line.toString(), e.getMessage()));
        }
    }

    private void keep(LineKind kind, RawLine line, JsonObject json) throws UnreadableJson {
        switch (kind) {
            case SAMPLE, FAULT, TICK, ACTION, STORE_TROUBLE -> keepInput(line, inputs.read(kind, json));
            case EVENT -> entries.add(new Entry.Told(json.whole("s"), line.text()));
            case NOTE -> entries.add(new Entry.Note(time.read(json), json.text("about"), json.text("text")));
            case CLOSING -> {
                entries.add(new Entry.Closing(json.object("summary")));
                tellWall(json);
            }
            case HEADER -> problems.add(JournalProblems.damaged(line.toString(), FileText.A_SECOND_HEADER.say()));
            case CHECK -> throw new IllegalStateException("checks are not kept");
        }
    }

    private void keepInput(RawLine line, Recorded recorded) {
        if (recorded.sequence() != lastSequence + 1)
            problems.add(JournalProblems.outOfOrder(line.toString(), recorded.sequence(), lastSequence));
        lastSequence = Math.max(lastSequence, recorded.sequence());
        entries.add(new Entry.Given(recorded));
    }

    private void keepUnknown(String letter, RawLine line) {
        unknownKinds.add(letter);
        unknownLines++;
        entries.add(new Entry.Unknown(letter, line.text()));
    }

    private void check(RawLine line, JsonObject json) throws UnreadableJson {
        boolean agrees = json.text("crc").equals(sum.sum()) && json.whole("lines") == sum.unchecked();
        if (!agrees) {
            problems.add(JournalProblems.changed(checkedTo + 1, line.number() - 1));
        }
        checkedTo = line.number();
        sum.startAnew();
        tellWall(json);
    }

    private void tellWall(JsonObject json) throws UnreadableJson {
        try {
            lastWall = Instant.parse(json.text("wall"));
        } catch (DateTimeException e) {
            throw new UnreadableJson(FileText.WALL_IS_NO_TIME_OF_DAY.say());
        }
    }

    private Session session(Path file) {
        if (unknownLines > 0) {
            problems.add(JournalProblems.newerLines(file, unknownLines, unknownKinds));
        }
        return new Session(file, header, entries, lastWall, problems);
    }
}
