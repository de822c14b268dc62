package fifthform.probe.protocol;

import fifthform.curves.check.Nearest;
import fifthform.curves.check.Problem;
import fifthform.probe.Spoken;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Reads a protocol's settings one by one and collects every problem, each with the setting, its value and its range. */
final class SettingReader {
    /** Settings of the serial line fit every protocol and are read elsewhere; here they only help to guess what was meant. */
    private static final List<String> OF_THE_LINE = Spoken.LINE_SETTINGS;

    private final String protocol;
    private final Map<String, String> given;
    private final List<Problem> problems = new ArrayList<>();

    /** @param known names of all settings that the protocol has */
    SettingReader(String protocol, Map<String, String> given, List<String> known) {
        this.protocol = protocol;
        this.given = given;
        given.keySet().stream().filter(name -> !known.contains(name)).sorted().forEach(name -> unknown(name, known));
    }

    private void unknown(String name, List<String> known) {
        List<String> all = new ArrayList<>(known);
        all.addAll(OF_THE_LINE);
        String meant =
                Nearest.to(name, all).map(near -> "Did you mean " + near + "? ").orElse("");
        refuse(
                name,
                "The protocol " + protocol + " has no setting " + name + ".",
                meant + "Known are: " + String.join(", ", all) + ".");
    }

    boolean has(String name) {
        return given.containsKey(name);
    }

    /** Whole number, decimal or hexadecimal with {@code 0x}. */
    long whole(String name, long low, long high, long usual) {
        if (!has(name)) return usual;
        return wholes(name, low, high).stream().findFirst().orElse(usual);
    }

    /** Whole numbers with {@code /} between them; empty where one is refused. */
    List<Long> wholes(String name, long low, long high) {
        List<Long> values = new ArrayList<>();
        for (String text : given.get(name).split("/", -1)) {
            Optional<Long> value = whole(text.strip()).filter(number -> number >= low && number <= high);
            if (value.isEmpty()) {
                range(name, text, "a whole number from " + low + " to " + high);
                return List.of();
            }
            values.add(value.get());
        }
        return values;
    }

    private static Optional<Long> whole(String text) {
        try {
            return Optional.of(text.matches("0[xX][0-9a-fA-F]{1,8}") ? Long.decode(text) : Long.valueOf(text));
        } catch (NumberFormatException e) {
            return Optional.empty(); // the caller says what was expected instead
        }
    }

    double number(String name, double usual, String range, Predicate<Double> fits) {
        if (!has(name)) return usual;
        Optional<Double> value = Written.of(given.get(name)).map(Written::value).filter(fits);
        if (value.isEmpty()) range(name, given.get(name), range);
        return value.orElse(usual);
    }

    Duration seconds(String name, double low, double high, double usual) {
        double seconds = number(name, usual, low + " to " + high + " seconds", s -> s >= low && s <= high);
        return Duration.ofMillis(Math.round(seconds * 1000));
    }

    /** One of some words. */
    String word(String name, List<String> words, String usual) {
        if (!has(name)) return usual;
        String word = given.get(name);
        if (words.contains(word)) return word;
        String meant = Nearest.to(word, words)
                .map(near -> " Did you mean " + near + "?")
                .orElse("");
        refuse(
                name,
                name + " is " + word + ", but must be one of: " + String.join(", ", words) + ".",
                "Change or leave out " + name + "." + meant);
        return usual;
    }

    Unit unit(Unit usual) {
        return Unit.ofTemperature(word("in", List.of("c", "f", "k"), "")).orElse(usual);
    }

    void range(String name, String value, String range) {
        refuse(name, name + " is " + value + ", but must be " + range + ".", "Change or leave out " + name + ".");
    }

    void refuse(String name, String what, String whatToDo) {
        String where = "--talk " + protocol + ":" + name + (has(name) ? "=" + given.get(name) : "");
        problems.add(new Problem(where, what + " Nothing was done.", whatToDo));
    }

    String text(String name, String usual) {
        return given.getOrDefault(name, usual);
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }
}
