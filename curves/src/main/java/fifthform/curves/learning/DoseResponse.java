package fifthform.curves.learning;

import java.util.List;

/**
 * A monotone dose-response with lapses, its posterior on a grid.
 *
 * <p>{@code P(temper lost | dose) = a + (1 − a − b) / (1 + e^(−(dose − limit)/s))}: {@code a} is lost at any dose (too few
 * crystals all the same, a wet bowl), {@code b} survives any. What looks say of a batch is weighed by {@link Outcome}. The
 * form is the psychometric function with guess and lapse rates (Wichmann and Hill 2001, from memory).
 *
 * <p>Before any batch: limit normal about the published one; {@code ln s} normal; {@code a} and {@code b} small. The spread
 * of the limit holds what differs between kitchens: a probe (±0.5 K), the place that is hotter than the tip, and seed,
 * where a factor of 2 moves the limit by some tenths of a kelvin. It is kept wider than we believe these are, so that a
 * kitchen that is far off is still found.
 */
final class DoseResponse {
    private static final double LIMIT_SPREAD_KELVIN = 1.2;

    private static final double GRID_KELVIN = 0.05;
    private static final double GRID_BELOW_KELVIN = 4.0;
    private static final int LIMITS = 1 + (int) (2 * GRID_BELOW_KELVIN / GRID_KELVIN);

    /** Slopes of the logistic, K: ln of them a step of 0.4 apart. From 25 to 75 % are 2.2 times as many kelvins. */
    private static final double[] SLOPES_KELVIN = {0.08, 0.12, 0.18, 0.27, 0.40, 0.60};

    private static final double SLOPE_MIDDLE_KELVIN = 0.22;
    private static final double SLOPE_LOG_SPREAD = 0.6;

    /** Lost at any dose, with what each is worth beforehand. Own choice: about 1 batch in 12, seldom 1 in 3. */
    private static final double[] LOST_ANYHOW = {0.01, 0.04, 0.08, 0.14, 0.22, 0.34};

    private static final double[] LOST_ANYHOW_WORTH = {0.25, 0.28, 0.2, 0.14, 0.09, 0.04};

    /** Kept at any dose. Own choice. */
    private static final double[] KEPT_ANYHOW = {0.01, 0.06, 0.15};

    private static final double[] KEPT_ANYHOW_WORTH = {0.55, 0.32, 0.13};

    private final double publishedCelsius;
    private final double[] belief;

    DoseResponse(double publishedCelsius, List<TriedBatch> tried) {
        this.publishedCelsius = publishedCelsius;
        this.belief = new double[LIMITS];
        // Only their ratio counts; the greater of the two as 1 keeps the product of many batches away from zero.
        double[] ifLost = new double[tried.size()];
        double[] ifKept = new double[tried.size()];
        for (int n = 0; n < tried.size(); n++) {
            Outcome outcome = tried.get(n).outcome();
            double most = Math.max(outcome.ifLost(), outcome.ifKept());
            ifLost[n] = outcome.ifLost() / most;
            ifKept[n] = outcome.ifKept() / most;
        }
        double[] doses = tried.stream().mapToDouble(TriedBatch::doseCelsius).toArray();
        double sum = 0;
        for (int i = 0; i < LIMITS; i++) {
            belief[i] = before(i) * likelihood(limitCelsius(i), doses, ifLost, ifKept);
            sum += belief[i];
        }
        for (int i = 0; i < LIMITS; i++) belief[i] /= sum;
    }

    Band band() {
        return new Band(quantile(0.05), quantile(0.5), quantile(0.95));
    }

    /** The limit below which this share of the belief lies, °C, straight within a cell of the grid. */
    private double quantile(double share) {
        double below = 0;
        for (int i = 0; i < LIMITS; i++) {
            if (below + belief[i] >= share) {
                double within = (share - below) / belief[i];
                return limitCelsius(i) + GRID_KELVIN * (within - 0.5);
            }
            below += belief[i];
        }
        return limitCelsius(LIMITS - 1);
    }

    private double limitCelsius(int i) {
        return publishedCelsius - GRID_BELOW_KELVIN + i * GRID_KELVIN;
    }

    private double before(int i) {
        double away = (limitCelsius(i) - publishedCelsius) / LIMIT_SPREAD_KELVIN;
        return StrictMath.exp(-away * away / 2);
    }

    /** Of all looks for this limit, slope and lapses weighed by what they are worth beforehand. */
    private static double likelihood(double limitCelsius, double[] doses, double[] ifLost, double[] ifKept) {
        double all = 0;
        double[] harmed = new double[doses.length];
        for (double slope : SLOPES_KELVIN) {
            double away = StrictMath.log(slope / SLOPE_MIDDLE_KELVIN) / SLOPE_LOG_SPREAD;
            double worth = StrictMath.exp(-away * away / 2);
            for (int n = 0; n < doses.length; n++) {
                harmed[n] = 1 / (1 + StrictMath.exp(-(doses[n] - limitCelsius) / slope));
            }
            for (int a = 0; a < LOST_ANYHOW.length; a++) {
                for (int b = 0; b < KEPT_ANYHOW.length; b++) {
                    double product = worth * LOST_ANYHOW_WORTH[a] * KEPT_ANYHOW_WORTH[b];
                    for (int n = 0; n < doses.length; n++) {
                        double lost = LOST_ANYHOW[a] + (1 - LOST_ANYHOW[a] - KEPT_ANYHOW[b]) * harmed[n];
                        product *= lost * ifLost[n] + (1 - lost) * ifKept[n];
                    }
                    all += product;
                }
            }
        }
        return all;
    }
}
