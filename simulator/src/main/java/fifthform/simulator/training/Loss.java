package fifthform.simulator.training;

import fifthform.curves.check.Require;
import java.util.Arrays;

/**
 * What is to become small. For each step that counts, the pinball loss of the five points, both turning points; beside
 * it, small and for all steps alike, the cross-entropy of the place and Huber's loss of the bulk.
 *
 * <p>Pinball loss: R. Koenker, G. Bassett, Econometrica 46 (1978) 33; Huber's: Ann. Math. Statist. 35 (1964) 73; both from
 * memory.
 */
final class Loss {
    static final float[] SHARES = {0.05f, 0.25f, 0.5f, 0.75f, 0.95f};
    static final int POINTS = SHARES.length;
    static final int LATER = POINTS;
    static final int PLACE = 2 * POINTS;
    static final int PLACES = 3;
    static final int BULK = PLACE + PLACES;

    /** Where Huber's loss turns from a square to a line. */
    private static final float BULK_BEND_KELVIN = 0.5f;

    private final float perWeight;
    private final float perPlace;
    private final float perBulk;

    /**
     * @param weightPerSession weight of a usual session, so that the turning points' loss is about that of one step
     * @param stepsPerSession steps of a usual session
     * @param placeShare how much the place counts
     * @param bulkShare how much the bulk counts
     */
    Loss(double weightPerSession, double stepsPerSession, double placeShare, double bulkShare) {
        Require.within(weightPerSession, Double.MIN_NORMAL, 1e12, "weightPerSession");
        Require.within(stepsPerSession, 1, 1e9, "stepsPerSession");
        perWeight = (float) (1 / weightPerSession);
        perPlace = (float) (placeShare / stepsPerSession);
        perBulk = (float) (bulkShare / stepsPerSession);
    }

    /**
     * The loss of a whole session.
     *
     * @param answers a row of {@link Parameters#OUTPUTS} numbers for each step
     * @param slope is overwritten with the loss's slope along the answers
     */
    double of(Session session, float[][] answers, float[][] slope) {
        double sum = 0;
        for (int t = 0; t < session.steps; t++) {
            Arrays.fill(slope[t], 0);
            float weight = session.weight[t] * perWeight;
            if (weight > 0) {
                sum += points(answers[t], 0, session.turn[t], weight, slope[t]);
                sum += points(answers[t], LATER, session.turnLater[t], weight, slope[t]);
            }
            if (session.place[t] != Session.NONE) sum += place(answers[t], session.place[t], slope[t]);
            if (!Float.isNaN(session.bulk[t])) sum += bulk(answers[t], session.bulk[t], slope[t]);
        }
        return sum;
    }

    /** Half the mean over the points, so that the two turning points together count as one. */
    private static double points(float[] answer, int from, float truth, float weight, float[] slope) {
        if (Float.isNaN(truth)) return 0;
        float each = weight / (2 * POINTS);
        for (int q = 0; q < POINTS; q++) {
            float up = answer[from + q] < truth ? -SHARES[q] : answer[from + q] > truth ? 1 - SHARES[q] : 0;
            slope[from + q] = each * up;
        }
        return weight / 2 * pinball(answer, from, truth);
    }

    /** Mean pinball loss of the five points that begin at {@code from}, K. */
    static double pinball(float[] answer, int from, float truth) {
        double sum = 0;
        for (int q = 0; q < POINTS; q++) {
            double below = truth - answer[from + q];
            sum += below > 0 ? SHARES[q] * below : (SHARES[q] - 1) * below;
        }
        return sum / POINTS;
    }

    private double place(float[] answer, int truth, float[] slope) {
        float most = Math.max(answer[PLACE], Math.max(answer[PLACE + 1], answer[PLACE + 2]));
        double all = 0;
        for (int p = 0; p < PLACES; p++) all += StrictMath.exp(answer[PLACE + p] - most);
        for (int p = 0; p < PLACES; p++) {
            double share = StrictMath.exp(answer[PLACE + p] - most) / all;
            slope[PLACE + p] = perPlace * (float) (p == truth ? share - 1 : share);
        }
        return perPlace * (StrictMath.log(all) - (answer[PLACE + truth] - most));
    }

    private double bulk(float[] answer, float truth, float[] slope) {
        float error = answer[BULK] - truth;
        float bent = Math.max(-BULK_BEND_KELVIN, Math.min(BULK_BEND_KELVIN, error));
        slope[BULK] = perBulk * bent;
        return perBulk * bent * (error - bent / 2);
    }
}
