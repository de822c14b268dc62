package fifthform.monitor.texts;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What of something said in the pretend language is plain English still; every letter of that language has an accent. */
public final class PlainWords {
    private static final Pattern WORD =
            Pattern.compile("(?<![\\p{L}\\p{N}./_@=-])[A-Za-z]{2,}(?![\\p{L}\\p{N}/_@=]|[-.]\\p{L})");

    /** What is to be typed, and places in folders. */
    private static final Pattern TYPED = Pattern.compile(
            "monitor/run( [a-z][a-z-]*)?( --?[a-z-]+([ =][\\w<>|./:-]+)?)*|--[a-z-]+([ =][\\w<>|./:-]*)?|/[\\w./-]+");

    /** Symbols of units, and names that are the same in every language. */
    private static final List<String> OF_NO_LANGUAGE = List.of(
            "min",
            "mm",
            "ml",
            "kg",
            "Fifth Form",
            "USB",
            "SAFETY",
            "README",
            "PDF",
            "CSV",
            "SVG",
            "JSON",
            "OK",
            "Ctrl");

    private PlainWords() {}

    /**
     * The plain words in what was said.
     *
     * @param names what has a name of its own in it: chocolates, bowls, batches, values of options
     */
    public static Set<String> in(String said, Collection<String> names) {
        String rest = TYPED.matcher(said.replaceAll("\\s+", " ")).replaceAll("·");
        List<String> longestFirst = names.stream()
                .sorted(Comparator.comparing(String::length).reversed())
                .toList();
        for (String name : longestFirst)
            rest = rest.replaceAll("(?<![\\p{L}-])" + Pattern.quote(name) + "(?![\\p{L}-])", "·");
        return WORD.matcher(rest)
                .results()
                .map(MatchResult::group)
                .filter(word -> !OF_NO_LANGUAGE.contains(word))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
