package fifthform.simulator.rivals;

import java.util.Arrays;
import java.util.Collection;
import java.util.SplittableRandom;

/**
 * A figure that was reached.
 *
 * @param value the figure; not a number where there was nothing to count
 * @param standardError its standard error
 * @param count of how many
 */
record Reached(double value, double standardError, long count) {
    private static final int RESAMPLES = 200;
    private static final long SEED = 5;

    /** The mean. */
    static Reached mean(Collection<Double> numbers) {
        double[] all = numbers.stream().mapToDouble(Double::doubleValue).toArray();
        double mean = Arrays.stream(all).average().orElse(Double.NaN);
        double squares = Arrays.stream(all).map(x -> (x - mean) * (x - mean)).sum();
        double error = all.length < 2 ? Double.NaN : Math.sqrt(squares / (all.length - 1.0) / all.length);
        return new Reached(mean, error, all.length);
    }

    /** How many of them are so, in percent; the standard error that of a binomial share. */
    static Reached percent(Collection<Boolean> are) {
        long hits = are.stream().filter(b -> b).count();
        double share = hits / (double) are.size();
        return new Reached(100 * share, 100 * Math.sqrt(share * (1 - share) / are.size()), are.size());
    }

    /** So many in so many units of time; the standard error by counting events that come at any moment alike. */
    static Reached rate(long events, double units) {
        return new Reached(events / units, Math.sqrt(Math.max(1, events)) / units, events);
    }

    /**
     * The point below which so many of a hundred lie; its standard error by drawing again with replacement. Source: B.
     * Efron, Annals of Statistics 7 (1979) 1; from memory.
     */
    static Reached percentile(Collection<Double> numbers, double percent) {
        double[] all = numbers.stream().mapToDouble(Double::doubleValue).toArray();
        if (all.length == 0) return new Reached(Double.NaN, Double.NaN, 0);
        SplittableRandom random = new SplittableRandom(SEED);
        double[] points = new double[RESAMPLES];
        for (int i = 0; i < RESAMPLES; i++) {
            points[i] = point(
                    random.ints(all.length, 0, all.length)
                            .mapToDouble(k -> all[k])
                            .toArray(),
                    percent);
        }
        double mean = Arrays.stream(points).average().orElse(Double.NaN);
        double squares = Arrays.stream(points).map(x -> (x - mean) * (x - mean)).sum();
        return new Reached(point(all, percent), Math.sqrt(squares / (RESAMPLES - 1)), all.length);
    }

    private static double point(double[] numbers, double percent) {
        double[] sorted = numbers.clone();
        Arrays.sort(sorted);
        double place = percent / 100 * (sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(sorted.length - 1, below + 1);
        if (sorted[below] == sorted[above]) return sorted[below]; // infinite ones as well
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }
}
