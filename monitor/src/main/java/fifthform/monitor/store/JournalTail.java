package fifthform.monitor.store;

import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;

/** What must be known of a journal's end to go on writing there. */
final class JournalTail {
    private static final String CHECK_BEGINS = "{\"" + LineKind.KEY + "\":\"" + LineKind.CHECK.letter + "\"";

    private final CheckedLines lines = new CheckedLines();
    private boolean torn;

    private JournalTail() {}

    static JournalTail of(Path file) throws IOException {
        JournalTail tail = new JournalTail();
        try (LineScan scan = LineScan.of(file)) {
            Optional<RawLine> line = scan.next();
            while (line.isPresent()) {
                tail.take(line.get());
                line = scan.next();
            }
        }
        return tail;
    }

    private void take(RawLine line) {
        if (isCheck(line)) lines.startAnew();
        else lines.count(line.bytes());
        torn = line.isBroken();
    }

    /** Only a whole one: to a reader a torn check line is a damaged line like any other, and is summed up like one. */
    private static boolean isCheck(RawLine line) {
        if (!line.text().startsWith(CHECK_BEGINS)) return false;
        try {
            return JsonObject.parse(line.text()).has("crc");
        } catch (UnreadableJson e) {
            return false;
        }
    }

    /** Ends a torn last line, so that the next one stands on its own. */
    void mend(JournalFile file) throws IOException {
        if (!torn) return;
        byte[] lineBreak = "\n".getBytes(StandardCharsets.UTF_8);
        ByteBuffer bytes = ByteBuffer.wrap(lineBreak);
        while (bytes.hasRemaining()) file.append(bytes);
        lines.countMore(lineBreak);
    }

    /** The sum since the last check line, to be gone on with. */
    CheckedLines lines() {
        return lines;
    }
}
