package fifthform.probe.link;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import java.io.IOException;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TapeSourceTest {
    private static final Instant START = Instant.parse("2026-03-01T10:00:00Z");

    @TempDir
    Path folder;

    @Test
    void aFileOfLinesComesOneLineAnInterval() throws Exception {
        List<String> arrivals = arrivals(accepted("lines.txt", "31.25\r\n31.50\n\n31.75"));
        assertEquals(List.of("0.000 31.25|", "0.500 31.50|", "1.000 |", "1.500 31.75|"), arrivals);
    }

    @Test
    void recordedBytesComeAtTheirTimesWithSilenceBetween() throws Exception {
        List<String> arrivals = arrivals(accepted("demo.bytes", "# a demo\n0 3331\n0.5 0a  # end of a line\n"));
        assertEquals(List.of("0.000 31", "0.200 ", "0.400 ", "0.500 |"), arrivals);
    }

    @Test
    void eachOpeningBeginsAnew() throws Exception {
        TapeSource source = accepted("demo.bytes", "0 31\n");
        assertEquals(arrivals(source), arrivals(source));
    }

    @Test
    void aClosedTapeSaysSo() throws Exception {
        ByteLink link = accepted("demo.bytes", "0 31\n").open();
        link.close();
        assertThrows(LinkException.class, link::read);
    }

    @Test
    void everyBadLineIsNamed() throws Exception {
        List<Problem> problems = refused("bad.bytes", "0 31\nx 31\n1 313\n0.5 31\n0.25 31\n");
        assertEquals(
                List.of("bad.bytes line 2", "bad.bytes line 3", "bad.bytes line 5"),
                problems.stream()
                        .map(p -> p.where().replaceFirst(".*[/\\\\]", ""))
                        .toList());
        assertTrue(problems.get(2).what().contains("goes back"), problems::toString);
    }

    @Test
    void aMissingFileAndAnEmptyOneAreNamed() throws Exception {
        assertEquals(1, refused("empty.bytes", "# nothing\n").size());
        Parsed<TapeSource> missing = TapeSource.read(folder.resolve("no.bytes"), START, Duration.ofSeconds(1));
        assertTrue(missing.<String>fold(source -> "", p -> p.get(0).what()).contains("no such file"));
    }

    /** What is recorded is read back, byte for byte and moment for moment. */
    @Test
    void theRecorderWritesWhatTheTapeReads() throws Exception {
        TapeSource original = accepted("demo.bytes", "0.1 3331\n0.35 2e32350d0a\n2.000001 ff00\n");
        StringWriter kept = new StringWriter();
        ByteRecorder recorder = new ByteRecorder(kept, START, e -> {
            throw new AssertionError(e);
        });
        List<String> first = arrivals(recorder.tap(original));
        assertEquals(first, arrivals(accepted("copy.bytes", kept.toString())));
    }

    @Test
    void aFullDiskIsToldOnceAndReadingGoesOn() throws Exception {
        List<IOException> troubles = new ArrayList<>();
        Writer full = new Writer() {
            @Override
            public void write(char[] chars, int from, int count) throws IOException {
                throw new IOException("no space left");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        LinkSource tapped = new ByteRecorder(full, START, troubles::add).tap(accepted("a.txt", "1\n2\n3\n"));
        assertEquals(3, arrivals(tapped).size());
        assertEquals(1, troubles.size());
    }

    private TapeSource accepted(String name, String content) throws IOException {
        return read(name, content).fold(source -> source, problems -> {
            throw new AssertionError(problems);
        });
    }

    private List<Problem> refused(String name, String content) throws IOException {
        return read(name, content)
                .<List<Problem>>fold(
                        source -> {
                            throw new AssertionError("accepted");
                        },
                        List::copyOf);
    }

    private Parsed<TapeSource> read(String name, String content) throws IOException {
        Path file = Files.writeString(folder.resolve(name), content, StandardCharsets.UTF_8);
        return TapeSource.read(file, START, Duration.ofMillis(500));
    }

    private static List<String> arrivals(LinkSource source) throws Exception {
        List<String> arrivals = new ArrayList<>();
        try (ByteLink link = source.open()) {
            for (Optional<Arrival> a = link.read(); a.isPresent(); a = link.read()) {
                String text = new String(a.get().bytes(), StandardCharsets.ISO_8859_1).replace('\n', '|');
                double seconds = Duration.between(START, a.get().at()).toNanos() / 1e9;
                arrivals.add(String.format(Locale.ROOT, "%.3f %s", seconds, text));
            }
        }
        return arrivals;
    }
}
