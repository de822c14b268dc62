package fifthform.curves.recipe;

import fifthform.curves.check.Nearest;
import fifthform.curves.check.Parsed;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One line of a recipe's text, taken apart but not yet understood.
 *
 * @param where file and line, for messages
 * @param key which value it gives
 * @param value what stands between the equals sign and the source
 * @param source what stands after the {@code #}
 */
record RecipeLine(String where, RecipeKey key, String value, Optional<String> source) {
    /** A source begins at a {@code #} after white space, so that a value may hold one inside a word. */
    private static final Pattern PARTS = Pattern.compile("([^=]*?)\\s*=\\s*(.*?)\\s*(?:(?<=\\s|=)#\\s*(.*?)\\s*)?");

    private static final Pattern GAP = Pattern.compile("\\s+");

    /** Whether there is nothing to read: empty, or a remark only. */
    static boolean isBlank(String line) {
        return line.isBlank() || line.stripLeading().startsWith("#");
    }

    static Parsed<RecipeLine> read(String where, String line) {
        Matcher parts = PARTS.matcher(line.strip());
        if (!parts.matches()) {
            return Parsed.refused(
                    where,
                    "\"" + line.strip() + "\" has no equals sign.",
                    "Write each line as: key = value unit  # source");
        }
        String word = GAP.matcher(parts.group(1)).replaceAll(" ").toLowerCase(Locale.ROOT);
        Optional<RecipeKey> key = RecipeKey.fromWord(word);
        if (key.isEmpty()) return unknown(where, word);
        if (parts.group(2).isEmpty()) {
            return Parsed.refused(
                    where,
                    "\"" + word + "\" has no value.",
                    "Write one, for example: " + word + " = " + key.get().kind.example);
        }
        Optional<String> source = Optional.ofNullable(parts.group(3)).filter(text -> !text.isEmpty());
        return Parsed.accepted(new RecipeLine(where, key.get(), parts.group(2), source));
    }

    private static Parsed<RecipeLine> unknown(String where, String word) {
        String whatToDo = Nearest.to(word, RecipeKey.words())
                .map(known -> "Did you mean \"" + known + "\"?")
                .orElse("Known keys: " + String.join(", ", RecipeKey.words()) + ".");
        return Parsed.refused(where, "\"" + word + "\" is not a key of a recipe.", whatToDo);
    }
}
