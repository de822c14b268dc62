package fifthform.probe.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.probe.Signal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A link may be opened in the middle of a line; half a number must never pass for a temperature. */
class FirstLineTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "%2$.2f",
                "%2$.1f",
                "%2$.0f",
                "%2$.2f C",
                "T: %2$.2f C",
                "Temp = %2$.2f °C",
                "%1$d,%2$.2f",
                "%1$d;%2$.2f;24.50",
                "T1:%2$.2f T2:%2$.2f",
                "0: %2$.2f\t1: %2$.2f",
                "{\"ms\":%1$d,\"tc\":%2$.2f}",
                "cj=24.50 tc=%2$.2f"
            })
    void whereverTheLinkBeginsNoWrongNumberComesOut(String format) {
        for (long seed = 0; seed < 200; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            List<Double> truth = new ArrayList<>();
            String tape = tape(format, random, truth);
            byte[] bytes = tape.getBytes(StandardCharsets.UTF_8);
            int cut = random.nextInt(tape.indexOf('\n') + 1);
            byte[] rest = Arrays.copyOfRange(bytes, cut, bytes.length);
            for (double tip : Decoding.tips(Decoding.bytes(rest)))
                assertTrue(truth.contains(tip), "seed " + seed + ", cut " + cut + ": " + tip + " of\n" + tape);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"%2$.2f", "T: %2$.2f C", "%1$d,%2$.2f", "T1:%2$.2f T2:%2$.2f"})
    void aLinkThatBeginsWithALineLosesNothing(String format) {
        for (long seed = 0; seed < 200; seed++) {
            List<Double> truth = new ArrayList<>();
            String tape = tape(format, new SplittableRandom(seed), truth);
            List<Double> tips = Decoding.tips(Decoding.lines(tape.strip()));
            int perLine = format.contains("T2") ? 2 : 1;
            assertEquals(truth.size() * perLine, tips.size(), "seed " + seed + " of\n" + tape);
        }
    }

    /** Twelve lines of a probe that warms or cools by up to half a kelvin from line to line. */
    private static String tape(String format, SplittableRandom random, List<Double> truth) {
        StringBuilder tape = new StringBuilder();
        double celsius = random.nextDouble(11, 99);
        long millis = random.nextLong(1_000, 5_000_000);
        int decimals = format.contains("%2$.0f") ? 0 : format.contains("%2$.1f") ? 1 : 2;
        for (int i = 0; i < 12; i++) {
            celsius += random.nextDouble(-0.5, 0.5);
            millis += random.nextLong(950, 1050);
            tape.append(String.format(Locale.ROOT, format, millis, celsius)).append('\n');
            truth.add(Double.parseDouble(String.format(Locale.ROOT, "%." + decimals + "f", celsius)));
        }
        return tape.toString();
    }

    @Test
    void aTornNumberIsUnreadable() {
        List<Signal> signals = Decoding.lines("1.25", "31.50", "31.75");
        assertEquals(new Signal.Unreadable(4), signals.get(0));
        assertEquals(List.of(31.5, 31.75), Decoding.tips(signals));
    }

    @Test
    void aLostMinusIsNoticed() {
        assertEquals(List.of(-0.5), Decoding.tips(Decoding.lines("0.25", "-0.50")));
    }

    @Test
    void behindAnyLineEndLinesAreWhole() {
        assertEquals(List.of(1.25, 31.5), Decoding.tips(Decoding.lines("", "1.25", "31.50")));
        assertEquals(List.of(1.25, 31.5), Decoding.tips(Decoding.lines("hello", "1.25", "31.50")));
    }
}
