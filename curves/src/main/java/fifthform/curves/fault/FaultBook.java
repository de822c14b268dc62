package fifthform.curves.fault;

import fifthform.curves.constants.PackedTable;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What is known of faults: each cause with its remedy and its source, each clue in words, and how often a clue goes with a
 * cause. The rows follow this project's table of faults; how often is our own choice, since nobody has counted it.
 */
public final class FaultBook {
    /** As packed. */
    public static final FaultBook PACKED = new FaultBook();

    /** The row of a clue that holds where a cause has nothing to do with it. */
    private static final String ANY = "any";

    private final Map<Fault, Entry> faults = new EnumMap<>(Fault.class);
    private final Map<Clue, Words> clues = new EnumMap<>(Clue.class);
    private final Map<Clue, Double> usual = new EnumMap<>(Clue.class);
    private final Map<Clue, Map<Fault, Double>> chances = new EnumMap<>(Clue.class);

    /**
     * A cause.
     *
     * @param name in words
     * @param often how often it is to be expected, beside the others; without unit
     * @param next what to do in the next batch
     * @param bars what to do with these bars
     * @param source where it comes from
     */
    public record Entry(String name, double often, String next, String bars, String source) {
        public Entry {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(next, "next");
            Objects.requireNonNull(bars, "bars");
            Objects.requireNonNull(source, "source");
        }
    }

    /**
     * A clue.
     *
     * @param there what is said where it is so
     * @param notThere what is said where it is not
     * @param question what the maker is asked; empty where nobody is asked
     */
    public record Words(String there, String notThere, String question) {
        public Words {
            Objects.requireNonNull(there, "there");
            Objects.requireNonNull(notThere, "notThere");
            Objects.requireNonNull(question, "question");
        }
    }

    private FaultBook() {
        PackedTable causes = PackedTable.read("fault/causes.csv");
        for (Fault fault : Fault.values()) {
            List<String> row = one(causes, "fault", fault.word());
            faults.put(
                    fault,
                    new Entry(
                            causes.text(row, "name"),
                            causes.number(row, "often"),
                            causes.text(row, "next"),
                            causes.text(row, "bars"),
                            causes.text(row, "source")));
        }
        PackedTable words = PackedTable.read("fault/clues.csv");
        PackedTable odds = PackedTable.read("fault/chances.csv");
        for (Clue clue : Clue.values()) {
            List<String> row = one(words, "clue", clue.word());
            clues.put(
                    clue,
                    new Words(words.text(row, "there"), words.text(row, "not_there"), words.text(row, "question")));
            chances(clue, odds.where("clue", clue.word()));
        }
    }

    private void chances(Clue clue, PackedTable rows) {
        Map<Fault, Double> own = new EnumMap<>(Fault.class);
        for (List<String> row : rows.rows()) {
            double chance = rows.number(row, "chance");
            if (!(chance > 0 && chance < 1)) throw new IllegalStateException(clue + " has a chance of " + chance);
            if (rows.text(row, "fault").equals(ANY)) usual.put(clue, chance);
            else own.put(fault(rows.text(row, "fault")), chance);
        }
        if (!usual.containsKey(clue)) throw new IllegalStateException(clue + " has no usual chance");
        chances.put(clue, own);
    }

    private static List<String> one(PackedTable table, String column, String word) {
        List<List<String>> rows = table.where(column, word).rows();
        if (rows.size() != 1) throw new IllegalStateException(rows.size() + " rows of " + word);
        return rows.get(0);
    }

    private static Fault fault(String word) {
        for (Fault fault : Fault.values()) if (fault.word().equals(word)) return fault;
        throw new IllegalStateException("no fault is called " + word);
    }

    public Entry of(Fault fault) {
        return faults.get(fault);
    }

    public Words of(Clue clue) {
        return clues.get(clue);
    }

    /** How likely the clue is where this is the cause, 0 to 1. */
    double chance(Clue clue, Fault fault) {
        return chances.get(clue).getOrDefault(fault, usual.get(clue));
    }

    /** How likely it is on bars of which nothing is wrong, or where a cause has nothing to do with it. */
    double usual(Clue clue) {
        return usual.get(clue);
    }
}
