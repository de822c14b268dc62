package fifthform.monitor.view;

import fifthform.monitor.model.Pieces;
import java.util.LinkedList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Breaks words into lines: where the sense breaks, if that costs no size of letters worth naming. */
final class Lines {
    /** What stands between two things said side by side; at the end of a line the break says the same. */
    private static final String DOT = " ·";

    /** How much wider than it must be a line may become, in parts, for a break where the sense breaks. */
    private static final double NEARLY = 1.06;

    private final List<String> pieces;
    private final double[] from;
    private final double[] to;

    /** How little the sense breaks after a piece. */
    private final int[] poor;

    /** Widths are those of the pieces added up: measuring every possible line would cost more than drawing it. */
    private Lines(String words, ToDoubleFunction<String> width) {
        pieces = Pieces.of(words);
        from = new double[pieces.size()];
        to = new double[pieces.size()];
        poor = new int[pieces.size()];
        double space = width.applyAsDouble("· ·") - width.applyAsDouble("··");
        double at = 0;
        for (int i = 0; i < pieces.size(); i++) {
            from[i] = at;
            to[i] = at + width.applyAsDouble(withoutDot(pieces.get(i)));
            poor[i] = poor(pieces.get(i));
            at += width.applyAsDouble(pieces.get(i)) + space;
        }
    }

    /**
     * At most {@code most} lines, broken where the sense breaks as far as can be, and then as narrow as can be.
     *
     * @param free width up to which a line costs nothing; a wider one is as narrow as it can be, or nearly
     */
    static List<String> broken(String words, int most, ToDoubleFunction<String> width, double free) {
        if (most <= 1 || words.isBlank() || !words.contains(" ")) return List.of(words);
        Lines lines = new Lines(words, width);
        double least = lines.best(most, Double.POSITIVE_INFINITY, Worth.WIDTH).widest();
        double limit = least <= free ? free : least * NEARLY;
        return lines.written(lines.best(most, limit, Worth.SENSE));
    }

    /** The width that so many lines need at least. */
    static double narrowest(String words, int most, ToDoubleFunction<String> width) {
        if (most <= 1 || words.isBlank() || !words.contains(" ")) return width.applyAsDouble(words);
        return new Lines(words, width)
                .best(most, Double.POSITIVE_INFINITY, Worth.WIDTH)
                .widest();
    }

    /** Best between two things said side by side or two sentences, then within one where it halts. */
    private static int poor(String piece) {
        if (piece.endsWith(DOT) || piece.endsWith(".")) return 0;
        return piece.matches(".*[,;:]") ? 1 : 2;
    }

    /** What comes first where two ways of breaking differ. */
    private enum Worth {
        WIDTH,
        SENSE
    }

    /**
     * A way of breaking the pieces up to some end.
     *
     * @param before the way of all lines but the last
     * @param begin the piece with which the last line begins
     * @param poor how poor its breaks are, added up
     */
    private record Way(Optional<Way> before, int begin, double widest, int poor) {
        boolean isBetterThan(Way other, Worth first) {
            if (first == Worth.SENSE && poor != other.poor) return poor < other.poor;
            return widest < other.widest;
        }
    }

    /** The best way by dynamic programming: the best of the pieces so far in so many lines, one line after another. */
    private Way best(int most, double limit, Worth first) {
        int count = pieces.size();
        Way[] before = new Way[count + 1];
        for (int end = 1; end <= count; end++) before[end] = new Way(Optional.empty(), 0, width(0, end), 0);
        Way best = before[count];
        for (int lines = 2; lines <= Math.min(most, count); lines++) {
            Way[] now = new Way[count + 1];
            for (int end = lines; end <= count; end++)
                for (int begin = lines - 1; begin < end; begin++) {
                    if (before[begin] == null || before[begin].widest > limit) continue;
                    Way way = longer(before[begin], begin, end);
                    if (way.widest > limit) continue;
                    if (now[end] == null || way.isBetterThan(now[end], first)) now[end] = way;
                }
            Way whole = now[count];
            if (whole != null && (best.widest > limit || whole.isBetterThan(best, first))) best = whole;
            before = now;
        }
        return best;
    }

    private Way longer(Way way, int begin, int end) {
        double widest = Math.max(way.widest, width(begin, end));
        return new Way(Optional.of(way), begin, widest, way.poor + poor[begin - 1]);
    }

    private double width(int begin, int end) {
        return to[end - 1] - from[begin];
    }

    private List<String> written(Way way) {
        LinkedList<String> lines = new LinkedList<>();
        int end = pieces.size();
        for (Optional<Way> at = Optional.of(way); at.isPresent(); at = at.get().before) {
            String line = String.join(" ", pieces.subList(at.get().begin, end));
            lines.addFirst(end == pieces.size() ? line : withoutDot(line));
            end = at.get().begin;
        }
        return lines;
    }

    private static String withoutDot(String words) {
        return words.endsWith(DOT) ? words.substring(0, words.length() - DOT.length()) : words;
    }
}
