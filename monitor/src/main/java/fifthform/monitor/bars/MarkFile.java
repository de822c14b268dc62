package fifthform.monitor.bars;

import fifthform.curves.check.Problem;
import fifthform.curves.fault.Clue;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.store.AddedLines;
import fifthform.monitor.store.SessionFiles;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * What a maker answered about the bars of one session, in a file beside it: {@code a} an answer. A later answer stands for
 * an earlier one; its line stays.
 */
public final class MarkFile {
    /** Ending of the file; what stands before it is the session's. */
    public static final String ENDING = ".answers.jsonl";

    private final Path file;
    private final String session;

    private MarkFile(Path file, String session) {
        this.file = file;
        this.session = session;
    }

    /** The answers that belong to a session. */
    public static MarkFile beside(Path sessionFile, String session) {
        Objects.requireNonNull(session, "session");
        return new MarkFile(SessionFiles.beside(sessionFile, ENDING), session);
    }

    public Path path() {
        return file;
    }

    /** Adds an answer. */
    public void add(Instant at, Clue clue, boolean answer) throws IOException {
        AddedLines.append(
                file,
                new JsonLine()
                        .text("k", "a")
                        .text("session", session)
                        .text("at", at.toString())
                        .text("clue", clue.word())
                        .text("answer", answer ? "yes" : "no")
                        .end());
    }

    /** Answers that stand, and what could not be read. */
    public record Loaded(Map<Clue, Boolean> answers, List<Problem> problems) {
        public Loaded {
            EnumMap<Clue, Boolean> copy = new EnumMap<>(Clue.class);
            copy.putAll(answers);
            answers = copy;
            problems = List.copyOf(problems);
        }
    }

    /** Reads all; never fails, but says what could not be read. */
    public Loaded load() {
        Map<Clue, Boolean> answers = new EnumMap<>(Clue.class);
        Clue[] asked = Stream.of(Clue.values())
                .filter(clue -> clue.from() == Clue.From.MAKER)
                .toArray(Clue[]::new);
        Boolean[] yesNo = {true, false};
        List<Problem> problems = Lines.read(
                file,
                line -> answers.put(
                        line.choice("clue", asked, Clue::word),
                        line.choice("answer", yesNo, yes -> yes ? "yes" : "no")));
        return new Loaded(answers, problems);
    }
}
