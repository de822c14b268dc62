package fifthform.probe.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Channels by name, columns under a header, and labels that are not the tip. */
class NamedChannelsTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private final ProbeProtocol.Decoder decoder = new TextLines().newDecoder();
    private final List<Signal> signals = new ArrayList<>();

    private List<Signal> hear(String... lines) {
        signals.clear();
        decoder.feed((String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8), signals::add);
        return List.copyOf(signals);
    }

    @Test
    void namesBecomeChannelsInTheOrderInWhichTheyAppear() {
        hear("", "bowl: 31.2 bath: 45.0");
        assertEquals(
                List.of(new Signal.Measured(0, 31.2, NONE, NONE, 0.1), new Signal.Measured(1, 45, NONE, NONE, 0.1)),
                signals);
        assertEquals(Optional.of("bowl"), decoder.channelName(0));
        assertEquals(Optional.of("bath"), decoder.channelName(1));
        assertEquals(Optional.empty(), decoder.channelName(2));
        assertEquals(List.of(new Signal.Measured(1, 44.5, NONE, NONE, 0.1)), hear("bath: 44.5"));
    }

    /** Many makers have one probe, and take what speaks first. */
    @Test
    void theChocolateComesFirstAndTheRoomLast() {
        hear("", "room: 22.0 bath: 45.0 bowl: 31.2");
        assertEquals(List.of(31.2, 45.0, 22.0), Decoding.tips(signals));
        assertEquals(Optional.of("bowl"), decoder.channelName(0));
        assertEquals(Optional.of("room"), decoder.channelName(2));
    }

    @Test
    void aTornNameIsNoChannel() {
        hear("owl: 31.2 C bath: 45.0 C", "bowl: 31.2 C bath: 45.0 C");
        assertEquals(Optional.of("bowl"), decoder.channelName(0));
    }

    @Test
    void aNameKeepsItsNumberBesideOthers() {
        hear("", "T1: 30.0 bowl: 31.0", "bowl: 31.5 C");
        assertEquals(Optional.of("bowl"), decoder.channelName(0));
        assertEquals(new Signal.Measured(0, 31.5, NONE, NONE, 0.1), signals.get(2));
    }

    @Test
    void jsonNamesAndTheirJunctions() {
        hear("", "{\"bowl\":{\"tc\":31.2,\"cj\":24.5},\"bath\":{\"tc\":45.0,\"cj\":24.0}}");
        assertEquals(
                List.of(
                        new Signal.Measured(0, 31.2, OptionalDouble.of(24.5), NONE, 0.1),
                        new Signal.Measured(1, 45, OptionalDouble.of(24), NONE, 0.1)),
                signals);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "target temp = 32.00 C",
                "set: 32.0 C",
                "cpu temp: 55.0",
                "chip temp = 41.0 C",
                "max 35.0 C",
                "room: 22.0",
                "air: 22.0 C",
                "dew point: 12.5 C",
                "humidity: 45.0 C",
                "water level: 45",
                "0320",
                "00E0",
                "0E10",
                "01E1",
                "heater = 80.0 C"
            })
    void whatIsNotTheTipIsNeverRead(String line) {
        assertEquals(List.of(), Decoding.tips(hear("", line, line, line)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "T: 31.25 C (88.25 F) | 31.25",
                "Temp (°C): 31.25 | 31.25",
                "Temp [F]: 88.25 | 31.25",
                "31.25 *C | 31.25",
                "T=31.25'C | 31.25",
                "current temp: 31.25 | 31.25",
                "T: 31.25 C cpu temp: 55.0 C | 31.25"
            })
    void waysToWriteOne(String line, double tip) {
        assertEquals(List.of(tip), Decoding.tips(hear("", line)));
    }

    @Test
    void aHeaderNamesTheColumns() {
        hear("time,tc,cj", "0,31.25,24.50", "1,31.50,24.50");
        assertEquals(
                List.of(
                        new Signal.Unreadable(10),
                        new Signal.Measured(0, 31.25, OptionalDouble.of(24.5), NONE, 0.01),
                        new Signal.Measured(0, 31.5, OptionalDouble.of(24.5), NONE, 0.01)),
                signals);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cj,tc | 24.5,31.25 | 31.25",
                "time;temp_f | 5;88.25 | 31.25",
                "time;temp | 5;31,25 | 31.25",
                "time,temp | 5,31 | 31",
                "t,temp,target | 7,31.25,33.00 | 31.25",
                "time,tc,fault | 7,31.25,0 | 31.25",
                "ms,Temp (C) | 7,31.25 | 31.25"
            })
    void headersOfManyKinds(String header, String line, double tip) {
        assertEquals(List.of(tip, tip), Decoding.tips(hear(header, line, line)));
    }

    @Test
    void aHeaderMayNameChannels() {
        hear("time,bowl,bath", "0,31.2,45.0");
        assertEquals(List.of(31.2, 45.0), Decoding.tips(signals));
        assertEquals(Optional.of("bath"), decoder.channelName(1));
    }

    @Test
    void aFaultColumnIsHeeded() {
        assertEquals(List.of(31.25), Decoding.tips(hear("time,tc,fault", "7,31.25,0", "8,0.00,4")));
    }

    @Test
    void aGreetingWithACommaIsNoHeader() {
        assertEquals(List.of(), Decoding.tips(hear("hello, probe", "31.25,24.50")));
        assertEquals(List.of(31.25, 31.0), Decoding.tips(hear("", "31.00,24.50")));
    }

    @Test
    void aHeaderEndsWithItsColumns() {
        hear("cj,tc", "24.50,31.25", "31.25", "31.50,24.50", "31.25,24.50");
        assertEquals(List.of(31.25, 31.25, 31.5, 31.25), Decoding.tips(signals));
    }
}
