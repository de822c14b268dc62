package fifthform.monitor.app;

import fifthform.curves.setup.Origin;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.texts.CommandText;
import fifthform.probe.link.ByteRecorder;
import fifthform.probe.link.TapeSource;
import fifthform.probe.reader.ProbeLine;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Optional;

/** The raw bytes of the bowl's probe beside its session, where the maker wants them. */
final class RawBytes {
    /** First line of bytes that a simulated bowl sent; a remark to whoever reads them back. */
    private static final String SIMULATED = "# simulated: bytes of a practice batch, nothing here was measured";

    private final Optional<Writer> writer;
    private final Optional<ByteRecorder> recorder;

    private RawBytes(Optional<Writer> writer, Optional<ByteRecorder> recorder) {
        this.writer = writer;
        this.recorder = recorder;
    }

    static RawBytes none() {
        return new RawBytes(Optional.empty(), Optional.empty());
    }

    static RawBytes beside(Path session, Instant start, Origin origin, PrintWriter err) {
        Path file = SessionFiles.beside(session, TapeSource.BYTES_ENDING);
        try {
            // Appended: a session that goes on after a cut keeps the bytes from before it.
            boolean fresh = !Files.exists(file) || Files.size(file) == 0;
            Writer writer = Files.newBufferedWriter(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
            if (fresh && origin == Origin.SIMULATED) writer.write(SIMULATED + "\n");
            ByteRecorder recorder = new ByteRecorder(
                    writer, start, e -> err.println(CommandText.THE_RAW_BYTES_CANNOT_BE_KEPT.say(e.getMessage())));
            return new RawBytes(Optional.of(writer), Optional.of(recorder));
        } catch (IOException e) {
            err.println(CommandText.THE_RAW_BYTES_CANNOT_BE_KEPT.say(e.getMessage()));
            return none();
        }
    }

    /** Whether a file of bytes says that nothing in it was measured. */
    static boolean saysSimulated(Path file) {
        try (InputStream bytes = Files.newInputStream(file)) {
            byte[] begin = bytes.readNBytes(SIMULATED.length());
            return new String(begin, StandardCharsets.US_ASCII).equals(SIMULATED);
        } catch (IOException unreadable) {
            // Whoever goes on to read the file says so.
            return false;
        }
    }

    /** The same line, its bytes recorded if it is the bowl's. */
    ProbeLine tap(ProbeLine line) {
        boolean bowl = line.probes().containsValue(Setups.BOWL);
        return recorder.filter(r -> bowl)
                .map(r -> new ProbeLine(line.name(), r.tap(line.source()), line.protocol(), line.probes()))
                .orElse(line);
    }

    void close() {
        writer.ifPresent(w -> {
            try {
                w.close();
            } catch (IOException alreadyTold) {
                // The recorder has said so when it could not write.
            }
        });
    }
}
