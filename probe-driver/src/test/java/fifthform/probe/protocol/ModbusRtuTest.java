package fifthform.probe.protocol;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.check.Problem;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Settings as makers write them, and devices as they behave on long wires. Frames are made by the test itself. */
class ModbusRtuTest {
    private static final Instant START = Instant.parse("2026-03-01T10:00:00Z");

    private final List<Signal> signals = new ArrayList<>();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "unit=0,register=8|unit is 0, but must be a whole number from 1 to 247",
                "unit=248,register=8|unit is 248",
                "register=65536|register is 65536, but must be a whole number from 0 to 65535",
                "register=40009|Write table=holding,register=8",
                "register=30009|Write table=input,register=8",
                "register=400009|Write table=holding,register=8",
                "registers=8/30010|Write table=input,registers=9",
                "regster=8|Did you mean register?",
                "boud=9600,register=8|Did you mean baud?",
                "register=8,format=int61|Did you mean int16?",
                "register=8,words=high|must be one of: high-first, low-first",
                "register=8,scale=0|scale is 0, but must be from -1000 to 1000 and not 0",
                "register=8,scale=x|scale is x",
                "register=8,offset=1e9|offset is 1e9",
                "register=8,in=r|must be one of: c, f, k",
                "register=8,every=0.1|every is 0.1, but must be 0.25 to 1.5 seconds",
                "register=8,timeout=60|timeout is 60",
                "register=8,open=70000|open is 70000",
                "registers=8/8|names 8 twice",
                "registers=8/200|193 registers, but one question reads 125 at most",
                "registers=8,register=9|registers already names them all",
                "register=8,count=126|count is 126",
                "register=65535,format=int32|the last register is 65535",
                "unit=1|counted from 0",
            })
    void whatCannotBeUsedIsRefusedWithWhatToWriteInstead(String settings, String told) {
        List<Problem> problems = Modbus.problems(settings);
        assertTrue(problems.toString().contains(told), problems::toString);
        assertTrue(problems.toString().contains("Nothing was done"), problems::toString);
    }

    @Test
    void aNumberThatLooksLikeAManualsCanBeMeant() {
        assertArrayEquals(Modbus.frame(1, 4, 0x9C, 0x49, 0, 1), firstQuestion(Modbus.set("register=0x9C49")));
    }

    @Test
    void oneQuestionReadsAllChannels() {
        ProbeProtocol protocol = Modbus.set("registers=12/8,junction-register=10,table=holding,unit=9");
        assertArrayEquals(Modbus.frame(9, 3, 0, 8, 0, 5), firstQuestion(protocol));
        protocol.newDecoder().feed(Modbus.frame(9, 3, 10, 1, 59, 0, 0, 0, 250, 0, 0, 1, 155), signals::add);
        assertEquals(List.of("0 41.1 25.0", "1 31.5 25.0"), told());
    }

    @ParameterizedTest
    @CsvSource({
        "int16,0x7FFF,open",
        "int16,0x8000,open",
        "int16,0x0000,0.0",
        "uint16,0xFFFF,open",
        "uint16,0x7B0C,31.5",
        "int16,0x7B0C,31.5",
        "int16,0xF831,-1.999"
    })
    void bitsThatMeanOpenNeverBecomeATemperature(String format, String bits, String expected) {
        int word = Integer.decode(bits);
        ProbeProtocol protocol = Modbus.set("register=8,scale=0.001,format=" + format);
        protocol.newDecoder().feed(Modbus.frame(1, 4, 2, word >> 8, word & 0xFF), signals::add);
        assertEquals(expected, signals.get(0) instanceof Signal.Measured m ? String.valueOf(m.tipCelsius()) : "open");
        assertTrue(signals.get(0) instanceof Signal.Measured || signals.get(0) instanceof Signal.OpenCircuit);
    }

    @Test
    void aSettingSaysWhatElseMeansOpen() {
        ProbeProtocol protocol = Modbus.set("register=8,open=-99/1234");
        ProbeProtocol.Decoder decoder = protocol.newDecoder();
        decoder.feed(Modbus.frame(1, 4, 2, 0xFF, 0x9D), signals::add);
        decoder.feed(Modbus.frame(1, 4, 2, 1234 >> 8, 1234 & 0xFF), signals::add);
        decoder.feed(Modbus.frame(1, 4, 2, 1235 >> 8, 1235 & 0xFF), signals::add);
        assertEquals(
                List.of(new Signal.OpenCircuit(0), new Signal.OpenCircuit(0), Modbus.measured(0, 123.5, 0.1)), signals);
    }

    @Test
    void aConverterThatIsNotThereIsNoIcePoint() {
        Modbus.set("register=8,junction-register=9").newDecoder().feed(Modbus.frame(1, 4, 4, 0, 0, 0, 0), signals::add);
        assertEquals(List.of(new Signal.Unreadable(9)), signals);
    }

    @Test
    void infinityAndNoNumberAreOpen() {
        ProbeProtocol.Decoder decoder = Modbus.set("register=8,format=float32").newDecoder();
        decoder.feed(Modbus.frame(1, 4, 4, 0x7F, 0xC0, 0, 0), signals::add);
        decoder.feed(Modbus.frame(1, 4, 4, 0x7F, 0x80, 0, 0), signals::add);
        assertEquals(List.of(new Signal.OpenCircuit(0), new Signal.OpenCircuit(0)), signals);
    }

    @Test
    void anotherUnitsAnswerIsNotOurs() {
        ProbeProtocol.Decoder decoder = Modbus.set("register=8,unit=2").newDecoder();
        decoder.feed(Modbus.frame(3, 4, 2, 1, 59), signals::add);
        decoder.feed(Modbus.frame(2, 4, 2, 1, 60), signals::add);
        assertEquals(List.of(new Signal.Aside(7), Modbus.measured(0, 31.6, 0.1)), signals);
    }

    @Test
    void ourOwnQuestionMayComeBack() {
        ProbeProtocol.Decoder decoder = Modbus.set("register=8").newDecoder();
        byte[] question = decoder.ask(START, signals::add).orElseThrow();
        decoder.feed(question, signals::add);
        assertEquals(Optional.empty(), decoder.ask(START.plusMillis(100), signals::add), "still waiting");
        decoder.feed(Modbus.frame(1, 4, 2, 1, 59), signals::add);
        assertEquals(List.of(new Signal.Aside(8), Modbus.measured(0, 31.5, 0.1)), signals);
    }

    /** An answer to a question for other registers has another length, function or unit, or there would be two questions. */
    @Test
    void aLateAnswerIsStillTheAnswerToTheOnlyQuestion() {
        ProbeProtocol.Decoder decoder =
                Modbus.set("register=8,every=0.5,timeout=0.3").newDecoder();
        byte[] first = decoder.ask(START, signals::add).orElseThrow();
        byte[] second = decoder.ask(START.plusMillis(600), signals::add).orElseThrow();
        assertArrayEquals(first, second);
        decoder.feed(Modbus.frame(1, 4, 2, 1, 59), signals::add);
        decoder.feed(Modbus.frame(1, 4, 4, 1, 60, 1, 61), signals::add);
        assertEquals(List.of(Modbus.measured(0, 31.5, 0.1), new Signal.Aside(9)), signals);
    }

    @Test
    void halfAnAnswerIsGivenUpAfterTheTimeout() {
        ProbeProtocol.Decoder decoder = Modbus.set("register=8,timeout=0.3").newDecoder();
        decoder.feed(new byte[] {1, 4, 2}, signals::add);
        decoder.ask(START, signals::add);
        decoder.ask(START.plusMillis(200), signals::add);
        assertEquals(List.of(), signals);
        decoder.ask(START.plusMillis(400), signals::add);
        assertEquals(List.of(new Signal.Unreadable(3)), signals);
    }

    @Test
    void damagedAnswersAreCountedAndTold() {
        ProbeProtocol.Decoder decoder = Modbus.set("register=8").newDecoder();
        for (int i = 0; i < 20; i++) {
            if (decoder.ask(START.plusMillis(200L * i), signals::add).isEmpty()) continue;
            byte[] frame = Modbus.frame(1, 4, 2, 1, 59);
            frame[5] ^= 1;
            decoder.feed(frame, signals::add);
        }
        String complaint = decoder.complaint().map(Problem::toString).orElse("none");
        assertTrue(complaint.contains("answers arrived damaged (wrong CRC)"), complaint);
        assertTrue(signals.stream().allMatch(s -> s instanceof Signal.Unreadable), signals::toString);
    }

    /** Somebody who talks without end delays us by a second or so and cannot silence us. */
    @Test
    void aFloodCannotKeepUsFromAsking() {
        ProbeProtocol.Decoder decoder = Modbus.set("register=8").newDecoder();
        SplittableRandom random = new SplittableRandom(7);
        int asked = 0;
        for (int i = 0; i < 1000; i++) {
            byte[] noise = new byte[100];
            random.nextBytes(noise);
            decoder.feed(noise, signals::add);
            if (decoder.ask(START.plusMillis(20L * i), signals::add).isPresent()) {
                asked++;
                decoder.feed(Modbus.frame(1, 4, 2, 1, 59), signals::add);
            }
        }
        assertTrue(asked >= 8, "asked " + asked + " times in 20 s");
        assertEquals(
                asked,
                signals.stream().filter(Modbus.measured(0, 31.5, 0.1)::equals).count());
    }

    /** One to three bits of each answer are turned over: the CRC finds all of these (two and three bits: distance 4). */
    @Test
    void noReadingEverComesOfAWrongCrc() {
        SplittableRandom random = new SplittableRandom(20260301);
        ProbeProtocol.Decoder decoder = Modbus.set("registers=8/9").newDecoder();
        for (int i = 0; i < 200_000; i++) {
            byte[] frame = Modbus.frame(1, 4, 4, 1, random.nextInt(256), 1, random.nextInt(256));
            int first = random.nextInt(frame.length * 8);
            frame[first / 8] ^= (byte) (1 << first % 8);
            for (int more = random.nextInt(3); more > 0; more--) {
                int bit = random.nextInt(frame.length * 8);
                if (bit != first) frame[bit / 8] ^= (byte) (1 << bit % 8);
            }
            if (i % 100 == 0) decoder = Modbus.set("registers=8/9").newDecoder();
            decoder.feed(frame, signal -> assertFalse(signal instanceof Signal.Measured, signal::toString));
        }
    }

    @Test
    void randomBytesAreNoReading() {
        SplittableRandom random = new SplittableRandom(3);
        ProbeProtocol.Decoder decoder = new ModbusRtu().newDecoder();
        long[] accounted = {0};
        byte[] bytes = new byte[64];
        for (int i = 0; i < 50_000; i++) {
            random.nextBytes(bytes);
            decoder.feed(bytes, signal -> {
                if (signal instanceof Signal.Unreadable u) accounted[0] += u.bytes();
                else accounted[0] += ((Signal.Aside) signal).bytes();
            });
        }
        assertTrue(accounted[0] >= 64L * 50_000 - 512 && accounted[0] <= 64L * 50_000);
    }

    private List<String> told() {
        return signals.stream()
                .map(s -> (Signal.Measured) s)
                .map(m -> m.channel() + " " + m.tipCelsius() + " "
                        + m.junctionCelsius().orElseThrow())
                .toList();
    }

    private static byte[] firstQuestion(ProbeProtocol protocol) {
        return protocol.newDecoder().ask(START, signal -> {}).orElseThrow();
    }
}
