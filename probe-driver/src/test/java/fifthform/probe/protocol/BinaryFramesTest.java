package fifthform.probe.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bare bytes: a place in the stream that is not certain gives nothing, and never a number from between two frames. */
class BinaryFramesTest {
    private static final String ALL = """
            max31855, '', 4
            max31855, AA55, 4
            max6675, AA55, 2
            max31856, '', 6
            max31856, AA55, 6
            mcp9600, AA55, 2""";

    /** A stream with its truth: a probe that warms and cools by up to half a kelvin from frame to frame. */
    private record Stream(byte[] bytes, List<Double> truth) {
        static Stream of(String id, String sync, int frames, SplittableRandom random) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            List<Double> truth = new ArrayList<>();
            double celsius = random.nextDouble(5, 120);
            double junction = random.nextDouble(15, 40);
            for (int i = 0; i < frames; i++) {
                celsius += random.nextDouble(-0.5, 0.5);
                junction += random.nextDouble(-0.1, 0.1);
                bytes.writeBytes(HexFormat.of().parseHex(sync));
                truth.add(write(id, celsius, junction, bytes));
            }
            return new Stream(bytes.toByteArray(), truth);
        }

        private static double write(String id, double celsius, double junction, ByteArrayOutputStream out) {
            long quarters = Math.round(celsius * 4);
            long sixteenths = Math.round(celsius * 16);
            long fine = Math.round(celsius * 128);
            switch (id) {
                case "max31855" -> put(quarters << 18 | (Math.round(junction * 16) & 0xFFF) << 4, 4, out);
                case "max6675" -> put(quarters << 3, 2, out);
                case "mcp9600" -> put(sixteenths, 2, out);
                default -> put(Math.round(junction * 64) << 34 | fine << 13, 6, out);
            }
            double told =
                    id.equals("max31856") ? fine / 128.0 : id.equals("mcp9600") ? sixteenths / 16.0 : quarters / 4.0;
            return Math.round(told * 1e6) / 1e6;
        }

        private static void put(long frame, int bytes, ByteArrayOutputStream out) {
            for (int i = bytes - 1; i >= 0; i--) out.write((int) (frame >> 8 * i));
        }
    }

    @ParameterizedTest
    @CsvSource(textBlock = ALL)
    void aStreamThatMovesIsReadFromWhereverItIsEntered(String id, String sync, int frameBytes) {
        int size = frameBytes + sync.length() / 2;
        int held = sync.isEmpty() ? 3 : 1;
        for (long seed = 0; seed < 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Stream stream = Stream.of(id, sync, 200, random);
            int cut = random.nextInt(3 * size);
            byte[] rest = Arrays.copyOfRange(stream.bytes(), cut, stream.bytes().length);
            List<Double> tips = Decoding.tips(signals(id, sync, rest, random));
            assertEquals(
                    stream.truth().subList(200 - held - tips.size(), 200 - held),
                    tips,
                    "seed " + seed + ", entered at byte " + cut);
            assertTrue(tips.size() >= 150, "seed " + seed + " read only " + tips.size());
        }
    }

    @ParameterizedTest
    @CsvSource(textBlock = ALL)
    void lostAddedAndSpoiledBytesNeverMakeATemperature(String id, String sync, int frameBytes) {
        int wrong = 0;
        int read = 0;
        for (long seed = 0; seed < 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Stream stream = Stream.of(id, sync, 300, random);
            ByteArrayOutputStream spoiled = new ByteArrayOutputStream();
            int quiet = 0; // a byte lost and one added within a frame are a byte changed, which nobody can notice
            for (byte b : stream.bytes()) {
                int luck = quiet-- > 0 ? 2 : random.nextInt(100);
                if (luck < 2) quiet = 50;
                if (luck != 0) spoiled.write(b);
                if (luck == 1) spoiled.write(random.nextInt(256));
            }
            Set<Double> truth = new HashSet<>(stream.truth());
            List<Signal> signals = signals(id, sync, spoiled.toByteArray(), random);
            for (double tip : Decoding.tips(signals)) {
                read++;
                if (!truth.contains(tip)) wrong++;
            }
        }
        assertTrue(read > 3000, "read " + read);
        assertEquals(0, wrong, "of " + read);
    }

    @ParameterizedTest
    @CsvSource(textBlock = ALL)
    void everyByteIsInOneSignal(String id, String sync, int frameBytes) {
        int size = frameBytes + sync.length() / 2;
        for (long seed = 0; seed < 200; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            byte[] noise = new byte[random.nextInt(400)];
            random.nextBytes(noise);
            Stream stream = Stream.of(id, sync, 60, random);
            ByteArrayOutputStream all = new ByteArrayOutputStream();
            all.writeBytes(noise);
            all.writeBytes(stream.bytes());
            int told = 0;
            for (Signal signal : signals(id, sync, all.toByteArray(), random))
                told += signal instanceof Signal.Unreadable u ? u.bytes() : size;
            assertTrue(told <= all.size() && told >= all.size() - 9 * size, told + " of " + all.size());
        }
    }

    @Test
    void whatStandsStillAndCouldBeginInTwoPlacesIsUnreadable() {
        // 25.00 with 25.00 at the junction, to the last bit: read one byte later it is an open circuit
        byte[] still = repeated("01901900", 500);
        assertTrue(signals("max31855", "", still, new SplittableRandom(1)).stream()
                .allMatch(Signal.Unreadable.class::isInstance));
        assertTrue(signals("max31855", "", new byte[2000], new SplittableRandom(1)).stream()
                .allMatch(Signal.Unreadable.class::isInstance));
    }

    @ParameterizedTest
    @CsvSource(textBlock = ALL)
    void nothingThatArrivesMakesItThrowOrReadNoise(String id, String sync, int frameBytes) {
        SplittableRandom random = new SplittableRandom(7);
        byte[] noise = new byte[1_000_000];
        random.nextBytes(noise);
        List<Double> tips = Decoding.tips(signals(id, sync, noise, random));
        assertEquals(List.of(), tips);
    }

    private static byte[] repeated(String frame, int times) {
        return HexFormat.of().parseHex(frame.repeat(times));
    }

    private static List<Signal> signals(String id, String sync, byte[] bytes, SplittableRandom random) {
        Map<String, String> settings =
                sync.isEmpty() ? Map.of("form", "binary") : Map.of("form", "binary", "sync", sync);
        ProbeProtocol.Decoder decoder =
                ChipStoriesTest.set(ChipStoriesTest.protocol(id), settings).newDecoder();
        List<Signal> signals = new ArrayList<>();
        for (int from = 0; from < bytes.length; ) {
            int to = Math.min(bytes.length, from + 1 + random.nextInt(50));
            decoder.feed(Arrays.copyOfRange(bytes, from, to), signals::add);
            from = to;
        }
        return signals;
    }
}
