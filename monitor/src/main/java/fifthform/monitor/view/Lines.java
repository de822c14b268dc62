package fifthform.monitor.view;

import fifthform.monitor.model.Pieces;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Breaks words into lines of about equal width. */
final class Lines {
    private Lines() {}

    /** At most {@code most} lines whose widest is as narrow as a break at spaces allows. */
    static List<String> balanced(String words, int most, ToDoubleFunction<String> width) {
        if (most <= 1 || !words.contains(" ")) return List.of(words);
        double low = 0;
        double high = width.applyAsDouble(words);
        List<String> best = List.of(words);
        for (int halving = 0; halving < 12; halving++) {
            double limit = (low + high) / 2;
            List<String> lines = greedy(words, limit, width);
            boolean fits = lines.size() <= most && lines.stream().allMatch(line -> width.applyAsDouble(line) <= limit);
            if (fits) {
                best = lines;
                high = limit;
            } else {
                low = limit;
            }
        }
        return best;
    }

    private static List<String> greedy(String words, double limit, ToDoubleFunction<String> width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : Pieces.of(words)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width.applyAsDouble(longer) > limit) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }
}
