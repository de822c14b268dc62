package fifthform.probe.protocol;

import fifthform.curves.input.Sample;
import fifthform.probe.Signal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What bare columns mean. One column is the tip. Of two or three the first may be a time stamp, which a single line cannot
 * tell, so lines are held until their followers have decided:
 *
 * <ul>
 *   <li>a whole number beside numbers with decimals is never a temperature: it is a stamp as soon as it has grown, on the
 *       second line where it lies above every temperature of this kitchen, else on the third;
 *   <li>a column written like its neighbours is the tip, and the next one the junction, as soon as it does not grow evenly;
 *   <li>while it does it could be either: {@value #EVEN_LINES} lines make it a stamp if it has left the range of
 *       temperatures (a saturated converter wanders, it does not climb in even steps), {@value #LONGEST_WAIT} lines
 *       within the range if their steps are exactly equal and of two last digits or more;
 *   <li>what {@value #LONGEST_WAIT} lines have not decided is unreadable, and the wait begins anew.
 * </ul>
 *
 * Without a stamp three columns have no agreed order and are unreadable. A stamp that falls is a device that has started
 * anew: the meaning is learned anew as well.
 */
final class ColumnMeaning {
    private static final int LONGEST_WAIT = 8;
    private static final int EVEN_LINES = 5;
    private static final double HIGHEST_CELSIUS = Sample.HIGHEST_CELSIUS;

    /** How evenly a stamp grows, as a share of its step. */
    private static final double EVEN_FRACTION = 0.2;

    private enum First {
        UNDECIDED,
        STAMP,
        TIP
    }

    private First first = First.UNDECIDED;
    private int columns;
    private double lastStamp;
    private final List<Line> held = new ArrayList<>();

    void take(Line line, Consumer<? super Signal> out) {
        if (line.fields().size() != columns) {
            giveUp(out);
            columns = line.fields().size();
            first = columns == 1 ? First.TIP : First.UNDECIDED;
        }
        if (first == First.STAMP && !staysStamp(line)) first = First.UNDECIDED;
        if (columns > 3 || first != First.UNDECIDED) {
            tell(line, out);
            return;
        }
        held.add(line);
        decide(out);
    }

    /** Something else came between: lines still held will not be decided any more. */
    void giveUp(Consumer<? super Signal> out) {
        held.forEach(line -> out.accept(new Signal.Unreadable(line.bytes())));
        held.clear();
    }

    private boolean staysStamp(Line line) {
        Optional<Written> stamp = line.fields().get(0).number();
        return stamp.isPresent() && stamp.get().value() >= lastStamp;
    }

    private void decide(Consumer<? super Signal> out) {
        FirstColumn column = FirstColumn.of(held);
        First judged = judge(column);
        if (judged == First.UNDECIDED && column.falls() && held.size() > 1) {
            Line restart = held.remove(held.size() - 1);
            giveUp(out);
            held.add(restart);
        } else if (judged != First.UNDECIDED) {
            first = judged;
            held.forEach(line -> tell(line, out));
            held.clear();
        } else if (held.size() >= LONGEST_WAIT) {
            giveUp(out);
        }
    }

    private First judge(FirstColumn column) {
        if (column.hasGaps()) return First.TIP; // "nan": a clock never says that
        if (held.size() < 2) return First.UNDECIDED;
        boolean above = column.lowest() > HIGHEST_CELSIUS;
        boolean leavesRange = column.highest() > HIGHEST_CELSIUS;
        if (column.isWholeBesideDecimals())
            return column.grows() && (above || held.size() >= 3) ? First.STAMP : First.UNDECIDED;
        if (!column.growsEvenly(EVEN_FRACTION)) {
            boolean restarted = column.falls() && leavesRange && !above;
            return restarted ? First.UNDECIDED : First.TIP;
        }
        if (leavesRange) return held.size() >= EVEN_LINES ? First.STAMP : First.UNDECIDED;
        return held.size() == LONGEST_WAIT && column.growsLikeAClock() ? First.STAMP : First.UNDECIDED;
    }

    private void tell(Line line, Consumer<? super Signal> out) {
        List<Field> fields = line.fields();
        int tip = first == First.STAMP ? 1 : 0;
        if (first == First.STAMP)
            lastStamp = fields.get(0).number().map(Written::value).orElse(lastStamp);
        boolean known = first != First.UNDECIDED && fields.size() - tip <= 2;
        Optional<Field> junction = fields.size() - tip == 2 ? Optional.of(fields.get(tip + 1)) : Optional.empty();
        Optional<Signal> signal = known ? Temperatures.one(0, fields.get(tip), junction) : Optional.empty();
        out.accept(signal.orElse(new Signal.Unreadable(line.bytes())));
    }
}
