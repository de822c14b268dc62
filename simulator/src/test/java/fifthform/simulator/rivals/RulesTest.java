package fifthform.simulator.rivals;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Each rule of comparison on a curve of which the answer is known. */
class RulesTest {
    private static Rule fed(Rule rule, int seconds, DoubleUnaryOperator celsius) {
        Rule fed = rule;
        for (int i = 0; i <= 2 * seconds; i++) fed = fed.after(i / 2.0, celsius.applyAsDouble(i / 2.0));
        return fed;
    }

    @Test
    void theLineGoesOnByItsLead() {
        Rule rule = fed(new LineRule(30, 10), 60, t -> 28 + 0.05 * t);
        assertEquals(28 + 0.05 * 60 + 0.05 * 30, rule.turnCelsius(), 1e-9);
    }

    @Test
    void theThresholdAddsTheSameEverywhere() {
        assertEquals(32, fed(new ThresholdRule(1), 30, t -> 31).turnCelsius(), 1e-9);
    }

    @Test
    void theExponentialFindsItsOwnCurve() {
        Rule rule = fed(new ExponentialRule(20, 60), 60, t -> 45 - 17 * StrictMath.exp(-t / 160));
        double slope = 17 / 160.0 * StrictMath.exp(-60 / 160.0);
        assertEquals(slope, rule.kelvinPerSecond(), 1e-6);
        assertEquals(45 - 17 * StrictMath.exp(-60 / 160.0) + 20 * slope, rule.turnCelsius(), 1e-4);
    }

    /** Its own model, heated at 0.4 K/s of the wall for a minute: after the lift wall and chocolate meet. */
    @Test
    void theFilterFindsItsOwnModel() {
        double[] tip = {28};
        double[] bulk = {28};
        double[] wall = {28};
        Rule rule = fed(new KalmanRule(30, 0.3, 0.02), 60, t -> {
            double b = bulk[0];
            tip[0] += 0.5 / 4 * (b - tip[0]);
            bulk[0] += 0.5 / 30 * (wall[0] - b);
            wall[0] += 0.5 * 0.4 - 0.5 / 9 * (wall[0] - b);
            return tip[0];
        });
        assertEquals(bulk[0] + (wall[0] - bulk[0]) * 0.3 / 1.3, rule.turnCelsius(), 0.1);
    }

    @Test
    void figuresAreThoseOfTheTextbook() {
        assertEquals(2.5, Reached.mean(List.of(1.0, 2.0, 3.0, 4.0)).value(), 1e-12);
        assertEquals(
                Math.sqrt(5 / 3.0 / 4),
                Reached.mean(List.of(1.0, 2.0, 3.0, 4.0)).standardError(),
                1e-12);
        assertEquals(50, Reached.percent(List.of(true, false)).value(), 1e-12);
        assertEquals(3, Reached.percentile(List.of(1.0, 2.0, 3.0, 4.0, 5.0), 50).value(), 1e-12);
        assertEquals(1.5, Reached.rate(3, 2).value(), 1e-12);
    }
}
