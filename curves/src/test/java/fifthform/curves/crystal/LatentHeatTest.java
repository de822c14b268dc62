package fifthform.curves.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The heat that crystals give, and why the forecast leaves it out. */
class LatentHeatTest {
    private static final Kinetics DARK = Kinetics.of(Fat.DARK);

    /** Heat capacity of melted chocolate, kJ/kgK (Beckett ed. 2009). */
    private static final double CAPACITY = 1.63;

    /** 1 % of the fat warms chocolate of 32 % fat by 0.34 K: L·φ/c with L = 175 kJ/kg (reference, row 64). */
    @Test
    void aHundredthOfTheFatGivesAThirdOfAKelvin() {
        Rates onePercentASecond = new Rates(0, 0, 0.01, 0, 0, 0.01);
        assertEquals(0.34, 0.32 * DARK.heatKilowattPerKilogramFat(onePercentASecond) / CAPACITY, 0.005);
    }

    /**
     * A measured rate has the heat of the moment in it. What a forecast would add is how that changes within a coast of
     * 40 s, and this is under what remains in its band anyway (0.10 K).
     */
    @Test
    void withinACoastItChangesTooLittleToBeForecast() {
        Programme textbook = Programme.temper(27.5, 6).then(42, 31.5);
        Crystals c = Crystals.SOLID;
        double[] kelvinPerSecond = new double[42 * 60];
        for (int t = 0; t < kelvinPerSecond.length; t++) {
            Rates r = DARK.rates(c, textbook.celsiusAt(t / 60.0), 20);
            c = DARK.after(c, r, 1);
            kelvinPerSecond[t] = 0.32 * DARK.heatKilowattPerKilogramFat(r) / CAPACITY;
        }
        double most = 0;
        double missed = 0;
        for (int t = 28 * 60; t < kelvinPerSecond.length - 40; t++) {
            most = Math.max(most, 60 * kelvinPerSecond[t]);
            double sum = 0;
            for (int k = 1; k <= 40; k++) sum += kelvinPerSecond[t + k] - kelvinPerSecond[t];
            missed = Math.max(missed, Math.abs(sum));
        }
        System.out.printf("heat of crystals on the rewarm: at most %.3f K/min; missed in 40 s %.3f K%n", most, missed);
        assertTrue(most > 0.01 && most < 0.2, "K/min " + most);
        assertTrue(missed < 0.05, "K " + missed);
    }
}
