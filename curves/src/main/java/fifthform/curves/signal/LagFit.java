package fifthform.curves.signal;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Fits a first-order response to a dip: {@code tip = end − A · exp(−t/τ)}. For each τ the best {@code end} and A follow by
 * linear least squares; τ is then sought where the squares are least. Since any later part of an exponential is one with
 * the same τ, the fit begins where a tenth of the rise is over, and when the hand was how fast matters little.
 *
 * <p>Errors, over 1728 simulated first-order dips of 8.5 to 30 K with τ 1–12 s, 1–10 readings/s, steps of 0.01–0.25 K,
 * noise of 0.03 K and an end that drifts by up to 0.5 K/min ({@code DipTest} prints them): 97 % are measured, with a median
 * error of 1 %, 95 % within 5 %, the worst 10 %; 93 % lie within two of their standard uncertainties. Refused is what is no
 * dip into melted chocolate, is read too seldom for its lag, does not look like one exponential, or would be unsure by more
 * than a fifth.
 *
 * <p>Source of the response: a body small against what it touches (lumped heat balance); of the uncertainty: curvature
 * of the sum of squares around its minimum, as for any one-parameter least-squares fit (from memory).
 */
final class LagFit {
    /** Between air and melted chocolate there are at least so many kelvin. */
    private static final double LEAST_RISE_KELVIN = 8;

    /** Melted chocolate for tempering; what ends elsewhere was dipped into something else, with another lag. */
    private static final double COOLEST_END_CELSIUS = 27;

    private static final double HOTTEST_END_CELSIUS = 56;

    /** Bounds of what a tip can be: bare junctions are quicker, but then the lag is of no account. */
    private static final double SHORTEST_SECONDS = 0.3;

    private static final double LONGEST_SECONDS = 20;
    private static final int GRID = 48;
    private static final int BISECTIONS = 40;
    private static final int LEAST_POINTS = 6;
    private static final int LEAST_ON_THE_WAY = 3;

    /** Scatter around the fit of more than this share of the rise, noise and all, is too much to fit anything. */
    private static final double POOR_SHARE = 0.04;

    /** What is left of the scatter once the jumps between neighbours are taken off is shape: no first-order response. */
    private static final double MISSHAPEN_SHARE = 0.015;

    private static final double UNSURE_SHARE = 0.2;

    /**
     * The chocolate itself may drift by ±0.5 K/min meanwhile (rectangular), which the fit takes for a part of the dip: it
     * shifts τ by 5.7 to 6.1 times drift × τ² / rise (computed without noise for τ 1–12 s, rises of 8.5 and 30 K).
     */
    private static final double DRIFT_KELVIN_PER_SECOND = 0.5 / 60;

    private static final double DRIFT_COUNTS = 6;

    private final double[] seconds;
    private final double[] celsius;

    private LagFit(double[] seconds, double[] celsius) {
        this.seconds = seconds;
        this.celsius = celsius;
    }

    /**
     * The lag that a dip shows; empty where it shows none that could be trusted.
     *
     * @param points the readings from before the rise until it is over, oldest first
     * @param stepKelvin the adapter's step, K; 0 where unknown
     */
    static Optional<Lag> of(List<Dip.Point> points, double stepKelvin) {
        double start = points.get(0).celsius();
        double end = points.get(points.size() - 1).celsius();
        double rise = end - start;
        boolean melted = end >= COOLEST_END_CELSIUS && end <= HOTTEST_END_CELSIUS;
        if (rise < LEAST_RISE_KELVIN || !melted) return Optional.empty();
        int from = 0;
        while (points.get(from).celsius() - start < 0.1 * rise) from++;
        List<Dip.Point> used = points.subList(from, points.size());
        long onTheWay = used.stream()
                .filter(p -> end - p.celsius() > 0.03 * rise + stepKelvin)
                .count();
        if (used.size() < LEAST_POINTS || onTheWay < LEAST_ON_THE_WAY) return Optional.empty();
        Instant zero = used.get(0).at();
        LagFit fit = new LagFit(
                used.stream().mapToDouble(p -> Track.seconds(zero, p.at())).toArray(),
                used.stream().mapToDouble(Dip.Point::celsius).toArray());
        return fit.lag(used.get(used.size() - 1).at(), rise, stepKelvin);
    }

    private Optional<Lag> lag(Instant at, double rise, double stepKelvin) {
        double tau = best();
        boolean inside = tau > 1.05 * SHORTEST_SECONDS && tau < 0.95 * LONGEST_SECONDS;
        double least = squares(tau);
        double scatter = Math.sqrt(least / (seconds.length - 3));
        double rounding = stepKelvin / Math.sqrt(12);
        double rough = roughness(tau);
        double shape = Math.sqrt(Math.max(0, least / seconds.length - rough * rough));
        boolean poor = scatter > POOR_SHARE * rise + rounding || shape > MISSHAPEN_SHARE * rise + rounding;
        if (!inside || poor) return Optional.empty();
        double h = 0.05 * tau;
        double curvature = (squares(tau + h) - 2 * least + squares(tau - h)) / (h * h);
        // Readings that repeat their neighbour because of the adapter's step tell nothing new.
        double worth = (double) seconds.length / Math.max(3, changes());
        double variance = Math.max(scatter * scatter, rounding * rounding) * worth;
        double drift = DRIFT_COUNTS * DRIFT_KELVIN_PER_SECOND / Math.sqrt(3) * tau * tau / rise;
        double sigma = Math.sqrt(2 * variance / Math.max(curvature, Double.MIN_NORMAL) + drift * drift);
        return sigma <= UNSURE_SHARE * tau ? Optional.of(new Lag(at, tau, sigma)) : Optional.empty();
    }

    private int changes() {
        int changes = 0;
        for (int i = 1; i < celsius.length; i++) if (celsius[i] != celsius[i - 1]) changes++;
        return changes;
    }

    /** The τ with the least squares: a grid finds the valley, a golden section its bottom. */
    private double best() {
        double ratio = StrictMath.exp(StrictMath.log(LONGEST_SECONDS / SHORTEST_SECONDS) / GRID);
        double tau = SHORTEST_SECONDS;
        double bestTau = tau;
        double least = Double.MAX_VALUE;
        for (int i = 0; i <= GRID; i++, tau *= ratio) {
            double here = squares(tau);
            if (here < least) {
                least = here;
                bestTau = tau;
            }
        }
        return bottom(bestTau / ratio, bestTau * ratio);
    }

    private double bottom(double fromTau, double toTau) {
        double golden = (Math.sqrt(5) - 1) / 2;
        double low = fromTau;
        double high = toTau;
        for (int i = 0; i < BISECTIONS; i++) {
            double left = high - golden * (high - low);
            double right = low + golden * (high - low);
            if (squares(left) < squares(right)) high = right;
            else low = left;
        }
        return (low + high) / 2;
    }

    /** Sum of squares around the best exponential of this τ, K². */
    private double squares(double tau) {
        Line line = line(tau);
        double sum = 0;
        for (int i = 0; i < seconds.length; i++) sum += square(residual(line, tau, i));
        return sum;
    }

    /** Scatter as neighbours show it: half the mean square of successive differences (von Neumann), K. */
    private double roughness(double tau) {
        Line line = line(tau);
        double sum = 0;
        for (int i = 1; i < seconds.length; i++) sum += square(residual(line, tau, i) - residual(line, tau, i - 1));
        return Math.sqrt(sum / 2 / (seconds.length - 1));
    }

    private record Line(double end, double amplitude) {}

    private Line line(double tau) {
        int n = seconds.length;
        double sumX = 0;
        double sumY = 0;
        double sumXx = 0;
        double sumXy = 0;
        for (int i = 0; i < n; i++) {
            double x = StrictMath.exp(-seconds[i] / tau);
            double y = celsius[i] - celsius[n - 1];
            sumX += x;
            sumY += y;
            sumXx += x * x;
            sumXy += x * y;
        }
        double spread = sumXx - sumX * sumX / n;
        double slope = spread <= 0 ? 0 : (sumXy - sumX * sumY / n) / spread;
        return new Line(celsius[n - 1] + (sumY - slope * sumX) / n, slope);
    }

    private double residual(Line line, double tau, int i) {
        return celsius[i] - line.end() - line.amplitude() * StrictMath.exp(-seconds[i] / tau);
    }

    private static double square(double value) {
        return value * value;
    }
}
