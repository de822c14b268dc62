package fifthform.probe.protocol;

import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.util.function.Consumer;

/** Bytes to lines, lines to signals; holds back what only the next line can tell. */
final class LineDecoder implements ProbeProtocol.Decoder {
    /** A line of an adapter is far shorter; what is longer is noise or another protocol. */
    private static final int LONGEST_LINE = 1024;

    private final byte[] line = new byte[LONGEST_LINE];
    private int length;
    /** The line under way has already been longer than {@link #LONGEST_LINE}. */
    private boolean overlong;

    private final Grammar grammar;
    private final LineStream lines = new LineStream();

    /** What one line means by itself. */
    interface Grammar {
        Line read(int bytes, String text);
    }

    LineDecoder() {
        this(Line::of);
    }

    LineDecoder(Grammar grammar) {
        this.grammar = grammar;
    }

    @Override
    public void feed(byte[] bytes, Consumer<? super Signal> out) {
        for (byte b : bytes) {
            if (b == '\n' || b == '\r') {
                end(out);
            } else {
                if (length == LONGEST_LINE) overflow(out);
                line[length++] = b;
            }
        }
    }

    private void overflow(Consumer<? super Signal> out) {
        lines.unreadable(length, out);
        length = 0;
        overlong = true;
    }

    private void end(Consumer<? super Signal> out) {
        if (overlong) {
            lines.unreadable(length, out);
        } else {
            String text = WireText.of(line, length);
            if (text.isEmpty()) lines.blank();
            else lines.line(grammar.read(length, text), out);
        }
        length = 0;
        overlong = false;
    }
}
