package fifthform.simulator.bowl;

import static fifthform.simulator.bowl.Part.DIMENSION;

/**
 * One step of the two-stage linearly implicit method ROS2, {@code γ = 1 − 1/√2}: second order whatever approximation of
 * the Jacobian is used, and damping without limit whatever is too quick for the step. Source: Verwer, Spee, Blom and
 * Hundsdorfer, SIAM J. Sci. Comput. 20 (1999) 1456; from memory, tested against an explicit method with tiny steps.
 *
 * <p>Implicit is the row from bath to surface, where a film of a fifth of a millimetre answers in a tenth of a second; the
 * rest hangs on it loosely and is explicit. The Jacobian moves heat between neighbours only, so the sum of all heats is
 * kept to rounding. Commons Math has no method for stiff equations, and its explicit ones need ten times the work here.
 */
final class ImplicitStep {
    private static final double GAMMA = 1 - Math.sqrt(0.5);

    private final double[] first = new double[DIMENSION];
    private final double[] second = new double[DIMENSION];
    private final double[] between = new double[DIMENSION];
    private final double[] below = new double[6];
    private final double[] above = new double[6];
    private final double[] pivot = new double[6];

    /** Goes on in place. */
    void step(HeatFlow flow, double[] heat, double seconds) {
        eliminate(flow, GAMMA * seconds);
        flow.rates(heat, first);
        solve(flow, first);
        for (int i = 0; i < DIMENSION; i++) between[i] = heat[i] + seconds * first[i];
        flow.lookAhead(between, seconds);
        flow.rates(between, second);
        for (int i = 0; i < DIMENSION; i++) second[i] -= 2 * first[i];
        solve(flow, second);
        for (int i = 0; i < DIMENSION; i++) heat[i] += seconds * (1.5 * first[i] + 0.5 * second[i]);
    }

    /** Forward elimination of {@code I − γ h A} (Thomas), the same for both stages. */
    private void eliminate(HeatFlow flow, double gammaSeconds) {
        int n = flow.chained();
        double[] links = flow.links();
        for (int i = 0; i < n; i++) {
            double left = i == 0 ? 0 : gammaSeconds * links[i - 1];
            double right = i == n - 1 ? 0 : gammaSeconds * links[i];
            double own = flow.capacity(flow.chain()[i]);
            above[i] = i == n - 1 ? 0 : -right / flow.capacity(flow.chain()[i + 1]);
            double diagonal = 1 + (left + right) / own;
            if (i == 0) {
                below[i] = 0;
                pivot[i] = diagonal;
            } else {
                below[i] = -left / flow.capacity(flow.chain()[i - 1]) / pivot[i - 1];
                pivot[i] = diagonal - below[i] * above[i - 1];
            }
        }
    }

    private void solve(HeatFlow flow, double[] side) {
        int n = flow.chained();
        int[] chain = flow.chain();
        for (int i = 1; i < n; i++) side[chain[i]] -= below[i] * side[chain[i - 1]];
        side[chain[n - 1]] /= pivot[n - 1];
        for (int i = n - 2; i >= 0; i--) side[chain[i]] = (side[chain[i]] - above[i] * side[chain[i + 1]]) / pivot[i];
    }
}
