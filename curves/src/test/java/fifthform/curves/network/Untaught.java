package fifthform.curves.network;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Networks as large as a trained one that were taught nothing: for what a step costs, not for what it says. */
public final class Untaught {
    private final SplittableRandom random = new SplittableRandom(5);
    private final List<String> text = new ArrayList<>();

    private Untaught() {}

    /** {@code members} networks of two layers of {@code units} and {@code dense} tanh, with random weights. */
    public static Network network(int members, int units, int dense) {
        Untaught untaught = new Untaught();
        for (int i = 0; i < members; i++) untaught.member(units, dense);
        return Network.of(untaught.text, "untaught");
    }

    private void member(int units, int dense) {
        text.add("network");
        int inputs = Blocks.INPUTS;
        for (int layer = 1; layer <= 2; layer++) {
            for (String gate : List.of("z", "r", "n")) {
                matrix("gru" + layer + ".W" + gate, units, inputs);
                matrix("gru" + layer + ".b" + gate, 1, units);
                matrix("gru" + layer + ".U" + gate, units, units);
            }
            matrix("gru" + layer + ".cn", 1, units);
            inputs = units;
        }
        matrix("dense.W", dense, units);
        matrix("dense.b", 1, dense);
        matrix("out.W", Network.OUTPUTS, dense);
        matrix("out.b", 1, Network.OUTPUTS);
    }

    private void matrix(String name, int rows, int columns) {
        text.add(name + " " + rows + " " + columns);
        for (int r = 0; r < rows; r++) {
            StringBuilder row = new StringBuilder();
            for (int c = 0; c < columns; c++) row.append(c == 0 ? "" : " ").append(random.nextDouble(-0.2, 0.2));
            text.add(row.toString());
        }
    }
}
