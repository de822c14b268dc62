package fifthform.curves.network;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Networks for tests that answer the same whatever they hear, so that it can be seen what is made of an answer. */
public final class SameAnswer {
    private SameAnswer() {}

    /**
     * A network of zeros with these answers.
     *
     * @param answers in the order of {@link Network#OUTPUTS}
     */
    public static Network network(List<Double> answers) {
        List<String> text = new ArrayList<>(List.of("network"));
        for (String gate : List.of("z", "r", "n")) {
            zeros(text, "gru1.W" + gate, 1, Blocks.INPUTS);
            zeros(text, "gru1.U" + gate, 1, 1);
            zeros(text, "gru1.b" + gate, 1, 1);
        }
        zeros(text, "gru1.cn", 1, 1);
        zeros(text, "dense.W", 1, 1);
        zeros(text, "dense.b", 1, 1);
        zeros(text, "out.W", Network.OUTPUTS, 1);
        text.add("out.b 1 " + answers.size());
        text.add(String.join(" ", answers.stream().map(String::valueOf).toList()));
        return Network.of(text, "same answer");
    }

    private static void zeros(List<String> text, String name, int rows, int columns) {
        text.add(name + " " + rows + " " + columns);
        String row = String.join(" ", Collections.nCopies(columns, "0"));
        for (int r = 0; r < rows; r++) text.add(row);
    }
}
