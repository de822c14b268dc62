package fifthform.probe.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.probe.Signal;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Told as stories: which lines come, and what is believed after which. */
class ColumnMeaningTest {
    @Test
    void aColumnAboveAllTemperaturesThatGrowsIsATimeStamp() {
        assertEquals(List.of(31.25, 31.5), Decoding.tips(Decoding.lines("12245,31.25", "12345,31.50")));
    }

    @Test
    void secondsFromZeroAreBelievedAtTheThirdLine() {
        assertEquals(List.of(), Decoding.lines("0,31.25", "1,31.30"));
        assertEquals(List.of(31.25, 31.3, 31.35), Decoding.tips(Decoding.lines("0,31.25", "1,31.30", "2,31.35")));
    }

    @Test
    void wholeSecondsMayRepeat() {
        assertEquals(
                List.of(31.0, 31.1, 31.2, 31.3),
                Decoding.tips(Decoding.lines("12;31.0", "12;31.1", "13;31.2", "13;31.3")));
    }

    @Test
    void secondsWrittenLikeTemperaturesAreNeverATemperature() {
        String[] lines = new String[200];
        for (int i = 0; i < lines.length; i++) lines[i] = i + ";" + 31;
        List<Double> tips = Decoding.tips(Decoding.lines(lines));
        assertEquals(List.of(31.0), tips.stream().distinct().toList());
    }

    @Test
    void halfSecondsWrittenLikeTemperaturesAreBelievedAtTheEighthLine() {
        String[] lines = new String[8];
        for (int i = 0; i < lines.length; i++) lines[i] = 10 + i * 0.5 + ",31." + i;
        assertEquals(List.of(31.0, 31.1, 31.2, 31.3, 31.4, 31.5, 31.6, 31.7), Decoding.tips(Decoding.lines(lines)));
    }

    /** One last digit a line is what a slowly warming probe shows as well. */
    @Test
    void aTemperatureThatRisesByItsLastDigitIsNotTakenForAClock() {
        String[] lines = new String[9];
        for (int i = 0; i < lines.length; i++) lines[i] = "31." + i + ",24.5";
        assertEquals(List.of(), Decoding.tips(Decoding.lines(lines)));
    }

    @Test
    void aRestartedDeviceIsLearnedAnew() {
        assertEquals(
                List.of(31.0, 31.1, 31.2, 31.3, 31.4),
                Decoding.tips(Decoding.lines("900,31.0", "901,31.1", "0,31.2", "1,31.3", "2,31.4")));
    }

    @Test
    void twoColumnsWithoutAStampAreTipAndJunction() {
        Signal.Measured second =
                (Signal.Measured) Decoding.lines("31.25 24.50", "31.25 24.50").get(1);
        assertEquals(31.25, second.tipCelsius());
        assertEquals(OptionalDouble.of(24.5), second.junctionCelsius());
    }

    @Test
    void aSaturatedTipBesideAJunctionIsOutOfRange() {
        assertEquals(
                List.of(new Signal.OutOfRange(0, 2048), new Signal.OutOfRange(0, 2047)),
                Decoding.lines("2048.00,24.50", "2047.00,24.50"));
    }

    /** Else the junction beside it would pass for the tip. */
    @Test
    void aSaturatedTipThatWandersIsNoTimeStamp() {
        assertEquals(
                List.of(),
                Decoding.tips(Decoding.lines("1371.25,24.50", "1372.00,24.50", "1372.75,24.50", "1371.50,24.50")));
        assertEquals(
                List.of(31.25, 31.5),
                Decoding.tips(Decoding.lines("", "31.25,24.50", "1372.00,24.50", "1372.25,24.50", "31.50,24.50")));
    }

    @Test
    void aRestartWithinTheFirstLinesShowsNoSecondsAsDegrees() {
        assertEquals(List.of(), Decoding.tips(Decoding.lines("", "200000;31", "0;31", "1;31", "2;31")));
    }

    @Test
    void twoLinesRunTogetherAreNotTwoColumns() {
        List<Signal> signals = Decoding.lines("31.25", "31.50", "31.75 32.00", "32.25");
        assertEquals(List.of(31.25, 31.5, 32.25), Decoding.tips(signals));
        assertEquals(new Signal.Unreadable(11), signals.get(2));
    }

    @Test
    void threeColumnsWithoutAStampHaveNoAgreedOrder() {
        assertEquals(List.of(), Decoding.tips(Decoding.lines("31.25 24.50 40.00", "31.25 24.50 40.00")));
    }
}
