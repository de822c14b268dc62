package fifthform.curves.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A device that sends °F and does not say so. */
class ScaleTest {
    private Instant at = Instant.parse("2026-01-10T10:00:00Z");
    private Scale scale = Scale.UNSEEN;

    private void reads(double celsius) {
        at = at.plusMillis(500);
        scale = scale.with(at, celsius, 0.1);
    }

    private void doubts(Doubt... doubt) {
        assertEquals(doubt.length == 0 ? Optional.empty() : Optional.of(doubt[0]), scale.doubt());
    }

    @ParameterizedTest
    @ValueSource(doubles = {68, 88, 113, 122})
    void aSessionThatBeginsWithChocolateInFahrenheitIsDoubtedFromItsFirstReading(double fahrenheit) {
        reads(fahrenheit);
        doubts(Doubt.FAHRENHEIT);
        for (int i = 0; i < 500; i++) reads(fahrenheit + i * 0.05);
        doubts(Doubt.FAHRENHEIT);
    }

    @Test
    void aSwitchInTheMiddleIsDoubtedAtOnceUntilItIsTakenBack() {
        for (int i = 0; i < 20; i++) reads(31.4);
        doubts();
        reads(88.5);
        doubts(Doubt.FAHRENHEIT);
        for (int i = 0; i < 200; i++) reads(88.5 - i * 0.05);
        doubts(Doubt.FAHRENHEIT);
        reads(26);
        doubts();
    }

    @ParameterizedTest
    @ValueSource(doubles = {21, 31.5, 47, 55, 98.9})
    void whatChocolateOrBoilingWaterReadsIsNot(double celsius) {
        reads(celsius);
        doubts();
    }

    @Test
    void anOverheatedBowlIsBelieved() {
        for (double celsius = 45; celsius < 90; celsius += 0.1) {
            reads(celsius);
            doubts();
        }
    }
}
