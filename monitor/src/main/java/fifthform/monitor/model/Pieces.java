package fifthform.monitor.model;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Where a line may be broken: at spaces, but never between a figure and its unit, within one duration, or before the dot
 * that parts two things said side by side.
 */
public final class Pieces {
    private static final Pattern BREAKS =
            Pattern.compile("(?!(?<=[0-9])\\s+(?:°[CF]|s|min|h|g|kg|m|K|ml|l|%)(?![A-Za-z]))"
                    + "(?!(?<=[0-9] (?:h|min))\\s+[0-9]+ (?:min|s)(?![A-Za-z]))"
                    + "\\s+(?!·)");

    private Pieces() {}

    /** The words between the places where a line may be broken. */
    public static List<String> of(String words) {
        return List.of(BREAKS.split(words));
    }
}
