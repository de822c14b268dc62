package fifthform.monitor.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.input.Recorded;
import fifthform.curves.input.Tick;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program that is killed while it records. */
class KilledTest {
    @TempDir
    Path folder;

    @Test
    void whatWasRecordedAMomentBeforeIsThereAndItGoesOn() throws Exception {
        Path file = folder.resolve("demo" + SessionFiles.ENDING);
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Recording.class.getName(),
                        file.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        long given = 0;
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(program.getInputStream(), StandardCharsets.UTF_8))) {
            while (given < 40) given = Long.parseLong(said.readLine());
            program.destroyForcibly().waitFor();
        }
        Session session = read(file);
        List<Long> sequences = session.inputs().map(Recorded::sequence).toList();
        assertFalse(session.isClosed());
        // A line reaches the system long before the next input comes; the one under way may be lost.
        assertTrue(sequences.size() >= given - 1, sequences.size() + " of " + given);
        for (int i = 0; i < sequences.size(); i++) assertEquals(i + 1, sequences.get(i));
        JournalWriter.resume(session, InstantSource.system(), what -> {}).close();
        assertTrue(read(file).isClosed());
    }

    private static Session read(Path file) {
        return JournalReader.read(file).fold(session -> session, problems -> fail(problems.toString()));
    }

    /** The program that is killed: records twenty ticks a second and says its number before the next. */
    static final class Recording {
        private Recording() {}

        public static void main(String[] arguments) throws StoreException, InterruptedException, IOException {
            JournalWriter writer =
                    JournalWriter.create(Path.of(arguments[0]), Demo.HEADER, InstantSource.system(), what -> {});
            for (long sequence = 1; ; sequence++) {
                writer.input(new Recorded(sequence, new Tick(Instant.now())));
                Thread.sleep(50);
                System.out.println(sequence);
            }
        }
    }
}
