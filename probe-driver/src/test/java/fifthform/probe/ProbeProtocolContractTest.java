package fifthform.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.Sample;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.ServiceLoader;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every protocol owes, checked for all that the service loader finds: a new one is tested at once. */
class ProbeProtocolContractTest {
    /** Noise spoils the frame it runs into, and at most one more that was held back with it. */
    private static final int SPOILED_BY_ONE_NOISE = 2;

    /** Pieces that make random text look like an adapter's often enough to reach every corner of a decoder. */
    private static final String[] SCRAPS = {
        "31.25",
        "-0.5",
        "12345",
        "nan",
        "open",
        "T",
        "temp",
        "emf",
        "cj",
        "mV",
        "F",
        "C",
        "°",
        ":",
        "=",
        ",",
        ";",
        " ",
        "\t",
        "\r",
        "\n",
        "\n",
        "{",
        "}",
        "\"tc\":",
        "[",
        "e",
        ".",
        "1e999",
        "99999999999999999999",
        "short",
        "fault",
        "\u0000",
        "ÿ",
        "/",
        "%"
    };

    static Stream<ProbeProtocol> protocols() {
        return ServiceLoader.load(ProbeProtocol.class).stream().map(ServiceLoader.Provider::get);
    }

    @Test
    void idsAreUniqueAndFitForFiles() {
        List<String> ids = protocols().map(ProbeProtocol::id).toList();
        assertFalse(ids.isEmpty());
        assertEquals(ids.stream().distinct().toList(), ids);
        ids.forEach(id -> assertTrue(id.matches("[a-z0-9][a-z0-9-]*"), id));
    }

    @ParameterizedTest
    @MethodSource("protocols")
    void theWholeTapeMeansWhatItsListSays(ProbeProtocol protocol) {
        FrameTape tape = FrameTape.of(protocol);
        assertEquals(tape.meaning(), decode(protocol, tape.bytes()));
    }

    @ParameterizedTest
    @MethodSource("protocols")
    void whereChunksEndCarriesNoMeaning(ProbeProtocol protocol) {
        FrameTape tape = FrameTape.of(protocol);
        byte[] bytes = tape.bytes();
        for (long seed = 0; seed < 500; seed++)
            assertEquals(tape.meaning(), decodeInChunks(protocol, bytes, new SplittableRandom(seed)), "seed " + seed);
    }

    @ParameterizedTest
    @MethodSource("protocols")
    void twoDecodersShareNothing(ProbeProtocol protocol) {
        FrameTape tape = FrameTape.of(protocol);
        ProbeProtocol.Decoder one = protocol.newDecoder();
        ProbeProtocol.Decoder other = protocol.newDecoder();
        List<Signal> ofOne = new ArrayList<>();
        List<Signal> ofOther = new ArrayList<>();
        for (byte b : tape.bytes()) {
            one.feed(new byte[] {b}, ofOne::add);
            other.feed(new byte[] {b}, ofOther::add);
        }
        assertEquals(ofOne, ofOther);
        assertEquals(tape.meaning(), ofOne);
    }

    /**
     * Noise before, between and after frames spoils its neighbours at most; nothing is invented, and every byte is in
     * exactly one signal, white space excepted.
     */
    @ParameterizedTest
    @MethodSource("protocols")
    void noiseBetweenFramesSpoilsItsNeighboursOnly(ProbeProtocol protocol) {
        FrameTape tape = FrameTape.of(protocol);
        List<Signal> readable = tape.meaning().stream().filter(this::isReadable).toList();
        for (long seed = 0; seed < 500; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            List<byte[]> pieces = new ArrayList<>();
            int noises = 0;
            for (byte[] frame : tape.frames()) {
                if (random.nextInt(4) == 0) {
                    pieces.add(noise(random));
                    noises++;
                }
                pieces.add(frame);
            }
            pieces.add(noise(random));
            byte[] bytes = FrameTape.joined(pieces);
            List<Signal> signals = decodeInChunks(protocol, bytes, random);
            List<Signal> heard = signals.stream().filter(this::isReadable).toList();
            assertTrue(readable.containsAll(heard), "seed " + seed + " invented one of " + heard);
            int spoiled = spoiledFrames(tape, heard);
            assertTrue(spoiled <= SPOILED_BY_ONE_NOISE * noises, "seed " + seed + " lost " + spoiled + " to " + noises);
            // The tape's end may still be under way: the last noise has no end of its own.
            int under = pieces.get(pieces.size() - 1).length;
            assertEveryByteIsInOneSignal(tape, signals, Arrays.copyOf(bytes, bytes.length - under), "seed " + seed);
        }
    }

    @ParameterizedTest
    @MethodSource("protocols")
    void nothingThatArrivesMakesItThrow(ProbeProtocol protocol) {
        SplittableRandom random = new SplittableRandom(20260301);
        ProbeProtocol.Decoder decoder = protocol.newDecoder();
        long[] unreadable = {0};
        long fed = 0;
        for (int i = 0; i < 200_000; i++) {
            byte[] bytes = i % 4 == 0 ? noise(random) : scraps(random);
            fed += bytes.length;
            if (i % 1000 == 0) decoder = protocol.newDecoder();
            decoder.feed(bytes, signal -> unreadable[0] += checked(signal));
        }
        assertTrue(unreadable[0] > 0 && unreadable[0] <= fed, unreadable[0] + " of " + fed);
    }

    private static int checked(Signal signal) {
        if (signal instanceof Signal.Measured m) {
            boolean inRange = m.tipCelsius() >= Sample.LOWEST_CELSIUS && m.tipCelsius() <= Sample.HIGHEST_CELSIUS;
            boolean keepsExactly = Math.round(m.tipCelsius() * 1e6) / 1e6 == m.tipCelsius();
            assertTrue(inRange && keepsExactly && m.resolutionKelvin() > 0 && m.resolutionKelvin() <= 20, m::toString);
        }
        if (signal instanceof Signal.OutOfRange r) assertTrue(Double.isFinite(r.celsius()), r::toString);
        if (!(signal instanceof Signal.Unreadable u)) return 0;
        assertTrue(u.bytes() > 0 && u.bytes() <= 1024, u::toString);
        return u.bytes();
    }

    private static void assertEveryByteIsInOneSignal(
            FrameTape tape, List<Signal> signals, byte[] bytes, String message) {
        int accounted = 0;
        for (Signal signal : signals) if (signal instanceof Signal.Unreadable u) accounted += u.bytes();
        for (int i = 0; i < tape.frames().size(); i++)
            if (!tape.meanings().get(i).isEmpty()
                    && signals.contains(tape.meanings().get(i).get(0))
                    && !(tape.meanings().get(i).get(0) instanceof Signal.Unreadable))
                accounted += tape.frames().get(i).length;
        int white = 0;
        for (byte b : bytes) if (b == ' ' || b == '\t' || b == '\r' || b == '\n') white++;
        assertTrue(accounted <= bytes.length, message + ": more than all bytes, " + accounted + " of " + bytes.length);
        assertTrue(accounted >= bytes.length - white, message + ": lost bytes, " + accounted + " of " + bytes.length);
    }

    private int spoiledFrames(FrameTape tape, List<Signal> heard) {
        int spoiled = 0;
        for (List<Signal> meaning : tape.meanings())
            if (meaning.stream().anyMatch(s -> isReadable(s) && !heard.contains(s))) spoiled++;
        return spoiled;
    }

    private boolean isReadable(Signal signal) {
        return !(signal instanceof Signal.Unreadable);
    }

    /** Bytes that are no white space, no digit and no mark of any text, so that they cannot turn one number into another. */
    private static byte[] noise(SplittableRandom random) {
        byte[] bytes = new byte[random.nextInt(1, 60)];
        for (int i = 0; i < bytes.length; i++)
            bytes[i] = (byte) (random.nextInt(3) == 0 ? random.nextInt('A', 'z' + 1) : random.nextInt(0x80, 0x100));
        bytes[random.nextInt(bytes.length)] = (byte) 0xFF; // no letter of any wire: not to be mistaken for a word
        return bytes;
    }

    private static byte[] scraps(SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(1, 12); i > 0; i--) text.append(SCRAPS[random.nextInt(SCRAPS.length)]);
        return text.toString().getBytes(random.nextInt(2) == 0 ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1);
    }

    private static List<Signal> decode(ProbeProtocol protocol, byte[] bytes) {
        List<Signal> signals = new ArrayList<>();
        protocol.newDecoder().feed(bytes, signals::add);
        return signals;
    }

    private static List<Signal> decodeInChunks(ProbeProtocol protocol, byte[] bytes, SplittableRandom random) {
        ProbeProtocol.Decoder decoder = protocol.newDecoder();
        List<Signal> signals = new ArrayList<>();
        int longest = 1 + random.nextInt(300);
        for (int from = 0; from < bytes.length; ) {
            int to = Math.min(bytes.length, from + random.nextInt(longest + 1));
            decoder.feed(Arrays.copyOfRange(bytes, from, to), signals::add);
            from = to;
        }
        return signals;
    }
}
