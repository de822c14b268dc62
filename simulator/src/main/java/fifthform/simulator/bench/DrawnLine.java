package fifthform.simulator.bench;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * One line of a {@link Fleet}: a key of a scenario and from what its value is drawn.
 *
 * @param number where it stands
 * @param key the scenario's key
 * @param onlyIf the word that another key must have been drawn as; a line without it counts where no line with one does
 * @param distribution of the value
 * @param unit as a scenario writes it; empty for words and bare numbers
 * @param source where the distribution comes from, or that it is invented
 */
record DrawnLine(
        int number, String key, Optional<Condition> onlyIf, Distribution distribution, String unit, String source) {
    /** Another key drawn as this word. */
    record Condition(String key, String word) {
        boolean holds(Map<String, String> drawn) {
            return word.equals(drawn.get(key));
        }
    }

    DrawnLine {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(onlyIf, "onlyIf");
        Objects.requireNonNull(distribution, "distribution");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(source, "source");
    }

    String written(String value) {
        return unit.isEmpty() ? key + " = " + value : key + " = " + value + " " + unit;
    }
}
