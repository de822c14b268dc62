package fifthform.monitor.looks;

import fifthform.curves.check.Problem;
import fifthform.curves.learning.BarLook;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.store.AddedLines;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.texts.LooksText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The looks at the bars of one session, in a file beside it. Lines are only ever added: a second look stands behind the
 * first, and one that was wrong is taken back by a later line. A line that cannot be read stays where it is, is passed over
 * and said.
 */
public final class LookFile {
    /** Ending of the file; what stands before it is the session's. */
    public static final String ENDING = ".looks.jsonl";

    private static final AddedLines.Unread UNREAD = new AddedLines.Unread(
            why -> LooksText.THE_LOOKS_AT_THESE_BARS_CANNOT.say(why),
            why -> LooksText.THIS_LOOK_CANNOT_BE_READ_AND.say(why),
            () -> LooksText.THE_LINE_STAYS_AS_IT_IS.say());

    private final Path file;
    private final String session;

    private LookFile(Path file, String session) {
        this.file = file;
        this.session = session;
    }

    /**
     * The looks that belong to a session.
     *
     * @param sessionFile its file
     * @param session its name, as its header has it
     */
    public static LookFile beside(Path sessionFile, String session) {
        Objects.requireNonNull(session, "session");
        return new LookFile(place(sessionFile), session);
    }

    /** Where looks of a session are kept, whether there are any or not. */
    public static Path place(Path sessionFile) {
        return SessionFiles.beside(sessionFile, ENDING);
    }

    public Path path() {
        return file;
    }

    /**
     * What the file holds.
     *
     * @param looks those that stand, in the order in which they were written down
     * @param takenBack numbers of those that were taken back
     * @param problems what had to be passed over
     */
    public record Loaded(List<KeptLook> looks, Set<Integer> takenBack, List<Problem> problems) {
        public Loaded {
            looks = List.copyOf(looks);
            takenBack = new TreeSet<>(takenBack);
            problems = List.copyOf(problems);
        }

        /** What was seen, for whoever judges. */
        public List<BarLook> seen() {
            return looks.stream().map(KeptLook::look).toList();
        }

        /** The look of this number, where it stands. */
        public Optional<KeptLook> find(int number) {
            return looks.stream().filter(l -> l.number() == number).findFirst();
        }
    }

    /** Reads all; never fails, but says what could not be read. */
    public Loaded load() {
        List<KeptLook> looks = new ArrayList<>();
        Set<Integer> takenBack = new TreeSet<>();
        List<Problem> problems = AddedLines.read(file, UNREAD, line -> take(line, looks, takenBack));
        looks.removeIf(look -> takenBack.contains(look.number()));
        return new Loaded(looks, takenBack, problems);
    }

    /**
     * Adds a look.
     *
     * @throws IOException it cannot be written; what was kept before stands
     */
    public KeptLook add(Instant at, BarLook look, List<String> photos, Optional<String> note) throws IOException {
        int[] number = new int[1];
        AddedLines.append(file, lines -> {
            number[0] = lines + 1;
            return LookText.line(session, new KeptLook(number[0], at, look, photos, note))
                    .end();
        });
        return new KeptLook(number[0], at, look, photos, note);
    }

    /**
     * Takes a look back; its line stays.
     *
     * @throws IOException it cannot be written; the look stands
     */
    public void takeBack(KeptLook look, Instant at) throws IOException {
        AddedLines.append(file, lines -> LookText.undo(session, lines + 1, look.number(), at));
    }

    private void take(JsonObject line, List<KeptLook> looks, Set<Integer> takenBack) throws UnreadableJson {
        AddedLines.isOf(session, line);
        String kind = line.text(LookText.KIND);
        switch (kind) {
            case LookText.LOOK -> looks.add(LookText.look(line));
            case LookText.UNDO -> takenBack.add(LookText.whole(line, "of"));
            default -> throw AddedLines.unknown(kind);
        }
    }
}
