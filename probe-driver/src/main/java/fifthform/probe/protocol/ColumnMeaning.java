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
 *   <li>a stamp never falls, and it has grown by the third line at the latest it is believed (by the second where it lies
 *       above every temperature of this kitchen);
 *   <li>in the range of temperatures a stamp is a whole number beside numbers with decimals; such a column is never taken
 *       for a temperature;
 *   <li>a column written like its neighbours that grows evenly could be either and stays undecided; as soon as it does
 *       not, it is the tip, and the second column the junction; after {@value #LONGEST_WAIT} lines with exactly equal
 *       steps of two last digits or more it is a stamp: no temperature rises like that;
 *   <li>what {@value #LONGEST_WAIT} lines have not decided is unreadable, and the wait begins anew.
 * </ul>
 *
 * Without a stamp three columns have no agreed order and are unreadable. A stamp that falls is a device that has started
 * anew: the meaning is learned anew as well.
 */
final class ColumnMeaning {
    private static final int LONGEST_WAIT = 8;
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
        if (line.columns().size() != columns) {
            giveUp(out);
            columns = line.columns().size();
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
        Optional<Written> stamp = line.columns().get(0).number();
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
        if (column.highest() > HIGHEST_CELSIUS) {
            if (column.grows()) return First.STAMP;
            boolean saturated = column.lowest() > HIGHEST_CELSIUS && (column.falls() || held.size() == LONGEST_WAIT);
            return saturated ? First.TIP : First.UNDECIDED;
        }
        if (column.isWholeBesideDecimals()) return column.grows() && held.size() >= 3 ? First.STAMP : First.UNDECIDED;
        if (!column.growsEvenly(EVEN_FRACTION)) return First.TIP;
        return held.size() == LONGEST_WAIT && column.growsLikeAClock() ? First.STAMP : First.UNDECIDED;
    }

    private void tell(Line line, Consumer<? super Signal> out) {
        List<Field> fields = line.columns();
        int tip = first == First.STAMP ? 1 : 0;
        if (first == First.STAMP)
            lastStamp = fields.get(0).number().map(Written::value).orElse(lastStamp);
        boolean known = first != First.UNDECIDED && fields.size() - tip <= 2;
        Optional<Field> junction = fields.size() - tip == 2 ? Optional.of(fields.get(tip + 1)) : Optional.empty();
        Optional<Signal> signal = known ? Temperatures.one(0, fields.get(tip), junction) : Optional.empty();
        out.accept(signal.orElse(new Signal.Unreadable(line.bytes())));
    }
}
