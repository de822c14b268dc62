package fifthform.probe.protocol;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The shape of a line: its bytes with the digits of its values left open. A line that fits means what the first one meant,
 * with other values: neither {@link WireText} nor a grammar asks for more of a value's digits than that they are there,
 * as long as there are at most {@value #MOST_DIGITS} and no exponent, so only they may differ. Digits within labels,
 * channel numbers and fault codes must be the same.
 *
 * <p>One instance serves one decoder and remembers the digits of the line that fitted last.
 */
final class QuickLine {
    /** Whole numbers of so many digits are exact in a double, and so a quotient by a power of ten rounds once. */
    private static final int MOST_DIGITS = 15;

    /** Stands for a run of digits. No line that can be read has this byte. */
    private static final byte DIGITS = 0;

    private static final double[] TENS = new double[MOST_DIGITS + 1];
    private static final double[] STEPS = new double[MOST_DIGITS + 1];

    static {
        for (int i = 0; i <= MOST_DIGITS; i++) {
            TENS[i] = Math.pow(10, i);
            STEPS[i] = Math.pow(10, -i); // as Written computes it
        }
    }

    private final byte[] shape;
    private final Line first;
    /** For each field the number of its run before the point and of that behind it among the open runs; −1 for none. */
    private final int[] wholeRun;

    private final int[] fractionRun;
    private final long[] values;
    private final int[] lengths;
    private final boolean[] mayBeginWithZero;
    private int bytes;

    private QuickLine(byte[] shape, Line first, int[] wholeRun, int[] fractionRun, boolean[] mayBeginWithZero) {
        this.shape = shape;
        this.first = first;
        this.wholeRun = wholeRun;
        this.fractionRun = fractionRun;
        this.mayBeginWithZero = mayBeginWithZero;
        this.values = new long[mayBeginWithZero.length];
        this.lengths = new int[mayBeginWithZero.length];
    }

    /** The shape of {@code line}, which the full grammar read from these bytes; empty where values decide its meaning. */
    static Optional<QuickLine> of(byte[] bytes, int from, int to, Line line) {
        boolean valuesOnlyFill = switch (line.kind()) {
            case READINGS -> !line.plan().comparesValues();
            case JUNCTION, COLUMNS -> true;
            case SIGNALS, HEADER, NOTHING -> false;
        };
        return valuesOnlyFill ? new Shape(bytes, from, to, line).drawn() : Optional.empty();
    }

    /** Whether the line has this shape; {@link #line()} then tells what it means. */
    boolean fits(byte[] line, int from, int to) {
        int at = from;
        int run = 0;
        for (byte expected : shape) {
            if (expected != DIGITS) {
                if (at >= to || line[at] != expected) return false;
                at++;
                continue;
            }
            int begin = at;
            long value = 0;
            while (at < to && line[at] >= '0' && line[at] <= '9') {
                if (at - begin == MOST_DIGITS) return false;
                value = 10 * value + (line[at++] - '0');
            }
            int length = at - begin;
            if (length == 0 || !mayBeginWithZero[run] && length > 1 && line[begin] == '0') return false;
            values[run] = value;
            lengths[run++] = length;
        }
        bytes = to - from;
        return at == to && hasFewDigits();
    }

    private boolean hasFewDigits() {
        for (int i = 0; i < wholeRun.length; i++)
            if (wholeRun[i] >= 0 && fractionRun[i] >= 0 && lengths[wholeRun[i]] + lengths[fractionRun[i]] > MOST_DIGITS)
                return false;
        return true;
    }

    /** The line that fitted last. */
    Line line() {
        Field[] fields = new Field[wholeRun.length];
        for (int i = 0; i < fields.length; i++) fields[i] = field(i);
        return first.withFields(bytes, Arrays.asList(fields));
    }

    private Field field(int i) {
        Field before = first.fields().get(i);
        int whole = wholeRun[i];
        int fraction = fractionRun[i];
        if (whole < 0 && fraction < 0) return before;
        int decimals = fraction < 0 ? 0 : lengths[fraction];
        long digits = whole < 0 ? 0 : values[whole];
        if (fraction >= 0) digits = digits * (long) TENS[decimals] + values[fraction];
        String form = before.number().orElseThrow().form();
        double value = digits / TENS[decimals];
        return before.withNumber(new Written(
                form.charAt(0) == '-' ? -value : value, STEPS[decimals], whole < 0 ? 0 : lengths[whole], form));
    }

    /** Draws the shape of one line. */
    private static final class Shape {
        private final byte[] bytes;
        private final int from;
        private final int to;
        private final Line line;
        private final int[] wholeRun;
        private final int[] fractionRun;

        Shape(byte[] bytes, int from, int to, Line line) {
            this.bytes = bytes;
            this.from = from;
            this.to = to;
            this.line = line;
            this.wholeRun = noRuns(line.fields().size());
            this.fractionRun = noRuns(line.fields().size());
        }

        private static int[] noRuns(int count) {
            int[] none = new int[count];
            Arrays.fill(none, -1);
            return none;
        }

        Optional<QuickLine> drawn() {
            List<Field> fields = line.fields();
            for (int i = 0; i < fields.size(); i++) {
                Field field = fields.get(i);
                boolean fixed = field.number().isEmpty() || field.label().meaning() == Label.Meaning.FAULT_CODE;
                if (fixed) continue;
                String form = field.number().get().form();
                if (field.run() < 0 || form.contains("e")) return Optional.empty();
                int next = field.run();
                if (form.contains("0")) wholeRun[i] = next++;
                if (form.contains(".")) fractionRun[i] = next;
            }
            return Optional.of(draw());
        }

        /** Copies the bytes, leaves out the digits of open runs, and numbers these from 0. */
        private QuickLine draw() {
            byte[] shape = new byte[to - from];
            int length = 0;
            int[] openWhole = noRuns(wholeRun.length);
            int[] openFraction = noRuns(wholeRun.length);
            boolean[] mayBeginWithZero = new boolean[2 * wholeRun.length];
            int run = -1;
            int open = 0;
            for (int at = from; at < to; at++) {
                boolean digit = isDigit(bytes[at]);
                boolean begins = digit && (at == from || !isDigit(bytes[at - 1]));
                if (begins) run++;
                int whole = digit ? fieldOf(wholeRun, run) : -1;
                int fraction = digit ? fieldOf(fractionRun, run) : -1;
                if (whole < 0 && fraction < 0) shape[length++] = bytes[at];
                if (!begins || whole < 0 && fraction < 0) continue;
                shape[length++] = DIGITS;
                if (whole >= 0) openWhole[whole] = open;
                else openFraction[fraction] = open;
                mayBeginWithZero[open++] = fraction >= 0 || !line.isJson();
            }
            return new QuickLine(
                    Arrays.copyOf(shape, length), line, openWhole, openFraction, Arrays.copyOf(mayBeginWithZero, open));
        }

        private static int fieldOf(int[] runs, int run) {
            for (int i = 0; i < runs.length; i++) if (runs[i] == run) return i;
            return -1;
        }

        private static boolean isDigit(byte b) {
            return b >= '0' && b <= '9';
        }
    }
}
