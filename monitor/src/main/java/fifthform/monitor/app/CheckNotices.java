package fifthform.monitor.app;

import fifthform.curves.probecheck.Target;
import java.util.List;

/** What the maker is told before a point is taken: how to make it, and the cautions that go with it. */
final class CheckNotices {
    private static final String MAINS =
            "Keep laptop, charger and adapter an arm's length from the water. Run the laptop on battery. More in SAFETY.md.";

    private CheckNotices() {}

    static List<String> of(Target target) {
        return switch (target.kind()) {
            case ICE ->
                List.of(
                        "Fill a cup with crushed ice and add cold water until it just covers the ice. Stir for a minute.",
                        "Put the tip in the middle, 5 cm deep, among the ice, and keep stirring gently.",
                        MAINS);
            case BOIL ->
                List.of(
                        "Bring plain water to a rolling boil, lid off. Hang the tip 3 to 5 cm deep, off bottom and wall.",
                        "Boiling water and steam scald: clip the probe to the rim, keep hands, face and children away, and do not carry the pot.",
                        "Keep the lead off flame and hot plate, and let it hang in a loop so that drops fall off before the plug.",
                        MAINS);
        };
    }

    static List<String> bath() {
        return List.of(
                "Put both tips side by side into one bowl of water between 25 and 40 °C, 5 cm deep, and keep stirring.",
                MAINS);
    }
}
