package fifthform.monitor.bars;

import fifthform.curves.fault.Diagnosis;
import fifthform.curves.fault.FaultBook;
import fifthform.curves.fault.Suspect;
import fifthform.monitor.json.JsonLine;
import java.util.List;
import java.util.Locale;

/** Why bars came out as they did, for scripts: one object. */
public final class FaultLine {
    private FaultLine() {}

    /** The answer as an object; shares are rounded, since they rest on chances that nobody has counted. */
    public static JsonLine of(String session, Diagnosis diagnosis, FaultBook book) {
        JsonLine line = new JsonLine()
                .text("session", session)
                .text("word", diagnosis.word().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .objects(
                        "suspects",
                        diagnosis.suspects().stream()
                                .limit(5)
                                .map(s -> suspect(s, book))
                                .toList());
        diagnosis
                .question()
                .ifPresent(clue -> line.text("ask", clue.word())
                        .text("question", book.of(clue).question()));
        return line;
    }

    private static JsonLine suspect(Suspect suspect, FaultBook book) {
        FaultBook.Entry entry = book.of(suspect.fault());
        return new JsonLine()
                .text("fault", suspect.fault().word())
                .text("name", entry.name())
                .number("share", suspect.share(), 2)
                .texts("for", words(suspect.supports()))
                .texts("against", words(suspect.opposes()))
                .text("next", entry.next())
                .text("bars", entry.bars())
                .text("source", entry.source());
    }

    private static List<String> words(List<Suspect.Evidence> evidence) {
        return evidence.stream()
                .map(e -> (e.there() ? "" : "not-") + e.clue().word())
                .toList();
    }
}
