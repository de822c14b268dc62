package fifthform.monitor.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.check.Problem;
import fifthform.curves.input.Recorded;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The quick way through a file says what the thorough reader says, whatever is wrong with the file. */
class JournalPassTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/tapes/demo-own-way.tempering.jsonl",
                "/tapes/demo-unplugged.tempering.jsonl",
                "/sessions/demo.tempering.jsonl"
            })
    void itReadsWhatTheReaderReads(String name) throws IOException {
        Path file = copy(name);
        sameAsTheReader(file);
    }

    @Test
    void itSaysTheSameOfEveryDamage() throws IOException {
        byte[] whole = Files.readAllBytes(copy("/sessions/demo.tempering.jsonl"));
        int header = headerLength(whole);
        Path file = folder.resolve("damaged.tempering.jsonl");
        for (int at = header; at < whole.length; at += 7) {
            byte[] damaged = whole.clone();
            damaged[at] = (byte) (damaged[at] == '#' ? '?' : '#');
            Files.write(file, damaged);
            sameAsTheReader(file);
        }
    }

    @Test
    void itSaysTheSameWhereverTheFileIsTorn() throws IOException {
        byte[] whole = Files.readAllBytes(copy("/sessions/demo.tempering.jsonl"));
        int header = headerLength(whole);
        Path file = folder.resolve("torn.tempering.jsonl");
        for (int length = header; length <= whole.length; length += 3) {
            Files.write(file, Arrays.copyOf(whole, length));
            sameAsTheReader(file);
        }
    }

    @Test
    void aLineMayBeLongerThanTheBuffer() throws IOException {
        String text = Files.readString(copy("/sessions/demo.tempering.jsonl"));
        String note = "{\"k\":\"n\",\"t\":15,\"about\":\"long\",\"text\":\"" + "x".repeat(1_500_000) + "\"}\n";
        Path file = folder.resolve("long.tempering.jsonl");
        Files.writeString(file, text + note);
        sameAsTheReader(file);
    }

    @Test
    void itGoesOnFromAnyLine() throws IOException {
        Path file = copy("/tapes/demo-unplugged.tempering.jsonl");
        List<Recorded> all = new ArrayList<>();
        List<Long> offsets = new ArrayList<>();
        try (JournalPass pass = JournalPass.whole(file, header(file))) {
            while (pass.next()) {
                if (pass.kind() != JournalPass.Kind.READING && pass.kind() != JournalPass.Kind.INPUT) continue;
                all.add(pass.recorded());
                offsets.add(pass.offset());
            }
        }
        assertTrue(all.size() > 5000, "only " + all.size());
        for (int from = 0; from < all.size(); from += 997) {
            try (JournalPass pass = JournalPass.from(file, header(file), offsets.get(from))) {
                assertTrue(pass.next());
                assertEquals(all.get(from), pass.recorded());
            }
        }
    }

    private void sameAsTheReader(Path file) throws IOException {
        Session session = JournalReader.read(file).fold(s -> s, problems -> fail(problems.toString()));
        List<Recorded> inputs = new ArrayList<>();
        List<String> told = new ArrayList<>();
        List<Entry.Note> notes = new ArrayList<>();
        List<Problem> problems;
        boolean closed = false;
        try (JournalPass pass = JournalPass.whole(file, session.header())) {
            while (pass.next()) {
                switch (pass.kind()) {
                    case READING, INPUT -> inputs.add(pass.recorded());
                    case TOLD -> told.add(pass.told());
                    case NOTE -> notes.add(pass.note());
                    case CLOSING -> closed = true;
                }
            }
            problems = pass.problems();
            assertFalse(pass.next());
        }
        assertEquals(session.inputs().toList(), inputs);
        assertEquals(session.told().map(Entry.Told::json).toList(), told);
        assertEquals(
                session.entries().stream().filter(Entry.Note.class::isInstance).toList(), notes);
        assertEquals(session.isClosed(), closed);
        assertEquals(session.problems(), problems);
    }

    private static int headerLength(byte[] file) {
        int at = 0;
        while (file[at] != '\n') at++;
        return at + 1;
    }

    private static SessionHeader header(Path file) {
        return JournalReader.readHeader(file).fold(h -> h, problems -> fail(problems.toString()));
    }

    private Path copy(String name) throws IOException {
        Path file = folder.resolve(Path.of(name).getFileName().toString());
        try (var bytes = JournalPassTest.class.getResourceAsStream(name)) {
            Files.copy(Objects.requireNonNull(bytes, name), file, StandardCopyOption.REPLACE_EXISTING);
        }
        return file;
    }
}
