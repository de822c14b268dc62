package fifthform.simulator.training;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The text, number by number. */
class WeightWriterTest {
    @Test
    void a_matrix_has_a_row_for_each_unit_and_every_digit_of_its_numbers() {
        Parameters weights = Parameters.random(new Shape(1, 2, 3), 5);
        weights.recurrent.get(0).bias[0][3] = 0.1f;
        List<String> lines = WeightWriter.lines(Map.of("data", "invented"), List.of(weights, weights));
        assertEquals("# data = invented", lines.get(0));
        assertEquals("network", lines.get(1));
        assertEquals(2, lines.stream().filter("network"::equals).count());
        float[][] input = weights.recurrent.get(0).input;
        float[][] memory = weights.recurrent.get(0).memory;
        String[] secondUnit = row(lines, "gru1.Wn 2 26", 1);
        for (int i = 0; i < 26; i++) assertEquals(input[i][4 + 1], Float.parseFloat(secondUnit[i]));
        String[] firstUnit = row(lines, "gru1.Ur 2 2", 0);
        for (int i = 0; i < 2; i++) assertEquals(memory[i][2], Float.parseFloat(firstUnit[i]));
        assertEquals("0.1", row(lines, "gru1.br 1 2", 0)[1]);
        assertEquals(3, row(lines, "out.W 14 3", 13).length);
        assertEquals(14, row(lines, "out.b 1 14", 0).length);
    }

    private static String[] row(List<String> lines, String head, int row) {
        return lines.get(lines.indexOf(head) + 1 + row).split(" ");
    }
}
