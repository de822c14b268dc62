package fifthform.monitor.model;

import java.util.List;
import java.util.regex.Pattern;

/** Where a line may be broken: at spaces, but never between a figure and its unit. */
public final class Pieces {
    private static final String UNIT = "(?:°[CF]|K|s|min|h|g|kg|ml|l|%)(?![A-Za-z])";

    private static final Pattern BREAKS = Pattern.compile("(?<![0-9])\\s+|\\s+(?!" + UNIT + ")");

    private static final Pattern HELD = Pattern.compile("(?<=[0-9]) (?=" + UNIT + ")");

    private Pieces() {}

    /** The same words for a text that breaks its lines itself: it breaks at no space that must hold. */
    public static String held(String words) {
        return HELD.matcher(words).replaceAll("\u00A0");
    }

    /** The words between the places where a line may be broken. */
    public static List<String> of(String words) {
        return List.of(BREAKS.split(words));
    }
}
