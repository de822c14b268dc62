package fifthform.simulator.rivals;

/**
 * A plain Kalman filter with fixed parameters, of four states: tip, chocolate, wall and the heat that flows into the wall.
 *
 * <pre>
 * dp/dt = (C − p)/τp    dC/dt = (W − C)/τc    dW/dt = q − (W − C)/(r τc)    dq/dt = noise
 * </pre>
 *
 * r is the wall's heat capacity over the chocolate's. If lifted q is nothing, and wall and chocolate meet at
 * {@code C + (W − C) r/(1 + r)}. Source of the filter: Kalman, J. Basic Engineering 82 (1960) 35; from memory.
 */
final class KalmanRule implements Rule {
    private static final int N = 4;
    private static final double TIP_SECONDS = 4;
    private static final double READING_VARIANCE = 0.06 * 0.06;
    private static final double LONGEST_STEP_SECONDS = 5;

    private final double chocolateSeconds;
    private final double wallRatio;
    private final double heatNoise;
    private final double atSeconds;
    private final double[] x;
    private final double[][] p;

    /**
     * Nothing read yet.
     *
     * @param chocolateSeconds τc, s
     * @param wallRatio r
     * @param heatNoise how fast q may change, K/s per √s
     */
    KalmanRule(double chocolateSeconds, double wallRatio, double heatNoise) {
        this(chocolateSeconds, wallRatio, heatNoise, Double.NaN, new double[0], new double[0][0]);
    }

    private KalmanRule(
            double chocolateSeconds, double wallRatio, double heatNoise, double atSeconds, double[] x, double[][] p) {
        this.chocolateSeconds = chocolateSeconds;
        this.wallRatio = wallRatio;
        this.heatNoise = heatNoise;
        this.atSeconds = atSeconds;
        this.x = x;
        this.p = p;
    }

    @Override
    public KalmanRule after(double nowSeconds, double celsius) {
        if (x.length == 0) return with(nowSeconds, new double[] {celsius, celsius, celsius, 0}, begin());
        double dt = Math.min(LONGEST_STEP_SECONDS, nowSeconds - atSeconds);
        double[][] f = transition(dt);
        double[] xs = times(f, x);
        double[][] ps = times(times(f, p), transposed(f));
        ps[1][1] += 1e-5 * dt;
        ps[2][2] += 1e-4 * dt;
        ps[3][3] += heatNoise * heatNoise * dt;
        double s = ps[0][0] + READING_VARIANCE;
        double miss = celsius - xs[0];
        double[] gain = new double[N];
        for (int i = 0; i < N; i++) gain[i] = ps[i][0] / s;
        double[][] after = new double[N][N];
        for (int i = 0; i < N; i++) {
            xs[i] += gain[i] * miss;
            for (int j = 0; j < N; j++) after[i][j] = ps[i][j] - gain[i] * ps[0][j];
        }
        return with(nowSeconds, xs, after);
    }

    private KalmanRule with(double nowSeconds, double[] state, double[][] covariance) {
        return new KalmanRule(chocolateSeconds, wallRatio, heatNoise, nowSeconds, state, covariance);
    }

    private static double[][] begin() {
        return new double[][] {{0.01, 0, 0, 0}, {0, 0.1, 0, 0}, {0, 0, 1, 0}, {0, 0, 0, 0.01}};
    }

    private double[][] transition(double dt) {
        double tip = dt / TIP_SECONDS;
        double bulk = dt / chocolateSeconds;
        double wall = dt / (wallRatio * chocolateSeconds);
        return new double[][] {
            {1 - Math.min(1, tip), Math.min(1, tip), 0, 0},
            {0, 1 - bulk, bulk, 0},
            {0, Math.min(0.9, wall), 1 - Math.min(0.9, wall), dt},
            {0, 0, 0, 1}
        };
    }

    private static double[] times(double[][] m, double[] v) {
        double[] out = new double[N];
        for (int i = 0; i < N; i++) for (int j = 0; j < N; j++) out[i] += m[i][j] * v[j];
        return out;
    }

    private static double[][] times(double[][] a, double[][] b) {
        double[][] out = new double[N][N];
        for (int i = 0; i < N; i++) {
            for (int k = 0; k < N; k++) for (int j = 0; j < N; j++) out[i][j] += a[i][k] * b[k][j];
        }
        return out;
    }

    private static double[][] transposed(double[][] m) {
        double[][] out = new double[N][];
        for (int i = 0; i < N; i++) {
            out[i] = new double[N];
            for (int j = 0; j < N; j++) out[i][j] = m[j][i];
        }
        return out;
    }

    @Override
    public double turnCelsius() {
        if (x.length == 0) return Double.NaN;
        return Math.max(x[1], x[1] + (x[2] - x[1]) * wallRatio / (1 + wallRatio));
    }

    @Override
    public double kelvinPerSecond() {
        return x.length == 0 ? 0 : (x[2] - x[1]) / chocolateSeconds;
    }
}
