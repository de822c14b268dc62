package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** What one command printed and how it ended, run in this process. */
record Said(int exit, String out, String err) {
    static Said by(String... arguments) {
        return by(InputStream.nullInputStream(), arguments);
    }

    static Said withInput(String input, String... arguments) {
        return by(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)), arguments);
    }

    private static Said by(InputStream input, String... arguments) {
        PrintStream wasOut = System.out;
        PrintStream wasErr = System.err;
        InputStream wasIn = System.in;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
        System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
        System.setIn(input);
        try {
            int exit = Main.run(arguments);
            return new Said(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
        } finally {
            System.setOut(wasOut);
            System.setErr(wasErr);
            System.setIn(wasIn);
        }
    }

    /** What happened, what it means, what to do; on standard error, and no stack trace. */
    void refuses(int code, String whatHappened, String whatItMeans, String whatToDo) {
        assertEquals(code, exit, err);
        assertTrue(err.contains(whatHappened), err);
        assertTrue(err.contains(whatItMeans), err);
        assertTrue(err.contains(whatToDo), err);
        assertTrue(err.indexOf(whatHappened) < err.lastIndexOf(whatToDo), err);
        assertFalse(err.contains("\tat "), err);
        assertFalse(err.contains("Exception"), err);
        assertEquals("", out);
    }
}
