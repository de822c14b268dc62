package fifthform.monitor.setup;

import fifthform.curves.check.Parsed;
import fifthform.monitor.settings.Settings;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * One thing that can be set, by its name and in words: the same for the window, the command line and its lists.
 *
 * @param name in options and lists: {@code units}, {@code key-mark}
 * @param what what it is, in a few words
 * @param possible the words that it takes; empty where it takes a number, a key or a path
 * @param reads its value as a word
 * @param sets the settings with another value, or why not
 */
public record Setting(
        String name,
        String what,
        List<String> possible,
        Function<Settings, String> reads,
        BiFunction<Settings, String, Parsed<Settings>> sets) {
    public Setting {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(what, "what");
        possible = List.copyOf(possible);
        Objects.requireNonNull(reads, "reads");
        Objects.requireNonNull(sets, "sets");
    }

    /** Its value as a word. */
    public String value(Settings settings) {
        return reads.apply(settings);
    }

    /** Its value until the maker chooses otherwise. */
    public String usual() {
        return value(Settings.USUAL);
    }

    /** The settings with another value, or why not. */
    public Parsed<Settings> set(Settings settings, String value) {
        return sets.apply(settings, value.strip());
    }
}
