package fifthform.curves.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A wall colder than the bulk makes more seed on the warm side. Source: section 8.1 of this project's reference for the
 * model (computed there, not calibrated), % of the fat on reaching 31.5 °C; as printed, so to half a last digit.
 */
class CrystalWallTest {
    private static final Kinetics DARK = Kinetics.of(Fat.DARK);

    @ParameterizedTest
    @CsvSource({
        "27.5, 0, 2.0, 0.05", "27.5, 2, 2.4, 0.05", "27.5, 4, 3.2, 0.05", "27.5, 6, 4.1, 0.05",
        "28.5, 0, 0.25, 0.005", "28.5, 2, 0.38, 0.005", "28.5, 4, 0.70, 0.005", "28.5, 6, 1.2, 0.05",
        "29, 0, 0.07, 0.005", "29, 2, 0.13, 0.005", "29, 4, 0.32, 0.005", "29, 6, 0.60, 0.005",
        "30, 0, 0.00, 0.005", "30, 2, 0.01, 0.005", "30, 4, 0.07, 0.005", "30, 6, 0.18, 0.005"
    })
    void seedOnReachingTheWorkingTemperature(double coolCelsius, double wall, double percent, double within) {
        Programme programme = Programme.temper(coolCelsius, 6);
        TwoNodes nodes = TwoNodes.all(Crystals.SOLID);
        for (int i = 0; i < Math.round(60 * programme.endMinutes()); i++) {
            double minute = i / 60.0;
            // Colder from the end of the melt to the end of the hold, warmer on the way up.
            double warmer = minute < 10 ? 0 : minute < 28 ? -wall : wall;
            nodes = nodes.step(DARK, programme.celsiusAt(minute), warmer, 20, 1);
        }
        assertEquals(percent, 100 * nodes.mean(DARK).stableSeed(), within * 1.0001);
    }
}
