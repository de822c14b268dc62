package fifthform.monitor.store;

import fifthform.curves.setup.Setup;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.texts.FileText;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Objects;

/**
 * A journal's first line.
 *
 * @param program version of the program that began the session
 * @param commit what it was built from
 * @param session the session's name: its file's without the ending
 * @param start when it began; all times in the journal count from here
 * @param zone the kitchen's offset from UTC
 * @param setup all that was settled at the start, its numbers as stored
 */
public record SessionHeader(
        String program, String commit, String session, Instant start, ZoneOffset zone, Setup setup) {
    /** Version of the format; goes up only when older readers would misunderstand a line. */
    public static final int FORMAT = 1;

    public SessionHeader {
        Objects.requireNonNull(program, "program");
        Objects.requireNonNull(commit, "commit");
        Objects.requireNonNull(session, "session");
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(zone, "zone");
        setup = SetupCodec.asStored(setup);
    }

    String line() {
        return new JsonLine()
                .text(LineKind.KEY, LineKind.HEADER.letter)
                .whole("format", FORMAT)
                .text("program", program)
                .text("commit", commit)
                .text("session", session)
                .text("start", start.toString())
                .text("zone", zone.getId())
                // Said here too, first thing in the file: a simulated session must never pass for a real one.
                .text("origin", setup.origin().word())
                .object("setup", SetupCodec.write(setup))
                .end();
    }

    static SessionHeader read(JsonObject line) throws UnreadableJson {
        if (!line.text(LineKind.KEY).equals(LineKind.HEADER.letter)) {
            throw new UnreadableJson(FileText.ITS_FIRST_LINE_IS_NOT_A.say());
        }
        try {
            return new SessionHeader(
                    line.text("program"),
                    line.text("commit"),
                    line.text("session"),
                    Instant.parse(line.text("start")),
                    ZoneOffset.of(line.text("zone")),
                    SetupCodec.read(line.object("setup")));
        } catch (DateTimeException | ArithmeticException | IllegalArgumentException e) {
            throw new UnreadableJson(e.getMessage());
        }
    }
}
