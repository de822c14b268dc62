package fifthform.simulator.training;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Weights as the text that {@code curves.network} reads: provenance, then the matrices of each network, a row for each
 * unit. Numbers are written with as many digits as tell one {@code float} from the next.
 */
final class WeightWriter {
    private static final String GATES = "zrn";

    private final List<String> lines = new ArrayList<>();

    private WeightWriter() {}

    /**
     * The whole text.
     *
     * @param provenance how the weights came about, in this order
     * @param networks whose answers are to be averaged
     */
    static List<String> lines(Map<String, String> provenance, List<Parameters> networks) {
        WeightWriter writer = new WeightWriter();
        provenance.forEach((key, value) -> writer.lines.add("# " + key + " = " + value));
        networks.forEach(writer::network);
        return List.copyOf(writer.lines);
    }

    /** Writes beside the file first, so that whoever is cut off leaves the old file whole. */
    static void write(Path file, List<String> lines) throws IOException {
        Path target = file.toAbsolutePath();
        Files.createDirectories(target.getParent());
        Path beside = target.resolveSibling(target.getFileName() + ".part");
        Files.write(beside, lines, StandardCharsets.UTF_8);
        Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
    }

    private void network(Parameters weights) {
        lines.add("network");
        for (int i = 0; i < weights.recurrent.size(); i++) gru("gru" + (i + 1) + ".", weights.recurrent.get(i));
        dense("dense.", weights.dense);
        dense("out.", weights.out);
    }

    private void gru(String name, GruWeights w) {
        int units = w.units();
        for (int g = 0; g < GATES.length(); g++) {
            char gate = GATES.charAt(g);
            matrix(name + "W" + gate, w.input, g * units, units);
            bias(name + "b" + gate, w.bias[0], g * units, units);
            matrix(name + "U" + gate, w.memory, g * units, units);
        }
        bias(name + "cn", w.memoryBias[0], 0, units);
    }

    private void dense(String name, DenseWeights w) {
        matrix(name + "W", w.input, 0, w.units());
        bias(name + "b", w.bias[0], 0, w.units());
    }

    /** Here a row is an input, there it is a unit. */
    private void matrix(String name, float[][] m, int from, int units) {
        lines.add(name + " " + units + " " + m.length);
        for (int j = 0; j < units; j++) {
            StringBuilder row = new StringBuilder();
            for (float[] input : m) row.append(' ').append(input[from + j]);
            lines.add(row.substring(1));
        }
    }

    private void bias(String name, float[] b, int from, int units) {
        lines.add(name + " 1 " + units);
        StringBuilder row = new StringBuilder();
        for (int j = 0; j < units; j++) row.append(' ').append(b[from + j]);
        lines.add(row.substring(1));
    }
}
