package fifthform.simulator.scenario;

import fifthform.curves.check.Parsed;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.KitchenState.Baths;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How the chocolate is found, as {@code melted at 45 C} or {@code solid}. */
final class BeginsText {
    static final String SOLID = "solid";

    private static final Pattern MELTED = Pattern.compile("melted at ([0-9.]+) C");

    private BeginsText() {}

    /** The kitchen at its beginning; solid pieces are as warm as the room. */
    static Parsed<KitchenState> parse(String where, String text, double roomCelsius, Baths baths) {
        if (text.equals(SOLID)) return Parsed.accepted(KitchenState.solid(roomCelsius, baths));
        Matcher melted = MELTED.matcher(text);
        double celsius = melted.matches() ? NumberText.number(melted.group(1)) : Double.NaN;
        if (celsius >= 15 && celsius <= 60) return Parsed.accepted(KitchenState.melted(celsius, baths));
        return Parsed.refused(
                where, "\"" + text + "\" is no way to begin.", "Write solid, or melted at 15 to 60 C: melted at 45 C");
    }
}
