package fifthform.monitor.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalTest {
    @ParameterizedTest
    @CsvSource({
        "31.5, 6, 31.5",
        "31, 6, 31",
        "0, 6, 0",
        "-0.0, 6, 0",
        "-0.0000004, 6, 0",
        "-0.25, 6, -0.25",
        "0.000001, 6, 0.000001",
        "100, 0, 100",
        "1200, 3, 1200",
        "33.4006, 3, 33.401",
        "33.3995, 2, 33.4",
        "33.996, 2, 34",
        "12345678901.25, 6, 12345678901.25",
        "-1e12, 6, -1000000000000",
        "2e-3, 6, 0.002",
    })
    void writesShortDecimals(double value, int places, String text) {
        assertEquals(text, Decimal.of(value, places));
    }

    /** What the wire says is rounded to a millionth of a kelvin, so every such number must come back to the bit. */
    @Test
    void everyMillionthReadsBackExactly() {
        SplittableRandom random = new SplittableRandom(6);
        for (int i = 0; i < 1_000_000; i++) {
            long millionths = random.nextLong(-200_000_000, 200_000_001);
            double value = millionths / 1e6;
            String text = Decimal.of(value);
            assertEquals(value, Double.parseDouble(text), text);
            assertEquals(0, new BigDecimal(text).compareTo(BigDecimal.valueOf(millionths, 6)), text);
        }
    }

    /** Rounding twice must change nothing: what was read from a journal is written the same again. */
    @Test
    void whatWasWrittenIsWrittenTheSameAgain() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 100_000; i++) {
            double value = random.nextDouble(-1e10, 1e10) * Math.pow(10, random.nextInt(-12, 1));
            String once = Decimal.of(value);
            assertEquals(once, Decimal.of(Double.parseDouble(once)), () -> "" + value);
        }
    }

    @ParameterizedTest
    @CsvSource({"1500000000, 9, 1.5", "1, 9, 0.000000001", "-1, 9, -0.000000001", "0, 9, 0", "250, 0, 250", "10, 1, 1"})
    void scalesWholeUnits(long units, int places, String text) {
        assertEquals(text, Decimal.scaled(units, places));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNoNumber(double value) {
        assertThrows(IllegalArgumentException.class, () -> Decimal.of(value));
    }
}
