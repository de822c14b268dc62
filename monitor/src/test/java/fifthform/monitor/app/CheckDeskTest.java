package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.monitor.settings.Units;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A caution that is cut in the middle of a word is not read. */
class CheckDeskTest {
    private static final String CAUTION =
            "  Boiling water and steam scald: clip the probe to the rim, keep hands, face and children away.";

    private final StringWriter said = new StringWriter();

    @Test
    void aTerminalGetsWholeWords() {
        CheckDesk.terminal(new PrintWriter(said), InputStream.nullInputStream(), Units.CELSIUS)
                .say(CAUTION);
        assertEquals(
                List.of(
                        "  Boiling water and steam scald: clip the probe to the rim, keep hands, face",
                        "  and children away."),
                said.toString().lines().toList());
    }

    @Test
    void aPipeGetsWholeLines() {
        CheckDesk.lines(new PrintWriter(said), Units.CELSIUS).say(CAUTION);
        assertEquals(List.of(CAUTION), said.toString().lines().toList());
    }

    @Test
    void whatHasNoSpaceStaysWhole() {
        String path = "  " + "x".repeat(100);
        assertEquals(List.of(path), CheckDesk.wrapped(path));
        assertEquals(List.of(""), CheckDesk.wrapped(""));
    }
}
