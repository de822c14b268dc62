package fifthform.curves.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.reference.Table;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The lag that a dip shows, on a dip that somebody made and on many that are computed. */
class DipTest {
    private static final Instant START = Instant.parse("2026-01-10T10:00:00Z");

    /**
     * A bare thermocouple put into warm water ({@code thermocouple_step.csv}, source in its head); the reference page's
     * own fit, by another library, is τ 0.448 ± 0.024 s.
     */
    @Test
    void theMeasuredStepGivesItsPublishedTimeConstant() {
        Table step = Table.read("thermocouple_step.csv");
        double[] seconds = step.numbers("time_s");
        double[] celsius = step.numbers("tip_C");
        List<Dip.Point> points = new ArrayList<>();
        for (int i = 0; i < seconds.length; i++) {
            points.add(new Dip.Point(START.plusMillis(Math.round(1000 * seconds[i])), celsius[i]));
        }
        Lag lag = LagFit.of(points, 0).orElseThrow();
        assertEquals(0.448, lag.seconds(), 2 * Math.hypot(0.024, lag.sigmaSeconds()));
        assertTrue(lag.sigmaSeconds() < 0.1, lag.toString());
    }

    /** The grid of {@link LagFit}'s figures; printed, and held to floors. */
    @Test
    void simulatedDipsGiveTheirLag() {
        List<Double> errors = new ArrayList<>();
        int dips = 0;
        int within = 0;
        SplittableRandom random = new SplittableRandom(3);
        for (double tau : new double[] {1, 1.5, 2, 3, 4, 6, 8, 10, 12}) {
            for (int rate : new int[] {1, 2, 4, 10}) {
                for (double step : new double[] {0.01, 0.05, 0.1, 0.25}) {
                    for (double rise : new double[] {8.5, 12, 20, 30}) {
                        for (double drift : new double[] {-0.5, 0, 0.5}) {
                            dips++;
                            Optional<Lag> lag =
                                    dip(tau, rate, step, rise, drift, random).lag();
                            lag.ifPresent(l -> errors.add(Math.abs(l.seconds() / tau - 1)));
                            if (lag.filter(l -> Math.abs(l.seconds() - tau) <= 2 * l.sigmaSeconds())
                                    .isPresent()) within++;
                        }
                    }
                }
            }
        }
        double[] sorted =
                errors.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        double median = sorted[sorted.length / 2];
        double ninetyFive = sorted[(int) (0.95 * sorted.length)];
        double worst = sorted[sorted.length - 1];
        String figures = sorted.length + " of " + dips + " dips measured; error of the lag: median " + 100 * median
                + " %, 95 % within " + 100 * ninetyFive + " %, worst " + 100 * worst + " %; " + within
                + " within two standard uncertainties";
        System.out.println(figures);
        assertTrue(sorted.length >= 0.95 * dips, figures);
        assertTrue(within >= 0.9 * sorted.length, figures);
        assertTrue(median < 0.011 && ninetyFive < 0.055 && worst < 0.12, figures);
    }

    @ParameterizedTest
    @CsvSource({"3.2, 4, 0.25", "3.2, 1, 0.25", "8, 10, 0.05"})
    void aDipAtTheStartIsMeasuredOnceAndSettlesMeanwhile(double tau, int rate, double step) {
        SplittableRandom random = new SplittableRandom(7);
        Dip dip = dip(tau, rate, step, 22, 0, random);
        assertEquals(tau, dip.lag().orElseThrow().seconds(), 0.06 * tau);
        assertFalse(dip.settling());
        Dip later = dip;
        for (int i = 0; i < 600; i++) later = later.with(START.plusSeconds(300 + i), 46 - i / 60.0, step);
        assertEquals(dip.lag(), later.lag());
    }

    /** No dip: a bowl that melts quickly, a splash, hot water for rinsing, a rise in two stages. */
    @ParameterizedTest
    @ValueSource(strings = {"melting", "splash", "hot water", "two stages", "too small"})
    void whatIsNoDipGivesNoLag(String what) {
        Dip dip = Dip.waitingSince(START);
        for (int i = 1; i < 400; i++) {
            double t = i / 2.0 - 10;
            double celsius = 24;
            if (t > 0) {
                celsius = switch (what) {
                    case "melting" -> 24 + Math.min(22, 12 * t / 60);
                    case "splash" -> t < 2 ? 24 + 9 * t : 24 + 18 * StrictMath.exp(-(t - 2) / 5);
                    case "hot water" -> 70 - 46 * StrictMath.exp(-t / 3);
                    case "two stages" -> 46 - 11 * StrictMath.exp(-t / 1.5) - 11 * StrictMath.exp(-t / 20);
                    case "too small" -> 31 - 7 * StrictMath.exp(-t / 3);
                    default -> throw new AssertionError(what);
                };
            }
            dip = dip.with(START.plusMillis(500L * i), Math.round(20 * celsius) / 20.0, 0.05);
        }
        assertEquals(Optional.empty(), dip.lag());
        assertFalse(dip.settling());
    }

    @Test
    void whatFallsBackIsNoDipAndSettlesNothing() {
        Dip dip = Dip.waitingSince(START);
        for (int i = 0; i < 20; i++) dip = dip.with(START.plusMillis(500L * i), 24, 0.05);
        for (int i = 20; i < 24; i++) dip = dip.with(START.plusMillis(500L * i), 24 + 4 * (i - 19), 0.05);
        assertTrue(dip.settling());
        for (int i = 24; i < 28; i++) dip = dip.with(START.plusMillis(500L * i), 40 - 3 * (i - 23), 0.05);
        assertFalse(dip.settling());
    }

    @Test
    void aProbePutBackSettlesUntilItStandsStill() {
        Dip dip = Dip.waitingSince(START).putBack(START.plusSeconds(700));
        assertTrue(dip.settling());
        for (int i = 1; i <= 8; i++) {
            dip = dip.with(START.plusSeconds(700).plusMillis(500L * i), 31, 0.05);
            assertEquals(i < 7, dip.settling(), "after " + i + " readings");
        }
    }

    private static Dip dip(double tau, int rate, double step, double rise, double drift, SplittableRandom random) {
        Dip dip = Dip.waitingSince(START);
        double end = 46;
        double begins = 10 + random.nextDouble();
        for (int i = 1; i < 120 * rate; i++) {
            double t = (double) i / rate;
            double since = Math.max(0, t - begins);
            double celsius = end + drift * since / 60 - rise * StrictMath.exp(-since / tau);
            double noisy = celsius + 0.03 * (random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5) * 2;
            dip = dip.with(START.plusMillis(1000L * i / rate), step * Math.round(noisy / step), step);
        }
        return dip;
    }
}
