package fifthform.probe.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What one frame alone does not show: dead lines, the wrong chip, torn lines, settings. */
class ChipStoriesTest {
    @ParameterizedTest
    @CsvSource({"max31855, 00000000", "max6675, 0000", "mcp9600, 0000", "max31856, 000000000000"})
    void zerosForEverAreNoIcePoint(String id, String zeros) {
        List<Signal> signals = ConverterFramesTest.signals(protocol(id), zeros, zeros, zeros, zeros, zeros);
        assertEquals(5, signals.size());
        assertTrue(signals.stream().allMatch(Signal.Unreadable.class::isInstance), signals::toString);
    }

    @ParameterizedTest
    @CsvSource({"max6675, 00C8, 0010", "mcp9600, 0190, 0012", "max31856, 190001900000, 000000120000"})
    void zerosAreATemperatureOnlyWhereTheyWereApproached(String id, String warm, String nearZero) {
        String zeros = "0".repeat(warm.length());
        assertEquals(
                List.of(),
                zerosMeasured(ConverterFramesTest.signals(protocol(id), warm, warm, zeros, zeros)),
                "a leap to zero is a wire that has come off");
        assertEquals(
                List.of(0.0, 0.0),
                zerosMeasured(ConverterFramesTest.signals(protocol(id), warm, warm, zeros, nearZero, zeros, zeros)));
    }

    private static List<Double> zerosMeasured(List<Signal> signals) {
        return Decoding.tips(signals).stream().filter(tip -> tip == 0).toList();
    }

    @Test
    void wordsOfTheFinerChipAreNotReadAtHalfTheirTemperature() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < 200; i++) lines.add(String.format("%04X", 504 + (i * 7) % 11));
        List<Double> tips = Decoding.tips(ConverterFramesTest.signals(new Max6675(), lines.toArray(String[]::new)));
        assertTrue(tips.size() <= 2, () -> "read as the other chip's: " + tips);
    }

    @Test
    void wordsOfTheCoarserChipAreNotReadAtTwiceTheirTemperatureForLong() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < 200; i++) lines.add(String.format("%04X", 126 + (i * 7) % 11 << 3));
        List<Double> tips = Decoding.tips(ConverterFramesTest.signals(new Mcp9600(), lines.toArray(String[]::new)));
        assertTrue(tips.size() <= 6, () -> "read as the other chip's: " + tips);
    }

    @Test
    void aSpoiledWordMakesItsNeighboursDoubtful() {
        List<String> lines = new ArrayList<>(List.of("03F0", "03F0", "03F2"));
        for (int i = 0; i < 10; i++) lines.add("03F8");
        assertEquals(
                List.of(31.5, 31.5, 31.75, 31.75),
                Decoding.tips(ConverterFramesTest.signals(new Max6675(), lines.toArray(String[]::new))));
    }

    @Test
    void aFirstLineThatLostItsChannelIsUnreadable() {
        List<Signal> signals = ConverterFramesTest.signals(new Max6675(), ": 03F0", "T1: 03F8", "T1: 0400");
        assertEquals(new Signal.Unreadable(6), signals.get(0));
        assertEquals(List.of(31.75, 32.0), Decoding.tips(signals));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "01F8187",
                "01F818701",
                "01F81870 00",
                "12 01F81870",
                "01F8.1870",
                "g1F81870",
                "0x01F8x1870",
                "31.50",
                "\u00ff01F81870",
                "T1 T2 T3 T4 01F81870",
                "T01F81870",
                "-01F81870"
            })
    void whatIsNotExactlyAFrameIsUnreadable(String line) {
        List<Signal> signals = ConverterFramesTest.signals(new Max31855(), "", line);
        assertEquals(List.of(new Signal.Unreadable(line.length())), signals);
    }

    @Test
    void theProtocolTellsWhichConverterItIs() {
        assertEquals(Converter.MAX31855, new Max31855().sensor().converter());
        assertEquals(Optional.of(ThermocoupleType.K), new Max31855().sensor().type());
        assertEquals(Optional.empty(), new Max31856().sensor().type());
        assertEquals(
                Optional.of(ThermocoupleType.J),
                set(new Max31855(), Map.of("type", "J")).sensor().type());
        assertEquals(
                Optional.of(ThermocoupleType.T),
                set(new Mcp9600(), Map.of("type", "t")).sensor().type());
    }

    @ParameterizedTest
    @CsvSource({
        "max6675, type=J",
        "max31855, type=Q",
        "max31855, form=octal",
        "max31855, sync=AA",
        "mcp9600, form=binary",
        "max6675, form=binary",
        "max31855, sync=A",
        "max31855, colour=red"
    })
    void whatCannotBeSetIsRefusedWithWhatCan(String id, String setting) {
        String[] parts = setting.split("=");
        String problems = protocol(id).with(Map.of(parts[0], parts[1])).fold(p -> "", Object::toString);
        assertTrue(problems.contains("form=binary") || problems.contains("form=hex"), problems);
    }

    static ProbeProtocol protocol(String id) {
        return List.of(new Max31855(), new Max6675(), new Max31856(), new Mcp9600()).stream()
                .filter(protocol -> protocol.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    static ProbeProtocol set(ProbeProtocol protocol, Map<String, String> settings) {
        return protocol.with(settings).fold(set -> set, problems -> {
            throw new AssertionError(problems);
        });
    }
}
