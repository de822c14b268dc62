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
 * without one it is unreadable.
 */
final class LineStream {
    private boolean begun;
    private Optional<Line> maybeTorn = Optional.empty();
    private Optional<Line> junction = Optional.empty();
    private final ColumnMeaning columns = new ColumnMeaning();

    /** An empty line: whatever follows is whole. */
    void blank() {
        begun = true;
    }

    void line(Line line, Consumer<? super Signal> out) {
        boolean mayBeTorn = !begun && !line.isUnreadable() && line.firstNumber().isPresent();
        begun = true;
        if (mayBeTorn) {
            maybeTorn = Optional.of(line);
            return;
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
        if (!line.signals().isEmpty()) {
            columns.giveUp(out);
            Optional<Field> told = junction.flatMap(Line::junction);
            junction = Optional.empty();
            line.signals().forEach(signal -> out.accept(Temperatures.joined(signal, told)));
        } else if (!line.columns().isEmpty()) {
            giveUpJunction(out);
            columns.take(line, out);
        } else {
            giveUpWaiting(out);
            junction = Optional.of(line).filter(l -> l.junction().isPresent());
            if (line.isUnreadable()) out.accept(new Signal.Unreadable(line.bytes()));
        }
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
