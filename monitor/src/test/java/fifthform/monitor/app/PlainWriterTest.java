package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class PlainWriterTest {
    @Test
    void whatIsQuotedCannotCommandTheTerminal() {
        StringWriter said = new StringWriter();
        PrintWriter out = new PrintWriter(new PlainWriter(said), true);
        out.print("file \u001b[2J\u0007 ü °C\tend\n");
        out.print('\u009b');
        out.flush();
        assertEquals("file ?[2J? ü °C\tend\n?", said.toString());
    }
}
