package fifthform.curves.whatif;

import fifthform.curves.whatif.Bodies.Parameter;
import fifthform.curves.whatif.Bodies.Way;
import java.util.Optional;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * The kitchen that follows the readings of a window best, given what is known of kitchens: least squares by Levenberg and
 * Marquardt, and the covariance of its parameters by Laplace's approximation.
 *
 * @param parameters in the order of {@link Parameter}
 * @param covariance of the parameters
 * @param way the fitted curve
 * @param residual what it leaves over at each reading, K
 */
record KitchenFit(double[] parameters, RealMatrix covariance, Way way, double[] residual) {
    /**
     * What a kitchen of two bodies cannot follow stays for about so long, s: readings nearer to each other tell the same
     * twice and count for less. Own choice; residuals of simulated kitchens look like it.
     */
    private static final double SAME_SECONDS = 15;

    /** How far two bodies are from a kitchen anyway, K. */
    private static final double MISFIT_KELVIN = 0.08;

    private static final int MOST_EVALUATIONS = 400;

    private static final double[] NUDGE = new double[Parameter.COUNT];

    static {
        java.util.Arrays.fill(NUDGE, 1e-3);
        NUDGE[Parameter.ENTRY_LATER.ordinal()] = 0.05;
        NUDGE[Parameter.LIFT_LATER.ordinal()] = 0.05;
    }

    /** The fit; empty where none is found. */
    static Optional<KitchenFit> of(Bodies bodies, Window window, Prior prior) {
        double spacing = window.at().length < 2
                ? 1
                : (window.at()[window.at().length - 1] - window.at()[0]) / (window.at().length - 1);
        double sigma = MISFIT_KELVIN * Math.sqrt(Math.max(1, SAME_SECONDS / spacing));
        MultivariateJacobianFunction model = point -> evaluated(bodies, window, prior, sigma, point.toArray());
        int rows = window.at().length + Parameter.COUNT;
        try {
            LeastSquaresOptimizer.Optimum best = new LevenbergMarquardtOptimizer()
                    .optimize(new LeastSquaresBuilder()
                            .start(prior.middle())
                            .model(model)
                            .target(new double[rows])
                            .checkerPair(new org.apache.commons.math3.optim.SimpleVectorValueChecker(1e-6, 1e-6))
                            .maxEvaluations(MOST_EVALUATIONS)
                            .maxIterations(MOST_EVALUATIONS)
                            .build());
            double[] found = best.getPoint().toArray();
            Way way = bodies.through(found, window.course());
            double[] residual = residual(window, way);
            double squares = 0;
            for (double r : residual) squares += r * r;
            double worse = Math.max(1, squares / residual.length / (MISFIT_KELVIN * MISFIT_KELVIN));
            RealMatrix jacobian = best.getJacobian();
            DecompositionSolver solver =
                    new LUDecomposition(jacobian.transpose().multiply(jacobian)).getSolver();
            RealMatrix covariance = solver.getInverse().scalarMultiply(worse);
            return Optional.of(new KitchenFit(found, covariance, way, residual));
        } catch (MathIllegalStateException | MathIllegalArgumentException noFit) {
            return Optional.empty();
        }
    }

    private static Pair<RealVector, RealMatrix> evaluated(
            Bodies bodies, Window window, Prior prior, double sigma, double[] at) {
        double[] middle = scaled(bodies, window, prior, sigma, at);
        double[][] jacobian = new double[middle.length][Parameter.COUNT];
        for (int j = 0; j < Parameter.COUNT; j++) {
            double[] nudged = nudged(at, j);
            double[] there = scaled(bodies, window, prior, sigma, nudged);
            for (int i = 0; i < middle.length; i++) jacobian[i][j] = (there[i] - middle[i]) / NUDGE[j];
        }
        return Pair.create(new ArrayRealVector(middle, false), new Array2DRowRealMatrix(jacobian, false));
    }

    private static double[] scaled(Bodies bodies, Window window, Prior prior, double sigma, double[] p) {
        Way way = bodies.through(p, window.course());
        int n = window.at().length;
        double[] rows = new double[n + Parameter.COUNT];
        for (int i = 0; i < n; i++) rows[i] = (Way.at(way.tip(), window.at()[i]) - window.tip()[i]) / sigma;
        for (int j = 0; j < Parameter.COUNT; j++) rows[n + j] = (p[j] - prior.middle()[j]) / prior.spread()[j];
        return rows;
    }

    private static double[] nudged(double[] p, int which) {
        double[] other = p.clone();
        other[which] += NUDGE[which];
        return other;
    }

    private static double[] residual(Window window, Way way) {
        double[] left = new double[window.at().length];
        for (int i = 0; i < left.length; i++) left[i] = window.tip()[i] - Way.at(way.tip(), window.at()[i]);
        return left;
    }

    double residualKelvin() {
        double squares = 0;
        for (double r : residual) squares += r * r;
        return Math.sqrt(squares / residual.length);
    }

    /** A curve that follows from the parameters. */
    interface Curve {
        double[] of(double[] parameters);
    }

    /** Standard deviation of each value of a curve, by the parameters' covariance. */
    double[] spread(Curve curve) {
        double[] middle = curve.of(parameters);
        double[][] slopes = new double[Parameter.COUNT][];
        for (int j = 0; j < Parameter.COUNT; j++) {
            double[] there = curve.of(nudged(parameters, j));
            slopes[j] = new double[middle.length];
            for (int i = 0; i < middle.length; i++) slopes[j][i] = (there[i] - middle[i]) / NUDGE[j];
        }
        double[] spread = new double[middle.length];
        double[] g = new double[Parameter.COUNT];
        for (int i = 0; i < middle.length; i++) {
            for (int j = 0; j < Parameter.COUNT; j++) g[j] = slopes[j][i];
            RealVector v = new ArrayRealVector(g, false);
            spread[i] = Math.sqrt(Math.max(0, v.dotProduct(covariance.operate(v))));
        }
        return spread;
    }
}
