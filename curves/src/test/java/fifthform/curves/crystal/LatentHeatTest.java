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

    @Test
    void onATextbookRewarmItIsUnderATenthOfAKelvinInAMinute() {
        Programme textbook = Programme.temper(27.5, 6).then(42, 31.5);
        Crystals c = Crystals.SOLID;
        double most = 0;
        for (int t = 0; t < 42 * 60; t++) {
            Rates r = DARK.rates(c, textbook.celsiusAt(t / 60.0), 20);
            c = DARK.after(c, r, 1);
            boolean warming = t >= 28 * 60;
            double kelvinPerMinute = 60 * 0.32 * DARK.heatKilowattPerKilogramFat(r) / CAPACITY;
            if (warming) most = Math.max(most, Math.abs(kelvinPerMinute));
        }
        System.out.printf("heat of crystals on the rewarm: at most %.3f K/min%n", most);
        assertTrue(most > 0.001 && most < 0.2, "K/min " + most);
    }
}
