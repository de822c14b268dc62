package fifthform.probe.protocol;

import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;

/**
 * Lines to signals. A line that differs from a recent one in its digits only is read the quick way ({@link QuickLine}),
 * any other by the full grammar; both give the same {@link Line}.
 */
final class LineDecoder implements ProbeProtocol.Decoder, LineCutter.Lines {
    /** Adapters have a few kinds of lines in turn, hardly ever more. */
    private static final int KINDS = 4;

    /** How to find the shape of a line that the full grammar has read. */
    enum Ways {
        QUICK_OR_FULL,
        /** For grammars with meanings of their own, and for tests that compare the two. */
        FULL_ONLY
    }

    private final LineCutter cutter = new LineCutter(this);
    private final LineStream lines = new LineStream();
    private final BiFunction<String, Integer, Line> grammar;
    private final Ways ways;
    private final QuickLine[] known = new QuickLine[KINDS];
    private int kinds;
    private int lastKnown;
    private WireText.Comma comma = WireText.Comma.MAY_BE_DECIMAL;

    /** @param grammar reads a line of so many bytes by itself */
    LineDecoder(BiFunction<String, Integer, Line> grammar, Ways ways) {
        this.grammar = grammar;
        this.ways = ways;
    }

    @Override
    public void feed(byte[] bytes, Consumer<? super Signal> out) {
        cutter.feed(bytes, out);
    }

    @Override
    public void line(byte[] bytes, int from, int to, Consumer<? super Signal> out) {
        if (from == to) {
            lines.blank();
            return;
        }
        if (lines.comma() != comma) {
            comma = lines.comma();
            kinds = 0; // other commas, other shapes
        }
        if (lines.isSteady()) {
            for (int i = 0; i < kinds; i++) {
                int kind = (lastKnown + i) % kinds;
                if (!known[kind].fits(bytes, from, to)) continue;
                lastKnown = kind;
                lines.line(known[kind].line(), out);
                return;
            }
        }
        byTheGrammar(bytes, from, to, out);
    }

    private void byTheGrammar(byte[] bytes, int from, int to, Consumer<? super Signal> out) {
        String text = WireText.of(bytes, from, to, comma);
        if (text.isEmpty()) {
            lines.blank();
            return;
        }
        Line line = grammar.apply(text, to - from);
        if (ways == Ways.QUICK_OR_FULL) QuickLine.of(bytes, from, to, line).ifPresent(this::remember);
        lines.line(line, out);
    }

    private void remember(QuickLine shape) {
        int place = kinds < KINDS ? kinds++ : (lastKnown + KINDS - 1) % KINDS;
        known[place] = shape;
        lastKnown = place;
    }

    @Override
    public void unreadable(int bytes, Consumer<? super Signal> out) {
        lines.unreadable(bytes, out);
    }

    @Override
    public Optional<String> channelName(int channel) {
        return lines.channelName(channel);
    }
}
