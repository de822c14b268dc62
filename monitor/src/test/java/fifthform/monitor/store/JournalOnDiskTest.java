package fifthform.monitor.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalOnDiskTest {
    @TempDir
    Path folder;

    @Test
    void aFileDeletedWhileItIsWrittenIsWrittenAnewWhole() throws Exception {
        Path file = folder.resolve("sessions").resolve("demo.jsonl");
        Files.createDirectories(file.getParent());
        try (JournalFile journal = JournalFile.open(file)) {
            journal.append(bytes("one\n"));
            Files.delete(file);
            Files.delete(file.getParent());
            journal.append(bytes("two\n"));
            journal.append(bytes("three\n"));
        }
        assertEquals("one\ntwo\nthree\n", Files.readString(file));
    }

    @Test
    void aFileThatIsThereIsGoneOnWith() throws Exception {
        Path file = Files.writeString(folder.resolve("demo.jsonl"), "one\n");
        try (JournalFile journal = JournalFile.open(file)) {
            journal.append(bytes("two\n"));
        }
        assertEquals("one\ntwo\n", Files.readString(file));
    }

    private static ByteBuffer bytes(String text) {
        return ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
    }
}
