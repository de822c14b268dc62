package fifthform.curves.crystal;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/** The same equations by another solver: Dormand and Prince 8(5,3) with adaptive steps at 1e-10 (Commons Math). */
final class HighOrder {
    private HighOrder() {}

    /** From corner to corner, since no high order survives a bend of the temperature. */
    static Crystals run(Kinetics kinetics, Programme programme, Crystals start, double shear) {
        double[] y = {start.formTwo(), start.formFour(), start.formFive(), start.formSix(), start.seedMass()};
        for (int i = 1; i < programme.minutes().length; i++) {
            double from = 60 * programme.minutes()[i - 1];
            double to = 60 * programme.minutes()[i];
            DormandPrince853Integrator solver = new DormandPrince853Integrator(1e-6, 5, 1e-13, 1e-10);
            solver.integrate(equations(kinetics, programme, shear), from, y, to, y);
            for (int k = 0; k < 5; k++) y[k] = Math.max(0, y[k]);
        }
        return crystals(y);
    }

    private static FirstOrderDifferentialEquations equations(Kinetics kinetics, Programme programme, double shear) {
        return new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return 5;
            }

            @Override
            public void computeDerivatives(double seconds, double[] y, double[] dot) {
                Rates r = kinetics.rates(crystals(y), programme.celsiusAt(seconds / 60), shear);
                dot[0] = r.formTwo();
                dot[1] = r.formFour();
                dot[2] = r.formFive();
                dot[3] = r.formSix();
                dot[4] = r.seedMass();
            }
        };
    }

    /** A solver's trial may lie a hair below nothing. */
    private static Crystals crystals(double[] y) {
        return new Crystals(
                Math.max(0, y[0]), Math.max(0, y[1]), Math.max(0, y[2]), Math.max(0, y[3]), Math.max(0, y[4]));
    }
}
