package fifthform.probe.protocol;

import fifthform.probe.Signal;
import java.util.function.Consumer;

/** Cuts bytes into lines, which end with CR, LF or both; of a line that does not end a kibibyte is kept. */
final class LineCutter {
    /** A line of an adapter is far shorter; what is longer is noise or another protocol. */
    static final int LONGEST_LINE = 1024;

    /** Takes what was cut. */
    interface Lines {
        /** One line, {@code bytes[from]} to {@code bytes[to − 1]}, without its end; may be empty. Keeps no reference. */
        void line(byte[] bytes, int from, int to, Consumer<? super Signal> out);

        /** Bytes that are no line at all. */
        void unreadable(int bytes, Consumer<? super Signal> out);
    }

    private final Lines lines;
    private final byte[] begun = new byte[LONGEST_LINE];
    private int length;
    /** The line under way is none: it has already been longer than {@link #LONGEST_LINE}, or was given up. */
    private boolean spoiled;

    LineCutter(Lines lines) {
        this.lines = lines;
    }

    /** Whether bytes came after the last line end. */
    boolean isWithinLine() {
        return length > 0 || spoiled;
    }

    /** What has come of the line under way, and what is still to come of it, is no line. */
    void spoil() {
        spoiled = true;
    }

    void feed(byte[] bytes, Consumer<? super Signal> out) {
        int from = 0;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] != '\n' && bytes[i] != '\r') continue;
            end(bytes, from, i, out);
            from = i + 1;
        }
        keep(bytes, from, bytes.length, out);
    }

    private void end(byte[] bytes, int from, int to, Consumer<? super Signal> out) {
        if (length == 0 && !spoiled && to - from <= LONGEST_LINE) {
            lines.line(bytes, from, to, out); // the usual case: whole within one chunk
            return;
        }
        keep(bytes, from, to, out);
        if (spoiled) lines.unreadable(length, out);
        else lines.line(begun, 0, length, out);
        length = 0;
        spoiled = false;
    }

    private void keep(byte[] bytes, int from, int to, Consumer<? super Signal> out) {
        for (int at = from; at < to; ) {
            if (length == LONGEST_LINE) {
                lines.unreadable(length, out);
                length = 0;
                spoiled = true;
            }
            int count = Math.min(to - at, LONGEST_LINE - length);
            System.arraycopy(bytes, at, begun, length, count);
            length += count;
            at += count;
        }
    }
}
