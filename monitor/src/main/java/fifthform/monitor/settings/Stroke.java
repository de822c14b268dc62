package fifthform.monitor.settings;

import fifthform.monitor.texts.KeyText;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * One press of one key without modifiers: a character, or one of the named keys that type none. A foot pedal that types
 * is a keyboard like any other.
 *
 * @param word the character in lower case, or the key's name: {@code page-down}
 */
public record Stroke(String word) {
    public static final Stroke SPACE = new Stroke("space");
    public static final Stroke ENTER = new Stroke("enter");

    private static final Set<String> NAMED = named();

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
        return NAMED.contains(name) ? Optional.of(new Stroke(name)) : Optional.empty();
    }

    /** As it is written in files and options: a character or a name. */
    public static Optional<Stroke> parse(String text) {
        if (text.length() == 1) return typed(text.charAt(0));
        return named(text.strip().toLowerCase(Locale.ROOT).replace(' ', '-'));
    }

    /** The names of keys that type no character. */
    public static String names() {
        return String.join(", ", NAMED);
    }

    /** Whether it types a character, so that one event of typing brings it. */
    public boolean isTyped() {
        return word.length() == 1 || equals(SPACE) || equals(ENTER);
    }

    /** What is printed on the key. */
    public String cap() {
        return switch (word) {
            case "-" -> "–";
            case "space" -> KeyText.CAP_SPACE.say();
            case "enter" -> KeyText.CAP_ENTER.say();
            case "page-up" -> KeyText.CAP_PAGE_UP.say();
            case "page-down" -> KeyText.CAP_PAGE_DOWN.say();
            case "home" -> KeyText.CAP_HOME.say();
            case "end" -> KeyText.CAP_END.say();
            case "insert" -> KeyText.CAP_INSERT.say();
            case "delete" -> KeyText.CAP_DELETE.say();
            case "left" -> KeyText.CAP_LEFT.say();
            case "right" -> KeyText.CAP_RIGHT.say();
            case "up" -> KeyText.CAP_UP.say();
            case "down" -> KeyText.CAP_DOWN.say();
            default -> word.toUpperCase(Locale.ROOT);
        };
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

    private static Set<String> named() {
        Set<String> names = new LinkedHashSet<>(List.of(
                "space",
                "enter",
                "page-up",
                "page-down",
                "home",
                "end",
                "insert",
                "delete",
                "left",
                "right",
                "up",
                "down"));
        for (int i = 1; i <= 12; i++) names.add("f" + i);
        return Collections.unmodifiableSet(names);
    }
}
