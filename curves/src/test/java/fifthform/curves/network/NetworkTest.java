package fifthform.curves.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.MakerAction.Place;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The network's arithmetic, against a pocket calculator and against another program. */
class NetworkTest {
    private static List<String> resource(String name) throws IOException {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(NetworkTest.class.getResourceAsStream("/network/" + name), name),
                StandardCharsets.UTF_8))) {
            return in.lines().toList();
        }
    }

    private static double[] numbers(String line) {
        return Arrays.stream(line.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    /** One unit, one tanh, one weight from the first input each; every answer is the tanh. */
    private static List<String> oneUnit() {
        List<String> text = new ArrayList<>(List.of("# taught = nothing", "network"));
        String first = "1" + " 0".repeat(Blocks.INPUTS - 1);
        for (String gate : List.of("z", "r", "n")) {
            text.addAll(List.of("gru1.W" + gate + " 1 26", first, "gru1.U" + gate + " 1 1", "0.5"));
        }
        text.addAll(List.of("gru1.bz 1 1", "0.1", "gru1.br 1 1", "0.2", "gru1.bn 1 1", "0.3", "gru1.cn 1 1", "0.4"));
        text.addAll(List.of("dense.W 1 1", "1", "dense.b 1 1", "0", "out.W 14 1"));
        for (int i = 0; i < 14; i++) text.add("1");
        text.addAll(List.of("out.b 1 14", "0" + " 0".repeat(13)));
        return text;
    }

    private static Moment moment(double first) {
        double[] inputs = new double[Blocks.INPUTS];
        inputs[0] = first;
        return new Moment(2, 31, 1, 31, inputs);
    }

    /** Two steps of one unit with x = 1 and x = −1, worked out with σ(x) = 1/(1 + e^−x) and five decimals. */
    @Test
    void one_unit_does_what_a_pocket_calculator_does() {
        Network network = Network.of(oneUnit(), "one unit");
        // z = σ(1.1) = 0.75026, r = σ(1.2) = 0.76852, n = tanh(1.3 + 0.76852·0.4) = tanh(1.60741) = 0.92273,
        // h = 0.24974·0.92273 = 0.23044.
        Network.Step first = network.step(network.nothing(), moment(1));
        assertEquals(0.23044, first.memory().units()[0], 2e-5);
        assertEquals(0.22645, first.guess().bulkKelvin(), 2e-5);
        // z = σ(−0.9 + 0.11522) = 0.31328, r = σ(−0.8 + 0.11522) = 0.33523,
        // n = tanh(−0.7 + 0.33523·(0.11522 + 0.4)) = tanh(−0.52728) = −0.48330,
        // h = 0.68672·(−0.48330) + 0.31328·0.23044 = −0.25970.
        Network.Step second = network.step(first.memory(), moment(-1));
        assertEquals(-0.25970, second.memory().units()[0], 2e-5);
        assertEquals(1.0 / 3, second.guess().fractionOf(Place.TABLE), 1e-12);
    }

    /** Two networks of other sizes, averaged, over twenty steps, as NumPy reckons them. */
    @Test
    void whole_networks_answer_as_another_program_says() throws IOException {
        Network network = Network.of(resource("untaught.txt"), "untaught");
        List<String> steps = resource("untaught-steps.txt");
        Memory memory = network.nothing();
        for (int i = 1; i < steps.size(); i += 2) {
            Network.Step step = network.step(memory, new Moment(2, 31, 1, 31, numbers(steps.get(i))));
            double[] wanted = numbers(steps.get(i + 1));
            Arrays.sort(wanted, 0, 5);
            Arrays.sort(wanted, 5, 10);
            assertPoints(Arrays.copyOfRange(wanted, 0, 5), step.guess().ifNow());
            assertPoints(Arrays.copyOfRange(wanted, 5, 10), step.guess().ifLater());
            assertEquals(wanted[13], step.guess().bulkKelvin(), 1e-12);
            double odds = step.guess().bathFraction() / step.guess().coldWaterFraction();
            assertEquals(Math.exp(wanted[10] - wanted[12]), odds, 1e-11);
            memory = step.memory();
        }
    }

    private static void assertPoints(double[] wanted, Points points) {
        assertEquals(wanted[0], points.fiveKelvin(), 1e-12);
        assertEquals(wanted[1], points.quarterKelvin(), 1e-12);
        assertEquals(wanted[2], points.halfKelvin(), 1e-12);
        assertEquals(wanted[3], points.threeQuartersKelvin(), 1e-12);
        assertEquals(wanted[4], points.ninetyFiveKelvin(), 1e-12);
    }

    /** The last bits, as JDK 17 made them: JDK 25 and every other machine must make the same. */
    @Test
    void the_last_bit_is_the_same_everywhere() throws IOException {
        Network network = Network.of(resource("untaught.txt"), "untaught");
        List<String> steps = resource("untaught-steps.txt");
        Memory memory = network.nothing();
        long bits = 0;
        for (int i = 1; i < steps.size(); i += 2) {
            Network.Step step = network.step(memory, new Moment(2, 31, 1, 31, numbers(steps.get(i))));
            memory = step.memory();
            bits = 31 * bits + Double.doubleToLongBits(step.guess().ifNow().ninetyFiveKelvin());
            bits = 31 * bits + Double.doubleToLongBits(step.guess().bathFraction());
        }
        assertEquals(0xe7b4e6377db9c72eL, bits, Long.toHexString(bits));
    }

    @Test
    void provenance_is_kept() {
        assertEquals(
                List.of("taught = nothing"), Network.of(oneUnit(), "one unit").provenance());
    }

    @Test
    void a_spoiled_file_says_what_is_wrong_and_where() {
        assertFault("weights holds no network", List.of("# taught = nothing"));
        assertFault("weights line 1 wants the line 'network' before the first matrix", List.of("out.b 1 14"));
        List<String> wide = oneUnit();
        wide.set(5, "0.5 0.5");
        assertFault("weights line 6 wants 1 numbers in a row of gru1.Uz, found 2", wide);
        assertFault("weights lacks the matrix gru1.bz", List.of("network", "gru1.Wz 1 1", "1"));
        List<String> text = oneUnit();
        text.set(5, "much");
        assertFault("weights line 6 wants a number, found 'much'", text);
        text.set(5, "NaN");
        assertFault("weights line 6 wants a finite number, found 'NaN'", text);
        List<String> cut = oneUnit();
        assertFault("weights line 43 ends within out.b", cut.subList(0, cut.size() - 1));
        List<String> more = oneUnit();
        more.addAll(List.of("gru3.Wz 1 1", "1"));
        assertTrue(fault(more).startsWith("weights holds matrices that no layer wants"));
        List<String> narrow = oneUnit();
        narrow.set(2, "gru1.Wz 1 25");
        narrow.set(3, "1" + " 0".repeat(24));
        assertFault("weights gru1.Wz must be 1 × 26, was 1 × 25", narrow);
        List<String> twice = oneUnit();
        twice.addAll(List.of("out.b 1 1", "1"));
        assertTrue(fault(twice).endsWith("has out.b a second time"));
    }

    private static void assertFault(String wanted, List<String> text) {
        assertEquals(wanted, fault(text));
    }

    private static String fault(List<String> text) {
        return assertThrows(IllegalArgumentException.class, () -> Network.of(text, "weights"))
                .getMessage();
    }
}
