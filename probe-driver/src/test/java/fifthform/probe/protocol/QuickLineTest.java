package fifthform.probe.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.probe.Signal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The quick way must give to the bit what the full grammar gives, whatever comes. */
class QuickLineTest {
    /** Patterns whose {@code #} become numbers; with {@code ~} as well, which become digits of labels and codes. */
    private static final List<String> SHAPES = List.of(
            "#",
            "T: # C",
            "T: # °C",
            "tc=# cj=#",
            "T~:# T~:#",
            "bowl: # bath: #",
            "#;#;#",
            "#,#",
            "# #",
            "{\"tc\":#,\"cj\":#}",
            "{\"t~\":#,\"n\":~}",
            "cj=#",
            "temp: # F",
            "# C / # F",
            "tc=# fault=~",
            "{\"tc\":#,\"fault\":~}",
            "~: #\t~: #",
            "room: # tip: #",
            "T: # C (# F)",
            "Temp (F): #",
            "nan",
            "tc=nan cj=#",
            "OPEN",
            "time,tc,cj",
            "tc;cj",
            "foo: # C",
            "target: # C tc: #",
            "{\"a\":{\"tc\":#},\"b\":{\"tc\":\"#\"}}",
            "#e~",
            "T#: #",
            "raw # temp #",
            "#%",
            "T=#*C");

    private static final List<String> NUMBERS = List.of(
            "0",
            "0.0",
            "0.00",
            "-0.25",
            "31.25",
            "31.2",
            "031.2",
            "007",
            "+31.5",
            ".5",
            "31,25",
            "1e1",
            "12345",
            "99999",
            "1234567890123456",
            "0.1234567890123456",
            "31.123456789012345678901234",
            "150.01",
            "-20.01",
            "24.5");

    @Test
    void bothWaysGiveTheSameSignals() {
        compare(Line::of, 200_000, 20260302);
        compare(Line::ofJson, 50_000, 20260303);
    }

    private static void compare(BiFunction<String, Integer, Line> grammar, int lines, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        LineDecoder quick = new LineDecoder(grammar, LineDecoder.Ways.QUICK_OR_FULL);
        LineDecoder full = new LineDecoder(grammar, LineDecoder.Ways.FULL_ONLY);
        List<String> history = new ArrayList<>();
        String shape = "#";
        long readings = 0;
        for (int i = 0; i < lines; i++) {
            if (i % 500 == 0) {
                quick = new LineDecoder(grammar, LineDecoder.Ways.QUICK_OR_FULL);
                full = new LineDecoder(grammar, LineDecoder.Ways.FULL_ONLY);
                history.clear();
            }
            if (random.nextInt(6) == 0) shape = SHAPES.get(random.nextInt(SHAPES.size()));
            String line = line(shape, random);
            history.add(line);
            byte[] bytes = (line + "\n").getBytes(StandardCharsets.UTF_8);
            List<Signal> quickly = new ArrayList<>();
            List<Signal> fully = new ArrayList<>();
            quick.feed(bytes, quickly::add);
            full.feed(bytes, fully::add);
            assertEquals(
                    fully, quickly, () -> "after " + history.subList(Math.max(0, history.size() - 12), history.size()));
            readings += fully.stream().filter(Signal.Measured.class::isInstance).count();
        }
        assertTrue(readings > lines / 20, "only " + readings);
    }

    private static String line(String shape, SplittableRandom random) {
        StringBuilder line = new StringBuilder();
        for (char c : shape.toCharArray()) {
            if (c == '#') line.append(number(random));
            else if (c == '~') line.append(random.nextInt(3) == 0 ? random.nextInt(20) : 1);
            else line.append(c);
        }
        if (random.nextInt(40) == 0) line.insert(random.nextInt(line.length() + 1), (char) random.nextInt(32, 127));
        if (random.nextInt(40) == 0) line.deleteCharAt(random.nextInt(line.length()));
        return line.toString();
    }

    private static String number(SplittableRandom random) {
        return switch (random.nextInt(8)) {
            case 0 -> NUMBERS.get(random.nextInt(NUMBERS.size()));
            case 1 -> String.valueOf(random.nextInt(20, 200));
            case 2 -> String.format(java.util.Locale.ROOT, "%.1f", random.nextDouble(-30, 170));
            default -> String.format(java.util.Locale.ROOT, "%.2f", random.nextDouble(5, 99));
        };
    }

    /** Else the test above would compare the full way with itself. */
    @ParameterizedTest
    @ValueSource(strings = {"31.25", "T: 31.25 °C", "tc=31.25 cj=24.50", "{\"tc\":31.25,\"cj\":24.5}", "1;31.25;24.5"})
    void theUsualLinesHaveAShapeThatOthersFit(String line) {
        byte[] first = line.getBytes(StandardCharsets.UTF_8);
        byte[] other = line.replace("31.25", "7.5").getBytes(StandardCharsets.UTF_8);
        String text = WireText.of(first, 0, first.length, WireText.Comma.MAY_BE_DECIMAL);
        QuickLine shape = QuickLine.of(first, 0, first.length, Line.of(text, first.length))
                .orElseThrow();
        assertTrue(shape.fits(other, 0, other.length));
    }
}
