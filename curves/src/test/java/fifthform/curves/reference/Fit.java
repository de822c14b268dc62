package fifthform.curves.reference;

import org.apache.commons.math3.analysis.MultivariateMatrixFunction;
import org.apache.commons.math3.analysis.MultivariateVectorFunction;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;

/** Least squares by a general library (Commons Math), so that what is tested does not judge itself. */
public final class Fit {
    /** A curve with some parameters. */
    public interface Curve {
        double at(double seconds, double[] parameters);
    }

    private Fit() {}

    /** The best parameters and what they leave; slopes by central differences. */
    public static Optimum of(Curve curve, double[] seconds, double[] values, double... guess) {
        MultivariateVectorFunction model = parameters -> along(curve, seconds, parameters);
        MultivariateMatrixFunction slopes = parameters -> {
            double[][] jacobian = new double[seconds.length][parameters.length];
            for (int p = 0; p < parameters.length; p++) {
                double step = 1e-6 * Math.max(1, Math.abs(parameters[p]));
                double[] more = parameters.clone();
                double[] less = parameters.clone();
                more[p] += step;
                less[p] -= step;
                for (int i = 0; i < seconds.length; i++) {
                    jacobian[i][p] = (curve.at(seconds[i], more) - curve.at(seconds[i], less)) / (2 * step);
                }
            }
            return jacobian;
        };
        return new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder()
                        .start(guess)
                        .target(values)
                        .model(model, slopes)
                        .maxEvaluations(2000)
                        .maxIterations(2000)
                        .build());
    }

    private static double[] along(Curve curve, double[] seconds, double[] parameters) {
        double[] values = new double[seconds.length];
        for (int i = 0; i < seconds.length; i++) values[i] = curve.at(seconds[i], parameters);
        return values;
    }
}
