package fifthform.monitor.model;

import java.util.List;
import java.util.regex.Pattern;

/** Where a line may be broken: at spaces, but never between a figure and its unit. */
public final class Pieces {
    private static final Pattern BREAKS =
            Pattern.compile("(?<![0-9])\\s+|\\s+(?!(?:°[CF]|s|min|h|g|kg|%)(?![A-Za-z]))");

    private Pieces() {}

    /** The words between the places where a line may be broken. */
    public static List<String> of(String words) {
        return List.of(BREAKS.split(words));
    }
}
