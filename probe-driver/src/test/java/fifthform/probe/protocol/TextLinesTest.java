package fifthform.probe.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.probe.Signal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the table of samples does not say: resolution, encodings, lengths, more ways to be doubtful. */
class TextLinesTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    @ParameterizedTest
    @CsvSource({
        "31.25, 31.25, 0.01",
        "31.2, 31.2, 0.1",
        "31, 31, 1",
        "1e1, 10, 10",
        "3e1, 30, 10",
        "31.2500, 31.25, 0.0001"
    })
    void theDigitsWrittenTellTheResolution(String line, double tip, double step) {
        assertEquals(new Signal.Measured(0, tip, NONE, NONE, step), last(Decoding.lines(line, line)));
    }

    @Test
    void fahrenheitHasFinerStepsInKelvin() {
        Signal.Measured measured = (Signal.Measured) last(Decoding.lines("88.3 F", "88.3 F"));
        // (88.3 − 32) · 5/9, rounded to a millionth
        assertEquals(31.277778, measured.tipCelsius());
        assertEquals(0.1 * 5 / 9, measured.resolutionKelvin(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"31.25 °C", "31.25°C", "31.25 \u2103", "Temp: 31.25 deg C", "{\"t\":31.25,\"unit\":\"°C\"}"})
    void degreeSignsInUtf8(String line) {
        assertEquals(List.of(31.25, 31.25), Decoding.tips(Decoding.lines(line, line)));
    }

    @ParameterizedTest
    @ValueSource(ints = {0xB0, 0xBA, 0xDF, 0xF8})
    void degreeSignsOfOldEncodings(int sign) {
        byte[] bytes = "T=31.25 _C\nT=31.50 _C\n".replace('_', (char) sign).getBytes(StandardCharsets.ISO_8859_1);
        assertEquals(List.of(31.25, 31.5), Decoding.tips(Decoding.bytes(bytes)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"31.25\n31.50\n31.75\n", "31.25\r31.50\r31.75\r", "31.25\r\n31.50\r\n31.75\r\n"})
    void anyLineEnd(String text) {
        assertEquals(
                List.of(31.25, 31.5, 31.75), Decoding.tips(Decoding.bytes(text.getBytes(StandardCharsets.US_ASCII))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "target temp = 32.00",
                "humidity: 45.0",
                "rh 45 %",
                "12:31",
                "tc=31.25 fault=4",
                "T: 31.25 T: 41.00",
                "TempF: 31.25 C",
                "{\"tc\":31.25",
                "{\"tc\":31.25}x",
                "{\"tc\":31.25,\"fault\":1}",
                "31.25 C 45.00 C",
                "door open",
                "no fault, not open",
                "1/2/26",
                "0x1F",
                "31.",
                "inf",
                "31.25.1",
                "T31.25"
            })
    void whatCanBeReadInTwoWaysOrIsSomethingElseIsUnreadable(String line) {
        List<Signal> expected = List.of(new Signal.Unreadable(line.length()), new Signal.Unreadable(line.length()));
        assertEquals(expected, Decoding.lines(line, line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "31.25 C / 88.25 F | 31.25",
                "bowl: 31.25 C | 31.25",
                "tc: 31.25, humidity: 45, target: 33.0 | 31.25",
                "TC 31.25 CJ 24.50 | 31.25",
                "T = −0.25 °C | -0.25",
                "type K temp: 31.25 | 31.25",
                "{\"id\":3,\"ms\":12345,\"tc\":\"31.25\"} | 31.25",
                "{\"temps\":[],\"temperature_c\":31.25,\"status\":\"ok\"} | 31.25"
            })
    void andWhatIsClearIsRead(String line, double tip) {
        assertEquals(List.of(tip, tip), Decoding.tips(Decoding.lines(line, line)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"{\"tc\":null,\"cj\":24.5}", "{\"tc\":NaN}", "tc=nan cj=24.50", "T: open", "TC open circuit"})
    void openCircuits(String line) {
        assertEquals(List.of(new Signal.OpenCircuit(0), new Signal.OpenCircuit(0)), Decoding.lines(line, line));
    }

    @Test
    void oneChannelMayBeOpenWhileTheOtherMeasures() {
        assertEquals(
                List.of(new Signal.OpenCircuit(1), new Signal.Measured(2, 41, NONE, NONE, 0.01)),
                Decoding.lines("greeting", "T1:nan T2:41.00").subList(1, 3));
    }

    @Test
    void aJunctionOnALineOfItsOwnBelongsToTheNextReading() {
        List<Signal> signals = Decoding.lines("", "Internal Temp = 24.50", "C = 31.25", "C = 31.50");
        assertEquals(
                List.of(
                        new Signal.Measured(0, 31.25, OptionalDouble.of(24.5), NONE, 0.01),
                        new Signal.Measured(0, 31.5, NONE, NONE, 0.01)),
                signals);
    }

    @Test
    void aJunctionWithoutAReadingIsUnreadable() {
        assertEquals(
                List.of(new Signal.Unreadable(10), new Signal.Unreadable(10), new Signal.Unreadable(1)),
                Decoding.lines("", "cj = 24.50", "cj = 24.50", "?"));
    }

    @Test
    void ofAnOverlongLineOnlyAKibibyteIsKept() {
        String noise = "31.25 ".repeat(500); // 3000 bytes
        List<Signal> signals = Decoding.lines(noise, "31.25");
        assertEquals(
                List.of(
                        new Signal.Unreadable(1024),
                        new Signal.Unreadable(1024),
                        new Signal.Unreadable(952),
                        new Signal.Measured(0, 31.25, NONE, NONE, 0.01)),
                signals);
    }

    @Test
    void aLineWithoutEndIsToldWhileItGoesOn() {
        List<Signal> signals = Decoding.bytes("x".repeat(5000).getBytes(StandardCharsets.US_ASCII));
        assertTrue(signals.size() == 4, signals::toString);
    }

    private static Signal last(List<Signal> signals) {
        return signals.get(signals.size() - 1);
    }
}
