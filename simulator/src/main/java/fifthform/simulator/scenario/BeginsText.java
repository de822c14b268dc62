package fifthform.simulator.scenario;

import fifthform.curves.check.Parsed;
import fifthform.curves.setup.Beginning;
import fifthform.simulator.bowl.Forms;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.KitchenState.Baths;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How the chocolate is found, as {@code melted at 45 C}, {@code solid}, {@code bloomed at 36 C} or {@code kept at 30 C}. */
final class BeginsText {
    static final String SOLID = "solid";

    /** Bars in good temper, as warm as the room. */
    private static final String IN_TEMPER = "in temper";

    /** The name of an invented batch, since practice has none before it. */
    private static final String FAILED = "an-invented-batch-that-bloomed";

    private static final Pattern AT = Pattern.compile("(melted|bloomed|kept) at ([0-9.]+) C");

    /** Of bloomed bars, what is not melted at some 36 °C, kg of form VI per kg of fat; a guess. */
    private static final Forms LUMPS = new Forms(0, 0, 0, 0.05, 0.0005);

    private static final Forms BLOOMED_BARS = new Forms(0, 0, 0.35, 0.40, 0.002);
    private static final double BARS_BELOW_CELSIUS = 30;

    /** A good temper, kept warm: 2 % of the fat as form V. */
    private static final Forms KEPT = new Forms(0, 0, 0.02, 0, 0.001);

    private BeginsText() {}

    /** The kitchen at its beginning; solid pieces are as warm as the room. */
    static Parsed<KitchenState> parse(String where, String text, double roomCelsius, Baths baths) {
        if (text.equals(SOLID)) return Parsed.accepted(KitchenState.solid(roomCelsius, baths));
        if (text.equals(IN_TEMPER)) {
            return Parsed.accepted(KitchenState.solid(roomCelsius, baths).withCrystals(Forms.SOLID));
        }
        Matcher at = AT.matcher(text);
        double celsius = at.matches() ? NumberText.number(at.group(2)) : Double.NaN;
        if (celsius >= 15 && celsius <= 60) {
            KitchenState melted = KitchenState.melted(celsius, baths);
            return Parsed.accepted(
                    switch (at.group(1)) {
                        case "bloomed" -> melted.withCrystals(celsius < BARS_BELOW_CELSIUS ? BLOOMED_BARS : LUMPS);
                        case "kept" -> melted.withCrystals(KEPT);
                        default -> melted;
                    });
        }
        return Parsed.refused(
                where,
                "\"" + text + "\" is no way to begin.",
                "Write solid, in temper, or melted, bloomed or kept at 15 to 60 C: melted at 45 C");
    }

    /** What a maker would tell a program of it. */
    static Beginning beginning(String text) {
        if (text.startsWith("bloomed")) return new Beginning.Again(FAILED);
        return text.equals(IN_TEMPER) || text.startsWith("kept") ? new Beginning.InTemper() : Beginning.WHOLE;
    }
}
