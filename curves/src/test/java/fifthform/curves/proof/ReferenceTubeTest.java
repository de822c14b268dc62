package fifthform.curves.proof;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.crystal.Fat;
import fifthform.curves.reference.Table;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/**
 * The project's computed table of bends, {@code temper_curve_reference_tube.csv}: made by another solver (LSODA, 1e-7) in
 * another language, read by step 4 of the method on noise-free curves.
 */
class ReferenceTubeTest {
    private static final Table TABLE = Table.read("temper_curve_reference_tube.csv");

    /**
     * The live integrator's quarter seconds are worth up to 0.01 K/min at 2 % seed; the table's last digit is 0.01. The dip
     * shows up to 4 s late.
     */
    @Test
    void bendsLieWhereTheTableHasThem() {
        double[] seeds = TABLE.numbers("seed_V_fraction_of_fat");
        double[] taus = TABLE.numbers("tau_min");
        double[] slopes = TABLE.numbers("slope_K_per_min");
        double[] minutes = TABLE.numbers("t_inflection_min");
        double[] celsius = TABLE.numbers("T_inflection_C");
        for (int i = 0; i < seeds.length; i++) {
            String row = "row " + i + ": seed " + seeds[i] + ", tau " + taus[i];
            Bend bend = narrowBend(seeds[i], taus[i]);
            double slope = slopes[i];
            double when = minutes[i];
            double where = celsius[i];
            assertAll(
                    () -> assertEquals(slope, bend.kelvinPerMinute(), Math.max(0.02, 0.03 * Math.abs(slope)), row),
                    () -> assertEquals(where, bend.celsius(), 0.1, row),
                    () -> assertEquals(when, bend.afterSeconds() / 60, 0.09, row));
        }
    }

    @Test
    void moreSeedBendsSoonerAndWarmer() {
        List<Double> celsius = DoubleStream.of(0, 0.001, 0.0025, 0.005, 0.01, 0.02, 0.04, 0.08)
                .mapToObj(seed -> narrowBend(seed, 3.5).celsius())
                .toList();
        for (int i = 1; i < celsius.size(); i++)
            assertTrue(celsius.get(i) > celsius.get(i - 1), Arrays.toString(celsius.toArray()));
    }

    private static Bend narrowBend(double seed, double tau) {
        CoolingCurve curve =
                ReferenceTube.of(Fat.DARK, new CupTraits(tau, 1), 0).curve(seed);
        return Course.of(curve, 0, 15).orElseThrow().bend().orElseThrow();
    }
}
