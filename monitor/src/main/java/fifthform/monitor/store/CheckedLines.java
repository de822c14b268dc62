package fifthform.monitor.store;

import fifthform.monitor.json.JsonLine;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.zip.CRC32C;

/** Turns lines into bytes and sums them up, so that now and then a check line can vouch for what stands before it. */
final class CheckedLines {
    private final CRC32C crc = new CRC32C();
    private int lines;

    /** The line's bytes, counted. */
    byte[] line(String text) {
        byte[] bytes = (text + "\n").getBytes(StandardCharsets.UTF_8);
        count(bytes);
        return bytes;
    }

    /** Counts a line that stands in the file already. */
    void count(byte[] bytes) {
        countMore(bytes);
        lines++;
    }

    /** Counts bytes that belong to the line counted last. */
    void countMore(byte[] bytes) {
        crc.update(bytes, 0, bytes.length);
    }

    /** Lines since the last check. */
    int unchecked() {
        return lines;
    }

    /** The sum over the bytes since the last check, as a check line tells it. */
    String sum() {
        return String.format("%08x", crc.getValue());
    }

    /** A check line for what was counted since the last; begins to count anew. */
    byte[] check(Instant wall) {
        String text = new JsonLine()
                .text(LineKind.KEY, LineKind.CHECK.letter)
                .text("crc", sum())
                .whole("lines", lines)
                .text("wall", wall.toString())
                .end();
        startAnew();
        return (text + "\n").getBytes(StandardCharsets.UTF_8);
    }

    void startAnew() {
        crc.reset();
        lines = 0;
    }
}
