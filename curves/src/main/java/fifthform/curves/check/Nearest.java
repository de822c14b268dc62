package fifthform.curves.check;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The known word that a mistyped one most likely stands for. */
public final class Nearest {
    private Nearest() {}

    /**
     * The known word with the smallest edit distance to {@code word}, letter case aside; the first of several. Empty
     * where more than half of the word would have to be changed: such a guess only confuses.
     */
    public static Optional<String> to(String word, Collection<String> known) {
        String typed = word.toLowerCase(Locale.ROOT);
        Optional<String> best = Optional.empty();
        int least = Math.max(2, (typed.length() + 1) / 2) + 1;
        for (String candidate : known) {
            int distance = distance(typed, candidate.toLowerCase(Locale.ROOT));
            if (distance < least) {
                least = distance;
                best = Optional.of(candidate);
            }
        }
        return best;
    }

    /** Fewest insertions, deletions and replacements that turn one word into the other (Levenshtein 1965; from memory). */
    static int distance(String one, String other) {
        int[] above = new int[other.length() + 1];
        for (int column = 0; column <= other.length(); column++) above[column] = column;
        for (int row = 1; row <= one.length(); row++) {
            int[] current = new int[other.length() + 1];
            current[0] = row;
            for (int column = 1; column <= other.length(); column++) {
                int replaced = above[column - 1] + (one.charAt(row - 1) == other.charAt(column - 1) ? 0 : 1);
                current[column] = Math.min(replaced, 1 + Math.min(above[column], current[column - 1]));
            }
            above = current;
        }
        return above[other.length()];
    }
}
