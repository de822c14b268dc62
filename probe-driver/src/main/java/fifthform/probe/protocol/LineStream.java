package fifthform.probe.protocol;

import fifthform.probe.Signal;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The lines of one link in their order.
 *
 * <p>A link is opened at any moment, so what comes before its first line end may be the rear half of a line: {@code 1.25}
 * of {@code 31.25} reads as well as a whole one. The first line is therefore held until the second is there, which is
 * whole. It counts only if both are of one kind and its first number lies nearer to the second's than a lost digit could
 * have moved it ({@link Written#continuedBy}); else it is unreadable. So a link that begins at a line's beginning loses
 * nothing, as long as the temperature does not leap between its first two lines. A line without any number cannot show a
 * wrong one and is not held.
 *
 * <p>Some adapters tell the cold junction on a line of its own, before the tip's: it is joined to the next reading, and
 * without one it is unreadable. A header is unreadable as well, and names the columns of the lines behind it until lines
 * come that have more or fewer of them.
 */
final class LineStream {
    private boolean begun;
    private Optional<Line> maybeTorn = Optional.empty();
    private Optional<Line> junction = Optional.empty();
    private Optional<Header> header = Optional.empty();
    private final ColumnMeaning columns = new ColumnMeaning();
    private final Channels channels = new Channels();

    /** Whether the link's first lines are behind us, so that nobody asks for a line's front any more. */
    boolean isSteady() {
        return begun && maybeTorn.isEmpty();
    }

    /** What a comma can be in the next line. */
    WireText.Comma comma() {
        return header.map(Header::commas).orElse(WireText.Comma.MAY_BE_DECIMAL);
    }

    Optional<String> channelName(int channel) {
        return channels.name(channel);
    }

    /** An empty line: whatever follows is whole. */
    void blank() {
        begun = true;
    }

    void line(Line line, Consumer<? super Signal> out) {
        if (!begun) {
            begun = true;
            boolean mayBeTorn = line.kind() != Line.Kind.NOTHING
                    && line.front().firstNumber().isPresent();
            if (mayBeTorn) {
                maybeTorn = Optional.of(line);
                return;
            }
        }
        releaseFirst(Optional.of(line), out);
        pass(line, out);
    }

    /** Bytes that are no line at all. */
    void unreadable(int bytes, Consumer<? super Signal> out) {
        begun = true;
        releaseFirst(Optional.empty(), out);
        giveUpWaiting(out);
        if (bytes > 0) out.accept(new Signal.Unreadable(bytes));
    }

    private void releaseFirst(Optional<Line> next, Consumer<? super Signal> out) {
        if (maybeTorn.isEmpty()) return;
        Line first = maybeTorn.get();
        maybeTorn = Optional.empty();
        if (next.filter(first::continuedBy).isPresent()) pass(first, out);
        else out.accept(new Signal.Unreadable(first.bytes()));
    }

    private void pass(Line line, Consumer<? super Signal> out) {
        switch (line.kind()) {
            case READINGS -> readings(line, out);
            case SIGNALS -> {
                giveUpWaiting(out);
                line.signals().forEach(out);
            }
            case COLUMNS -> columns(line, out);
            case JUNCTION -> {
                giveUpWaiting(out);
                junction = Optional.of(line);
            }
            case HEADER -> {
                giveUpWaiting(out);
                header = line.header();
                out.accept(new Signal.Unreadable(line.bytes()));
            }
            case NOTHING -> {
                giveUpWaiting(out);
                out.accept(new Signal.Unreadable(line.bytes()));
            }
        }
    }

    private void readings(Line line, Consumer<? super Signal> out) {
        columns.giveUp(out);
        Signal[] signals = new Signal[line.plan().readings().size()];
        for (int i = 0; i < signals.length; i++) {
            Optional<Signal> signal = signal(line, line.plan().readings().get(i));
            if (signal.isEmpty()) {
                giveUpJunction(out);
                out.accept(new Signal.Unreadable(line.bytes()));
                return;
            }
            signals[i] = signal.get();
        }
        Optional<Field> told = junction.map(before -> before.fields().get(0));
        junction = Optional.empty();
        for (Signal signal : signals) out.accept(Temperatures.joined(signal, told));
    }

    private Optional<Signal> signal(Line line, Plan.Reading reading) {
        Field tip = line.fields().get(reading.tip());
        int channel = channels.of(tip.label());
        if (channel == Channels.NONE) return Optional.empty();
        Optional<Field> cold = reading.junction() == Plan.NONE
                ? Optional.empty()
                : Optional.of(line.fields().get(reading.junction()));
        return Temperatures.one(channel, tip, cold);
    }

    private void columns(Line line, Consumer<? super Signal> out) {
        giveUpJunction(out);
        Optional<Line> named = header.flatMap(words -> words.over(line));
        if (named.isPresent()) {
            pass(named.get(), out);
            return;
        }
        header = Optional.empty();
        columns.take(line, out);
    }

    private void giveUpWaiting(Consumer<? super Signal> out) {
        giveUpJunction(out);
        columns.giveUp(out);
    }

    private void giveUpJunction(Consumer<? super Signal> out) {
        junction.ifPresent(line -> out.accept(new Signal.Unreadable(line.bytes())));
        junction = Optional.empty();
    }
}
