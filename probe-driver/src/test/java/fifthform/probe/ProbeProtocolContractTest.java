package fifthform.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.Sample;
import java.time.Instant;
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

    /** Enough to meet every corner now and then, and done in seconds. */
    private static final int FUZZED = 100_000;

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
        assertEquals(tape.meaning(), decode(protocol, tape.frames()));
    }

    @ParameterizedTest
    @MethodSource("protocols")
    void whereChunksEndCarriesNoMeaning(ProbeProtocol protocol) {
        FrameTape tape = FrameTape.of(protocol);
        for (long seed = 0; seed < 500; seed++)
            assertEquals(
                    tape.meaning(),
                    decodeInChunks(protocol, tape.frames(), new SplittableRandom(seed)),
                    "seed " + seed);
    }

    /** A recording was made with other questions at other times; those that are put while it plays change nothing. */
    @ParameterizedTest
    @MethodSource("protocols")
    void whatIsAskedMeanwhileCarriesNoMeaning(ProbeProtocol protocol) {
        FrameTape tape = FrameTape.of(protocol);
        for (long seed = 0; seed < 200; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            ProbeProtocol.Decoder decoder = protocol.newDecoder();
            List<Signal> signals = new ArrayList<>();
            Instant now = Instant.parse("2026-03-01T10:00:00Z");
            int asked = 0;
            byte[] bytes = tape.bytes();
            for (int from = 0; from < bytes.length; ) {
                boolean silence = random.nextInt(3) == 0;
                if (silence && decoder.ask(now.plusMillis(200), signals::add).isPresent()) asked++;
                now = now.plusMillis(silence ? 200 : 0).plusMillis(random.nextInt(150));
                int to = Math.min(bytes.length, from + random.nextInt(1, 12));
                decoder.feed(Arrays.copyOfRange(bytes, from, to), signals::add);
                if (decoder.ask(now, signals::add).isPresent()) asked++;
                from = to;
            }
            assertEquals(tape.meaning(), signals, "seed " + seed);
            assertEquals(protocol.manner() == ProbeProtocol.Manner.ANSWERS, asked > 0, "asked " + asked);
        }
    }

    @ParameterizedTest
    @MethodSource("protocols")
    void twoDecodersShareNothing(ProbeProtocol protocol) {
        FrameTape tape = FrameTape.of(protocol);
        Conversation one = new Conversation(protocol);
        Conversation other = new Conversation(protocol);
        for (byte[] frame : tape.frames()) {
            one.hear(frame);
            other.hear(frame);
        }
        List<Signal> ofOne = one.signals();
        List<Signal> ofOther = other.signals();
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
                    pieces.add(FrameFuzz.noise(random));
                    noises++;
                }
                pieces.add(frame);
            }
            pieces.add(FrameFuzz.noise(random));
            byte[] bytes = FrameTape.joined(pieces);
            List<Signal> signals = decodeInChunks(protocol, pieces, random);
            List<Signal> heard = signals.stream().filter(this::isReadable).toList();
            assertTrue(readable.containsAll(heard), "seed " + seed + " invented one of " + heard);
            int spoiled = spoiledFrames(tape, heard);
            assertTrue(spoiled <= SPOILED_BY_ONE_NOISE * noises, "seed " + seed + " lost " + spoiled + " to " + noises);
            // The tape's end may still be under way: the last noise has no end of its own.
            int under = pieces.get(pieces.size() - 1).length;
            assertEveryByteIsInOneSignal(tape, signals, Arrays.copyOf(bytes, bytes.length - under), "seed " + seed);
        }
    }

    /**
     * {@value #FUZZED} pieces a protocol, a million with {@code -Dfuzz.lines=1000000}: frames of its tape, mostly spoiled
     * in one to three places, cut, doubled or joined, and between them noise and scraps of text.
     */
    @ParameterizedTest
    @MethodSource("protocols")
    void nothingThatArrivesMakesItThrow(ProbeProtocol protocol) {
        SplittableRandom random = new SplittableRandom(20260301);
        List<byte[]> frames = FrameTape.of(protocol).frames();
        long unreadable = 0;
        long fed = 0;
        long readings = 0;
        Conversation talk = new Conversation(protocol);
        for (int i = 0; i < Integer.getInteger("fuzz.lines", FUZZED); i++) {
            if (i % 1000 == 0) talk = new Conversation(protocol);
            byte[] bytes = FrameFuzz.piece(frames, random);
            fed += bytes.length;
            if (random.nextInt(4) == 0) talk.hearInChunks(bytes, random);
            else talk.hear(bytes);
            for (Signal signal : talk.takeSignals()) {
                unreadable += checked(signal);
                if (signal instanceof Signal.Measured) readings++;
            }
            assertTrue(unreadable <= fed, unreadable + " of " + fed);
        }
        assertTrue(unreadable > 0 && readings > 0, unreadable + " bytes unreadable, " + readings + " readings");
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

    private void assertEveryByteIsInOneSignal(FrameTape tape, List<Signal> signals, byte[] bytes, String message) {
        int accounted = 0;
        for (Signal signal : signals) {
            if (signal instanceof Signal.Unreadable u) accounted += u.bytes();
            if (signal instanceof Signal.Aside a) accounted += a.bytes();
        }
        for (int i = 0; i < tape.frames().size(); i++)
            if (!tape.meanings().get(i).isEmpty()
                    && signals.contains(tape.meanings().get(i).get(0))
                    && isReadable(tape.meanings().get(i).get(0)))
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
        return !(signal instanceof Signal.Unreadable || signal instanceof Signal.Aside);
    }

    private static List<Signal> decode(ProbeProtocol protocol, List<byte[]> pieces) {
        Conversation talk = new Conversation(protocol);
        pieces.forEach(talk::hear);
        return talk.signals();
    }

    /** Chunks end anywhere, and hold several frames where the adapter speaks by itself. */
    private static List<Signal> decodeInChunks(ProbeProtocol protocol, List<byte[]> pieces, SplittableRandom random) {
        boolean speaks = protocol.manner() == ProbeProtocol.Manner.SPEAKS;
        Conversation talk = new Conversation(protocol);
        for (byte[] piece : speaks ? List.of(FrameTape.joined(pieces)) : pieces) talk.hearInChunks(piece, random);
        return talk.signals();
    }
}
