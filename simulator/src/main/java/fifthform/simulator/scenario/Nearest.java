package fifthform.simulator.scenario;

import java.util.List;

/** The known word that is likest to what somebody wrote. */
final class Nearest {
    private Nearest() {}

    /** The first of those with the fewest letters to insert, drop or change (Levenshtein 1966). */
    static String of(String written, List<String> known) {
        String nearest = known.get(0);
        for (String word : known) if (distance(written, word) < distance(written, nearest)) nearest = word;
        return nearest;
    }

    static int distance(String a, String b) {
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) above[j] = j;
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int changed = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(changed, 1 + Math.min(above[j], row[j - 1]));
            }
            above = row;
        }
        return above[b.length()];
    }
}
