package fifthform.probe.protocol;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** The first columns of lines that came one after the other, and how they grow. */
record FirstColumn(List<Line> lines) {
    static FirstColumn of(List<Line> lines) {
        return new FirstColumn(List.copyOf(lines));
    }

    boolean hasGaps() {
        return lines.stream().anyMatch(line -> first(line).isEmpty());
    }

    double lowest() {
        return values().min().orElse(Double.NaN);
    }

    double highest() {
        return values().max().orElse(Double.NaN);
    }

    boolean falls() {
        return steps().anyMatch(step -> step < 0);
    }

    /** Never falls, and is higher at the end than at the beginning. */
    boolean grows() {
        return !falls() && steps().sum() > 0;
    }

    boolean growsEvenly(double fraction) {
        double most = steps().max().orElse(0);
        double least = steps().min().orElse(0);
        return least > 0 && most - least <= fraction * most;
    }

    /** In exactly equal steps, each of two last digits or more. */
    boolean growsLikeAClock() {
        double lastDigit = first(lines.get(0)).map(Written::step).orElse(Double.NaN);
        return growsEvenly(1e-9) && steps().min().orElse(0) >= 1.5 * lastDigit;
    }

    /** Whole numbers beside numbers with decimals, on every line. */
    boolean isWholeBesideDecimals() {
        return lines.stream()
                .allMatch(line -> first(line).filter(Written::isWhole).isPresent()
                        && line.fields().stream()
                                .skip(1)
                                .flatMap(field -> field.number().stream())
                                .noneMatch(Written::isWhole));
    }

    private DoubleStream steps() {
        double[] values = values().toArray();
        return IntStream.range(1, values.length).mapToDouble(i -> values[i] - values[i - 1]);
    }

    private DoubleStream values() {
        return lines.stream().flatMap(line -> first(line).stream()).mapToDouble(Written::value);
    }

    private static Optional<Written> first(Line line) {
        return line.fields().get(0).number();
    }
}
