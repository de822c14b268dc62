package fifthform.monitor.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.check.Problem;
import fifthform.curves.input.Input;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalReaderTest {
    private static final byte[] DEMO = JournalBytes.demo();

    @TempDir
    Path folder;

    /**
     * The promise to whoever keeps sessions: on every JDK and after every change these bytes stay what they are. Only where
     * the demo session gets a new kind of line or a new field, it is written anew, the difference to be read, by
     *
     * <pre>mvn -pl monitor -am test -Dtest=JournalReaderTest -Dsurefire.failIfNoSpecifiedTests=false -Dformat.renew=true</pre>
     */
    @Test
    void theFormatIsWhatItWas() throws IOException {
        if (Boolean.getBoolean("format.renew")) {
            Files.write(Path.of("src/test/resources/sessions/demo.tempering.jsonl"), DEMO);
            return;
        }
        try (InputStream golden = JournalReaderTest.class.getResourceAsStream("/sessions/demo.tempering.jsonl")) {
            assertEquals(
                    new String(Objects.requireNonNull(golden).readAllBytes(), StandardCharsets.UTF_8),
                    new String(DEMO, StandardCharsets.UTF_8));
        }
    }

    @Test
    void readsAllThatWasWritten() throws IOException {
        Session session = read(DEMO);
        assertEquals(Demo.HEADER, session.header());
        assertEquals(Demo.INPUTS, inputs(session));
        EventCodec events = new EventCodec(Demo.START);
        assertEquals(
                Demo.EVENTS.stream()
                        .map(event -> events.write(Demo.INPUTS.size(), event))
                        .toList(),
                session.told().map(Entry.Told::json).toList());
        assertTrue(session.entries().contains(new Entry.Note(Demo.at(15), "clock", "The clock was set back.")));
        assertTrue(session.isClosed());
        assertEquals(Demo.at(14), session.lastAt());
        assertEquals(Demo.INPUTS.size() + 1, session.nextSequence());
        assertEquals(1, session.problems().size(), session.problems()::toString);
        assertTrue(session.problems().get(0).what().contains("1 lines of unknown kind (future)"));
    }

    /** A power cut may end the file anywhere. */
    @Test
    void tornAtEveryByteItLosesAtMostTheLastLineAndSaysSo() throws IOException {
        int headerBytes = Demo.HEADER.line().getBytes(StandardCharsets.UTF_8).length;
        for (int length = headerBytes; length < DEMO.length; length += stride(length)) {
            int cut = length;
            Session session = read(Arrays.copyOf(DEMO, length));
            List<String> whole = JournalBytes.linesWithin(Arrays.copyOf(DEMO, length + 1), length + 1);
            long inputLines = whole.stream()
                    .skip(1)
                    .filter(line -> line.matches("\\{\"k\":\"[rftaw]\".*"))
                    .count();
            assertTrue(inputs(session).size() >= inputLines - (length == headerBytes ? 1 : 0), () -> "cut at " + cut);
            assertEquals(Demo.INPUTS.subList(0, inputs(session).size()), inputs(session), () -> "cut at " + cut);
            boolean midLine = DEMO[length - 1] != '\n' && DEMO[length] != '\n';
            boolean said = session.problems().stream().anyMatch(p -> p.what().contains("ends in the middle"));
            assertEquals(midLine, said, () -> "cut at " + cut + " " + session.problems());
        }
    }

    @Test
    void withoutAUsableHeaderItIsRefusedInThreeParts() throws IOException {
        int headerBytes = Demo.HEADER.line().getBytes(StandardCharsets.UTF_8).length;
        for (int length = 0; length < headerBytes; length++) {
            List<Problem> problems = problems(Arrays.copyOf(DEMO, length));
            assertEquals(1, problems.size());
        }
        for (String other : List.of("time_s,temperature_c\n0,31\n", "{}\n", "{\"k\":\"t\"}\n", "\0\0\0")) {
            String said = problems(other.getBytes(StandardCharsets.UTF_8)).toString();
            assertTrue(said.contains("cannot be used"), said);
        }
        List<Problem> missing = JournalReader.read(folder.resolve("none")).fold(s -> List.<Problem>of(), List::copyOf);
        assertTrue(missing.get(0).what().contains("no such file"));
    }

    /** One bit anywhere after the header: never an exception, always said, and all other lines are used. */
    @Test
    void everyFlippedBitIsSaid() throws IOException {
        int headerBytes = Demo.HEADER.line().getBytes(StandardCharsets.UTF_8).length + 1;
        List<Problem> untouched = read(DEMO).problems();
        SplittableRandom random = new SplittableRandom(3);
        for (int at = headerBytes; at < DEMO.length - 1; at += stride(at)) {
            byte[] flipped = DEMO.clone();
            flipped[at] ^= (byte) (1 << random.nextInt(8));
            int where = at;
            Session session = read(flipped);
            assertTrue(!session.problems().equals(untouched) || inCheckLinesWall(at), () -> "byte " + where);
            assertTrue(inputs(session).size() >= Demo.INPUTS.size() - 2, () -> "byte " + where);
        }
    }

    /** Every byte, but in larger steps through the middle of the one very long line. */
    private static int stride(int at) {
        int begin = at;
        while (begin > 0 && DEMO[begin - 1] != '\n') begin--;
        int end = at;
        while (DEMO[end] != '\n') end++;
        return at - begin > 100 && end - at > 100 ? 29 : 1;
    }

    /** The time of day in a check line is the one thing that nothing vouches for. */
    private static boolean inCheckLinesWall(int at) {
        int begin = at;
        while (begin > 0 && DEMO[begin - 1] != '\n') begin--;
        String before = new String(DEMO, begin, at - begin, StandardCharsets.UTF_8);
        return before.startsWith("{\"k\":\"c\"") && before.contains("\"wall\"");
    }

    @Test
    void aLineThatIsGoneIsMissed() throws IOException {
        String text = new String(DEMO, StandardCharsets.UTF_8).replaceFirst("\\{\"k\":\"f\".*\n", "");
        Session session = read(text.getBytes(StandardCharsets.UTF_8));
        String said = session.problems().toString();
        assertTrue(said.contains("1 input is missing before it") && said.contains("not as they were written"), said);
        assertEquals(Demo.INPUTS.size() - 1, inputs(session).size());
    }

    /** What a power cut leaves on some file systems: the file has its length, and its end is zeros. */
    @Test
    void aTailOfZerosIsDropped() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes(DEMO);
        bytes.writeBytes(new byte[5000]);
        Session session = read(bytes.toByteArray());
        assertEquals(Demo.INPUTS, inputs(session));
        assertTrue(session.problems().toString().contains("5000 bytes"));
    }

    @Test
    void anotherFormatIsReadAsWellAsCanBe() throws IOException {
        String text = new String(DEMO, StandardCharsets.UTF_8).replace("\"format\":1", "\"format\":2");
        Session session = read(text.getBytes(StandardCharsets.UTF_8));
        assertTrue(session.problems().toString().contains("newer program (format 2)"));
        assertEquals(Demo.INPUTS, inputs(session));
    }

    @Test
    void theDemoIsTheSameEachTime() {
        assertArrayEquals(DEMO, JournalBytes.demo());
    }

    private Session read(byte[] bytes) throws IOException {
        return JournalReader.read(file(bytes)).fold(session -> session, problems -> fail(problems.toString()));
    }

    private List<Problem> problems(byte[] bytes) throws IOException {
        return JournalReader.read(file(bytes)).fold(session -> fail("accepted"), List::copyOf);
    }

    private Path file(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("x" + SessionFiles.ENDING), bytes);
    }

    private static List<Input> inputs(Session session) {
        return session.inputs().map(recorded -> recorded.input()).toList();
    }
}
