package fifthform.probe.protocol;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What stands before a number, cut into lower-case words: {@code TempF} is {@code temp f}, {@code T1} is {@code t} with
 * index 1, {@code bowl temp} is a tip named {@code bowl}. {@link Vocabulary} has the words.
 *
 * @param words lower case
 * @param index the number in it, where there is one that can be a channel
 * @param meaning what the label says about its number
 * @param name the words that say whose temperature it is, with the index; empty where none do
 * @param unit a unit named within the label
 */
record Label(List<String> words, OptionalInt index, Meaning meaning, String name, Optional<Unit> unit) {
    /** What a label says about its number. */
    enum Meaning {
        /** Nothing stands there: a column. */
        NONE,
        TIP,
        /** A tip where another one is on the same line: the room. */
        TIP_BESIDES,
        JUNCTION,
        FAULT_CODE,
        /** A word that nobody knows: a tip if a unit of temperature stands beside its number. */
        OTHER,
        /** Humidity, a target, a counter: never what the probe measures. */
        NOT_MEASURED
    }

    /** No adapter on a stove has more channels. */
    static final int HIGHEST_CHANNEL = 15;

    static final Label NONE = known(List.of(), OptionalInt.empty());

    static Label channel(int index) {
        return known(List.of(), OptionalInt.of(index));
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
        return odd ? known(List.of("?"), OptionalInt.empty()) : known(List.copyOf(words), index);
    }

    private static Label known(List<String> words, OptionalInt index) {
        String whose =
                words.stream().filter(word -> !Vocabulary.isOfTheProbe(word)).collect(Collectors.joining(" "));
        String name = whose.isEmpty() || index.isEmpty() ? whose : whose + " " + index.getAsInt();
        Optional<Unit> unit = words.stream()
                .flatMap(word -> Unit.ofTemperature(word).stream())
                .findFirst();
        return new Label(words, index, meaning(words, index), name, unit);
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

    private static Meaning meaning(List<String> words, OptionalInt index) {
        if (hasAny(words, Vocabulary.FAULT)) return Meaning.FAULT_CODE;
        if (hasAny(words, Vocabulary.NOT_MEASURED)) return Meaning.NOT_MEASURED;
        if (hasAny(words, Vocabulary.JUNCTION)) return Meaning.JUNCTION;
        if (hasAny(words, Vocabulary.ROOM)) return Meaning.TIP_BESIDES;
        if (hasAny(words, Vocabulary.TIP)) return Meaning.TIP;
        if (words.isEmpty() || Vocabulary.CHANNEL.containsAll(words)) {
            if (index.isPresent()) return Meaning.TIP;
            return words.isEmpty() ? Meaning.NONE : Meaning.OTHER;
        }
        boolean placesOnly = hasAny(words, Vocabulary.PLACE)
                && words.stream().allMatch(word -> Vocabulary.PLACE.contains(word) || Vocabulary.isOfTheProbe(word));
        boolean unitsOnly =
                words.stream().allMatch(word -> Unit.ofTemperature(word).isPresent());
        return placesOnly || unitsOnly ? Meaning.TIP : Meaning.OTHER;
    }

    private static boolean hasAny(List<String> words, Set<String> these) {
        return words.stream().anyMatch(these::contains);
    }

    /** Whether it names the place where the chocolate is. */
    boolean isOfTheChocolate() {
        return hasAny(words, Vocabulary.CHOCOLATE);
    }

    /** The channel of a label without a name. */
    int channel() {
        return index.orElse(0);
    }

    /** Whether both speak of the same thermocouple. */
    boolean isBeside(Label other) {
        return name.equals(other.name) && (!name.isEmpty() || channel() == other.channel());
    }
}
