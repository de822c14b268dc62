package fifthform.simulator.training;

/**
 * Steps down the slope, each weight at its own pace. Source: D. Kingma, J. Ba 2015, arXiv:1412.6980, algorithm 1; weights
 * shrink apart from the slope as in I. Loshchilov, F. Hutter 2019, arXiv:1711.05101; both from memory.
 */
final class Adam {
    private static final double FIRST = 0.9;
    private static final double SECOND = 0.999;
    private static final double LEAST = 1e-8;

    private final Parameters weights;
    private final Parameters mean;
    private final Parameters meanSquare;
    private final double shrink;
    private int step;

    /** @param shrink which share of every weight goes with each step, per unit of pace */
    Adam(Parameters weights, double shrink) {
        this.weights = weights;
        this.mean = Parameters.zeros(weights.shape);
        this.meanSquare = Parameters.zeros(weights.shape);
        this.shrink = shrink;
    }

    /** @param pace about how far a weight goes in this step */
    void step(Parameters slope, double pace) {
        step++;
        double corrected = pace / (1 - StrictMath.pow(FIRST, step));
        double bias = 1 - StrictMath.pow(SECOND, step);
        float keep = (float) (1 - pace * shrink);
        for (int p = 0; p < weights.parts().size(); p++) {
            float[][] w = weights.parts().get(p);
            for (int r = 0; r < w.length; r++) {
                float[] s = slope.parts().get(p)[r];
                float[] m = mean.parts().get(p)[r];
                float[] v = meanSquare.parts().get(p)[r];
                for (int j = 0; j < s.length; j++) {
                    m[j] += (float) (1 - FIRST) * (s[j] - m[j]);
                    v[j] += (float) (1 - SECOND) * (s[j] * s[j] - v[j]);
                    w[r][j] = keep * w[r][j] - (float) (corrected * m[j] / (Math.sqrt(v[j] / bias) + LEAST));
                }
            }
        }
    }
}
