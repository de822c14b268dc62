package fifthform.monitor.replay;

import fifthform.curves.check.Problem;
import fifthform.monitor.json.Decimal;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.store.AddedLines;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.texts.ReplayText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * Notes and marks that were made at the desk, in a file beside the session, which itself is never written again. Lines
 * are only ever added: a changed note is a later line that speaks of the first, and so is one that was taken back. A
 * line that cannot be read stays where it is, is passed over and said.
 */
public final class NoteFile {
    /** Ending of the file; what stands before it is the session's. */
    public static final String ENDING = ".notes.jsonl";

    private static final AddedLines.Unread UNREAD = new AddedLines.Unread(
            why -> ReplayText.THE_NOTES_OF_THIS_SESSION.say(why),
            why -> ReplayText.THIS_NOTE_CANNOT_BE_READ_AND.say(why),
            () -> ReplayText.THE_LINE_STAYS_AS_IT_IS.say());

    private static final String KIND = "k";
    private static final String NOTE = "note";
    private static final String CHANGE = "change";
    private static final String UNDO = "undo";
    private static final int NANO_PLACES = 9;

    private final Path file;
    private final String session;

    private NoteFile(Path file, String session) {
        this.file = file;
        this.session = session;
    }

    /** The notes of a session, whether there are any or not. */
    public static NoteFile beside(Path sessionFile, String session) {
        Objects.requireNonNull(session, "session");
        return new NoteFile(SessionFiles.beside(sessionFile, ENDING), session);
    }

    public Path path() {
        return file;
    }

    /**
     * What the file holds.
     *
     * @param notes those that stand, as they stand now, in the order of the batch
     * @param problems what had to be passed over
     */
    public record Loaded(List<Note> notes, List<Problem> problems) {
        public Loaded {
            notes = List.copyOf(notes);
            problems = List.copyOf(problems);
        }
    }

    /** Reads all; never fails, but says what could not be read. */
    public Loaded load() {
        Map<Integer, Note> notes = new TreeMap<>();
        List<Problem> problems = AddedLines.read(file, UNREAD, line -> take(line, notes));
        List<Note> inOrder = new ArrayList<>(notes.values());
        inOrder.sort(Comparator.comparingLong(Note::nanos));
        return new Loaded(inOrder, problems);
    }

    /**
     * Adds a note, or a mark where the text is empty.
     *
     * @throws IOException it cannot be written; what was kept before stands
     */
    public Note add(long nanos, String text, Instant writtenAt) throws IOException {
        Note[] note = new Note[1];
        AddedLines.append(file, lines -> {
            note[0] = new Note(lines + 1, nanos, text, writtenAt);
            return begun(NOTE, lines + 1, writtenAt)
                    .raw("t", Decimal.scaled(nanos, NANO_PLACES))
                    .text("text", text)
                    .end();
        });
        return note[0];
    }

    /**
     * Gives a note other words; its line stays.
     *
     * @throws IOException it cannot be written; the note stands as it was
     */
    public void change(Note note, String text, Instant writtenAt) throws IOException {
        AddedLines.append(
                file,
                lines -> begun(CHANGE, lines + 1, writtenAt)
                        .whole("of", note.number())
                        .text("text", text)
                        .end());
    }

    /**
     * Takes a note back; its line stays.
     *
     * @throws IOException it cannot be written; the note stands
     */
    public void takeBack(Note note, Instant writtenAt) throws IOException {
        AddedLines.append(
                file,
                lines -> begun(UNDO, lines + 1, writtenAt)
                        .whole("of", note.number())
                        .end());
    }

    private JsonLine begun(String kind, int number, Instant writtenAt) {
        return new JsonLine()
                .text(KIND, kind)
                .whole("n", number)
                .text("session", session)
                .text("at", writtenAt.toString());
    }

    private void take(JsonObject line, Map<Integer, Note> notes) throws UnreadableJson {
        AddedLines.isOf(session, line);
        String kind = line.text(KIND);
        Instant at = Instant.parse(line.text("at"));
        switch (kind) {
            case NOTE -> {
                int number = number(line, "n");
                long nanos = line.exact("t").movePointRight(NANO_PLACES).longValueExact();
                notes.put(number, new Note(number, nanos, line.text("text"), at));
            }
            case CHANGE -> {
                String text = line.text("text");
                notes.computeIfPresent(number(line, "of"), (n, old) -> new Note(n, old.nanos(), text, at));
            }
            case UNDO -> notes.remove(number(line, "of"));
            default -> throw AddedLines.unknown(kind);
        }
    }

    private static int number(JsonObject line, String key) throws UnreadableJson {
        return Math.toIntExact(line.whole(key));
    }
}
