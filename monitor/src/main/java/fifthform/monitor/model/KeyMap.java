package fifthform.monitor.model;

import fifthform.monitor.settings.Stroke;
import fifthform.monitor.texts.DidYouMean;
import fifthform.monitor.texts.KeyText;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Which key does what: each act has one key, and no key two acts.
 *
 * @param strokes for every act
 */
public record KeyMap(Map<Key, Stroke> strokes) {
    /** The keys as the program comes. */
    public static final KeyMap USUAL = new KeyMap(usual());

    private static final Pattern ACT = Pattern.compile("<([a-z-]+)>");

    public KeyMap {
        Map<Key, Stroke> all = new EnumMap<>(strokes);
        if (all.size() != Key.values().length
                || all.values().stream().distinct().count() != all.size())
            throw new IllegalArgumentException("every act needs one key of its own, was " + strokes);
        strokes = Collections.unmodifiableMap(all);
    }

    /**
     * The maker's keys, and what of them cannot be used.
     *
     * @param problems whole sentences; the usual key is used in each such place
     */
    public record Read(KeyMap keys, List<String> problems) {
        public Read {
            Objects.requireNonNull(keys, "keys");
            problems = List.copyOf(problems);
        }
    }

    /** What came of giving an act another key. */
    public sealed interface Given {}

    /** It has it. */
    public record Changed(KeyMap keys) implements Given {}

    /** The key does something else already. */
    public record Taken(Key by) implements Given {
        /** What to do. */
        public String words(Stroke stroke) {
            return KeyText.ALREADY_MEANS_GIVE_THAT.say(stroke.cap(), by.word());
        }
    }

    /** Reads what settings keep: key by name of act. */
    public static Read read(Map<String, String> kept) {
        List<String> problems = new ArrayList<>();
        Map<Key, Stroke> own = new EnumMap<>(Key.class);
        kept.forEach((act, typed) -> {
            Optional<Key> key = Key.named(act);
            Optional<Stroke> stroke = Stroke.parse(typed);
            if (key.isEmpty()) problems.add(unknown(act));
            else if (stroke.isEmpty())
                problems.add(KeyText.IS_NO_SINGLE_KEY_SO_KEEPS.say(
                        typed, key.get().word(), key.get().usual().cap(), Stroke.names()));
            else own.put(key.get(), stroke.get());
        });
        return new Read(agreed(own, problems), problems);
    }

    private static String unknown(String act) {
        List<String> acts = Stream.of(Key.values()).map(Key::id).toList();
        return KeyText.IS_NOTHING_THAT_A_KEY_DOES
                .say(act, DidYouMean.oneOf(acts, act))
                .strip();
    }

    /** Gives acts their usual keys back until no key does two things. */
    private static KeyMap agreed(Map<Key, Stroke> own, List<String> problems) {
        while (true) {
            Map<Key, Stroke> all = usual();
            all.putAll(own);
            Optional<Key> second = Stream.of(Key.values())
                    .filter(own::containsKey)
                    .filter(key -> Collections.frequency(all.values(), all.get(key)) > 1)
                    .reduce((before, after) -> after);
            if (second.isEmpty()) return new KeyMap(all);
            Key key = second.get();
            Key other = Stream.of(Key.values())
                    .filter(each -> each != key && all.get(each).equals(all.get(key)))
                    .findFirst()
                    .orElseThrow();
            problems.add(KeyText.IS_GIVEN_TO_AND_ALSO_MEANS.say(
                    all.get(key).cap(),
                    key.word(),
                    other.word(),
                    key.word(),
                    key.usual().cap()));
            own.remove(key);
        }
    }

    private static Map<Key, Stroke> usual() {
        Map<Key, Stroke> all = new EnumMap<>(Key.class);
        for (Key key : Key.values()) all.put(key, key.usual());
        return all;
    }

    /** What a press means. */
    public Optional<Key> typed(Stroke stroke) {
        return exactly(stroke).or(() -> stroke.sameKey().flatMap(this::exactly));
    }

    private Optional<Key> exactly(Stroke stroke) {
        return strokes.entrySet().stream()
                .filter(each -> each.getValue().equals(stroke))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** The key of an act. */
    public Stroke of(Key key) {
        return strokes.get(key);
    }

    /** What is printed on the key of an act. */
    public String cap(Key key) {
        return of(key).cap();
    }

    /** The same with another key for this act. */
    public Given with(Key key, Stroke stroke) {
        Optional<Key> by = exactly(stroke).filter(other -> other != key);
        if (by.isPresent()) return new Taken(by.get());
        Map<Key, Stroke> all = new EnumMap<>(strokes);
        all.put(key, stroke);
        return new Changed(new KeyMap(all));
    }

    /** What settings keep: only what is not usual. */
    public Map<String, String> kept() {
        Map<String, String> kept = new LinkedHashMap<>();
        strokes.forEach((key, stroke) -> {
            if (!stroke.equals(key.usual())) kept.put(key.id(), stroke.word());
        });
        return kept;
    }

    /** Words in which the name of an act in angle brackets stands for its key: {@code <undo> takes it back}. */
    public String fill(String words) {
        return ACT.matcher(words)
                .replaceAll(found ->
                        Matcher.quoteReplacement(cap(Key.named(found.group(1)).orElseThrow())));
    }
}
