package fifthform.simulator.training;

/**
 * How far the weights go in each step: a straight rise over the first steps, then half a cosine down to a fiftieth.
 *
 * @param most the highest
 * @param rise steps of the rise
 * @param steps in all
 */
record Pace(double most, int rise, int steps) {
    private static final double LAST_SHARE = 0.02;

    /** @param step from 0 on */
    double at(int step) {
        if (step < rise) return most * (step + 1) / rise;
        double gone = Math.min(1, (step - rise) / (double) Math.max(1, steps - rise));
        return most * (LAST_SHARE + (1 - LAST_SHARE) * 0.5 * (1 + StrictMath.cos(StrictMath.PI * gone)));
    }
}
