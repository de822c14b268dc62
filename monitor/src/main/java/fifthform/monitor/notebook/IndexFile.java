package fifthform.monitor.notebook;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.zip.CRC32C;

/**
 * Rows that were made before, one a line behind its check sum. The file is derived: it may be deleted or spoilt at any
 * time, and only costs the reading of the sessions anew. It is replaced whole; of two programs that replace it at once the
 * last one wins, and what the other knew is read again.
 */
final class IndexFile {
    /** First line; another program's version is left alone until it is replaced. */
    private static final String HEAD = "notebook index 4; derived from the sessions, may be deleted";

    private static final int SUM_DIGITS = 8;

    private final Path file;
    private final CRC32C sum = new CRC32C();

    IndexFile(Path file) {
        this.file = file;
    }

    /** The rows by the name of their session's file; what cannot be read is missing. */
    Map<String, RowText.Kept> load(Path folder) {
        Map<String, RowText.Kept> rows = new HashMap<>();
        if (!Files.isRegularFile(file)) return rows;
        try {
            byte[] all = Files.readAllBytes(file);
            int from = end(all, 0);
            if (!HEAD.equals(new String(all, 0, from, StandardCharsets.UTF_8))) return rows;
            for (from++; from < all.length; from = end(all, from) + 1) take(all, from, end(all, from), folder, rows);
        } catch (IOException e) {
            // It is made anew.
        }
        return rows;
    }

    private static int end(byte[] all, int from) {
        int end = from;
        while (end < all.length && all[end] != '\n') end++;
        return end;
    }

    private void take(byte[] all, int from, int to, Path folder, Map<String, RowText.Kept> rows) {
        int begin = from + SUM_DIGITS + 1;
        if (begin >= to) return;
        // By its bytes, so that one that is no UTF-8 costs its line alone.
        sum.reset();
        sum.update(all, begin, to - begin);
        if (!digits(sum.getValue()).equals(new String(all, from, SUM_DIGITS, StandardCharsets.ISO_8859_1))) return;
        try {
            RowText.Kept kept = RowText.read(new String(all, begin, to - begin, StandardCharsets.UTF_8), folder);
            rows.put(String.valueOf(kept.row().file().getFileName()), kept);
        } catch (RowText.NoRow e) {
            // Written by a newer program: made anew.
        }
    }

    /**
     * Keeps these rows and no others.
     *
     * @throws IOException it cannot be written; nothing is lost by that but time
     */
    void save(Collection<RowText.Kept> rows) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Files.createDirectories(folder);
        // A name of its own, since two programs may be at it.
        Path fresh = Files.createTempFile(folder, "notebook", ".new");
        try {
            try (BufferedWriter out = Files.newBufferedWriter(fresh, StandardCharsets.UTF_8)) {
                out.write(HEAD + "\n");
                for (RowText.Kept kept : rows) {
                    String line = RowText.line(kept);
                    out.write(sum(line.getBytes(StandardCharsets.UTF_8)) + " " + line + "\n");
                }
            }
            move(fresh);
        } catch (CharacterCodingException e) {
            throw new IOException("a name cannot be written as UTF-8", e);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    private void move(Path fresh) throws IOException {
        try {
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private String sum(byte[] bytes) {
        sum.reset();
        sum.update(bytes);
        return digits(sum.getValue());
    }

    private static String digits(long value) {
        String digits = Long.toHexString(value);
        return "0".repeat(SUM_DIGITS - digits.length()) + digits;
    }
}
