package fifthform.probe.protocol;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What stands before a number, cut into lower-case words: {@code TempF} is {@code temp f}, {@code T1} is {@code t} with
 * index 1. The words are those that hobby adapters use for a thermocouple's tip and its cold junction (common practice, no
 * source).
 */
record Label(List<String> words, OptionalInt index) {
    /** What a label says about its number. */
    enum Meaning {
        /** Nothing stands there: a column. */
        NONE,
        TIP,
        JUNCTION,
        FAULT_CODE,
        /** Humidity, a target, a counter: not what the probe measures. */
        OTHER
    }

    /** No adapter on a stove has more channels. */
    static final int HIGHEST_CHANNEL = 15;

    static final Label NONE = new Label(List.of(), OptionalInt.empty());

    private static final Set<String> FAULT = Set.of("fault", "faults", "error", "err", "status");
    private static final Set<String> JUNCTION = Set.of("internal", "cold", "ref", "reference", "ambient", "cj");
    private static final Set<String> TIP =
            Set.of("t", "temp", "temperature", "tc", "tip", "thermocouple", "probe", "hot", "external");
    private static final Set<String> CHANNEL = Set.of("ch", "channel");
    private static final Set<String> NOT_MEASURED = Set.of(
            "set",
            "setpoint",
            "target",
            "goal",
            "max",
            "min",
            "limit",
            "alarm",
            "offset",
            "delta",
            "diff",
            "rate",
            "heater",
            "board",
            "room");

    Label {
        words = List.copyOf(words);
    }

    static Label of(String text) {
        List<String> words = new ArrayList<>();
        OptionalInt index = OptionalInt.empty();
        boolean odd = false;
        for (String word : split(text)) {
            if (!Character.isDigit(word.charAt(0))) {
                words.add(word);
                continue;
            }
            odd |= index.isPresent() || !isChannel(word);
            index = odd ? index : OptionalInt.of(Integer.parseInt(word));
        }
        if (words.contains("type")) words.remove("k"); // "type K" is an alloy, not a unit
        return odd ? new Label(List.of("?"), OptionalInt.empty()) : new Label(words, index);
    }

    static boolean isChannel(String digits) {
        return digits.matches("\\d{1,2}") && Integer.parseInt(digits) <= HIGHEST_CHANNEL;
    }

    private static List<String> split(String text) {
        String spaced = text.replaceAll("([a-z])([A-Z])", "$1 $2")
                .replaceAll("([A-Za-z])(\\d)", "$1 $2")
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\b(temp|temperature|tip|tc)_?([cfk])\\b", "$1 $2");
        List<String> words = new ArrayList<>(List.of(spaced.split("[^a-z0-9]+")));
        words.removeIf(String::isEmpty);
        return words;
    }

    Meaning meaning() {
        if (hasAny(FAULT)) return Meaning.FAULT_CODE;
        if (hasAny(NOT_MEASURED)) return Meaning.OTHER;
        if (hasAny(JUNCTION)) return Meaning.JUNCTION;
        if (hasAny(TIP)) return Meaning.TIP;
        if (words.isEmpty() || CHANNEL.containsAll(words)) return index.isPresent() ? Meaning.TIP : unmarked();
        boolean onlyUnits =
                words.stream().allMatch(word -> Unit.ofTemperature(word).isPresent());
        return onlyUnits ? Meaning.TIP : Meaning.OTHER;
    }

    private Meaning unmarked() {
        return words.isEmpty() ? Meaning.NONE : Meaning.OTHER;
    }

    private boolean hasAny(Set<String> these) {
        return words.stream().anyMatch(these::contains);
    }

    /** A unit named within the label. */
    Optional<Unit> unit() {
        return words.stream().flatMap(word -> Unit.ofTemperature(word).stream()).findFirst();
    }

    int channel() {
        return index.orElse(0);
    }
}
