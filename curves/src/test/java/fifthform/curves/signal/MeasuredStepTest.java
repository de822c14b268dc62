package fifthform.curves.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.Sample;
import fifthform.curves.reference.Fit;
import fifthform.curves.reference.Table;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.ProbeId;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A bare thermocouple that somebody else put into warm water ({@code thermocouple_step.csv}, source in its head). */
class MeasuredStepTest {
    private static final Table STEP = Table.read("thermocouple_step.csv");

    /** The reference page's own fit, by another library: τ 0.448 ± 0.024 s, end 54.9 ± 0.35, start 18.9 ± 0.9 °C. */
    @Test
    void isOneExponentialWithTheStatedTimeConstant() {
        RealVector fit = Fit.of(
                        (t, p) -> p[1] + (p[2] - p[1]) * Math.exp(-t / p[0]),
                        STEP.numbers("time_s"),
                        STEP.numbers("tip_C"),
                        1,
                        50,
                        20)
                .getPoint();
        assertEquals(0.448, fit.getEntry(0), 0.024);
        assertEquals(54.9, fit.getEntry(1), 0.35);
        assertEquals(18.9, fit.getEntry(2), 0.9);
    }

    /** It rises by 80 K/s, which no bowl of chocolate can: such a curve is doubted, not followed. */
    @Test
    void isNoChocolate() {
        Instant start = Instant.EPOCH;
        double[] seconds = STEP.numbers("time_s");
        double[] celsius = STEP.numbers("tip_C");
        Track track = Track.silentSince(start);
        for (int i = 0; i < seconds.length; i++) {
            Instant at = start.plusMillis(Math.round(1000 * seconds[i]));
            Sample read = new Sample(
                    at, new ProbeId("bowl"), celsius[i], 0.5, OptionalDouble.empty(), OptionalDouble.empty());
            track = track.with(read, Correction.UNCHECKED);
            boolean steep = seconds[i] > 0 && seconds[i] < 1;
            if (steep) assertEquals(Optional.of(Doubt.JUMPS), track.doubt(), "at " + seconds[i] + " s");
        }
    }

    /**
     * A slow curve is followed: three vessels that somebody let cool ({@code cooling_three_vessels.csv}), the filter's
     * slope against that of an exponential fitted to the whole curve, from the second minute on.
     */
    @ParameterizedTest
    @ValueSource(strings = {"1", "2", "3"})
    void theTrendFollowsTheSlopeOfACoolingVessel(String run) {
        Table vessel = Table.read("cooling_three_vessels.csv").where("run", run);
        double[] seconds = vessel.numbers("time_s");
        double[] celsius = vessel.numbers("water_C");
        RealVector fit = Fit.of((t, p) -> p[0] + p[1] * Math.exp(-t / p[2]), seconds, celsius, 23, 20, 1200)
                .getPoint();
        Trend trend = Trend.startingAt(celsius[0], 0.05);
        double error = 0;
        int within = 0;
        int points = 0;
        for (int i = 1; i < seconds.length; i++) {
            trend = trend.after(seconds[i] - seconds[i - 1]).with(celsius[i], 0.1 / Math.sqrt(12));
            if (seconds[i] <= 120) continue;
            double slope = -fit.getEntry(1) / fit.getEntry(2) * Math.exp(-seconds[i] / fit.getEntry(2));
            double off = Math.abs(trend.slope() - slope);
            error += 60 * off;
            if (off <= 1.645 * Math.sqrt(trend.slopeVariance())) within++;
            points++;
        }
        assertTrue(error / points < 0.15, "mean error of the slope " + error / points + " K/min");
        assertTrue(within >= 0.9 * points, within + " of " + points + " within its own 90 % band");
    }
}
