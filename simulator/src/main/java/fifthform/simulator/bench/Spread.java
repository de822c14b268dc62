package fifthform.simulator.bench;

import fifthform.curves.check.Require;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;

/**
 * What a number was in several batches: its mean, and where it lay in nine of ten.
 *
 * @param count how many numbers
 * @param mean their mean; 0 where there were none
 * @param interval of the mean at {@link Interval#LEVEL}; empty for fewer than two numbers
 * @param low a twentieth lay below; the mean for fewer than two numbers
 * @param high a twentieth lay above; the mean for fewer than two numbers
 */
public record Spread(long count, double mean, Optional<Interval> interval, double low, double high) {
    private static final double LOW_PERCENT = 5;
    private static final double HIGH_PERCENT = 95;

    public Spread {
        Require.within(count, 0, Long.MAX_VALUE, "count");
        Require.finite(mean, "mean");
        Objects.requireNonNull(interval, "interval");
        Require.finite(low, "low");
        Require.finite(high, "high");
    }

    static Spread of(List<Double> numbers) {
        if (numbers.isEmpty()) return new Spread(0, 0, Optional.empty(), 0, 0);
        DescriptiveStatistics all = new DescriptiveStatistics();
        numbers.forEach(all::addValue);
        if (numbers.size() == 1) return new Spread(1, all.getMean(), Optional.empty(), all.getMean(), all.getMean());
        return new Spread(
                all.getN(),
                all.getMean(),
                Optional.of(Interval.ofMean(all.getN(), all.getMean(), all.getStandardDeviation())),
                all.getPercentile(LOW_PERCENT),
                all.getPercentile(HIGH_PERCENT));
    }
}
