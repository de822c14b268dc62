package fifthform.monitor.settings;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * One press of one key without modifiers: a character, or one of the named keys that type none. A foot pedal that types
 * is a keyboard like any other.
 *
 * @param word the character in lower case, or the key's name: {@code page-down}
 */
public record Stroke(String word) {
    public static final Stroke SPACE = new Stroke("space");
    public static final Stroke ENTER = new Stroke("enter");

    private static final Map<String, String> NAMED = named();

    public Stroke {
        Objects.requireNonNull(word, "word");
    }

    /** What this character says, upper or lower case; nothing for control characters, which end or delete. */
    public static Optional<Stroke> typed(char character) {
        if (character == '\r' || character == '\n') return Optional.of(ENTER);
        if (character == ' ') return Optional.of(SPACE);
        boolean plain = !Character.isISOControl(character)
                && !Character.isWhitespace(character)
                && !Character.isSurrogate(character)
                && Character.isDefined(character);
        return plain ? Optional.of(new Stroke(String.valueOf(Character.toLowerCase(character)))) : Optional.empty();
    }

    /** The key of this name, such as {@code f5}; nothing where there is none. */
    public static Optional<Stroke> named(String name) {
        return NAMED.containsKey(name) ? Optional.of(new Stroke(name)) : Optional.empty();
    }

    /** As it is written in files and options: a character or a name. */
    public static Optional<Stroke> parse(String text) {
        if (text.length() == 1) return typed(text.charAt(0));
        return named(text.strip().toLowerCase(Locale.ROOT).replace(' ', '-'));
    }

    /** The names of keys that type no character. */
    public static String names() {
        return String.join(", ", NAMED.keySet());
    }

    /** Whether it types a character, so that one event of typing brings it. */
    public boolean isTyped() {
        return word.length() == 1 || equals(SPACE) || equals(ENTER);
    }

    /** What is printed on the key. */
    public String cap() {
        if (word.equals("-")) return "–";
        return NAMED.getOrDefault(word, word.toUpperCase(Locale.ROOT));
    }

    /** What lies on the same key, for hands that do not hold Shift: {@code =} counts as {@code +}. */
    public Optional<Stroke> sameKey() {
        return switch (word) {
            case "=" -> Optional.of(new Stroke("+"));
            case "_" -> Optional.of(new Stroke("-"));
            case "?" -> Optional.of(new Stroke("h"));
            default -> Optional.empty();
        };
    }

    private static Map<String, String> named() {
        Map<String, String> caps = new LinkedHashMap<>();
        caps.put("space", "Space");
        caps.put("enter", "Enter");
        caps.put("page-up", "Page Up");
        caps.put("page-down", "Page Down");
        caps.put("home", "Home");
        caps.put("end", "End");
        caps.put("insert", "Insert");
        caps.put("delete", "Delete");
        caps.put("left", "Left");
        caps.put("right", "Right");
        caps.put("up", "Up");
        caps.put("down", "Down");
        for (int i = 1; i <= 12; i++) caps.put("f" + i, "F" + i);
        return Collections.unmodifiableMap(caps);
    }
}
