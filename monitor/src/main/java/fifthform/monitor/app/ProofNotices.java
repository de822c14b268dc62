package fifthform.monitor.app;

import java.util.List;

/** What the maker is told before a sample is taken: how to do it, and the cautions that go with it. */
final class ProofNotices {
    private static final String DRY = "Dry the probe: one drop of water thickens a whole bowl.";

    private ProofNotices() {}

    static List<String> sample(String start) {
        return List.of(
                DRY,
                "Fill the cup from the stirred bowl at working temperature, " + start + ", always the same amount.",
                "Hang the tip on the axis, half deep, with a skewer across the rim.",
                "Within 20 s hang the cup into the ice, up to the chocolate's level, its rim dry. Then leave it alone.",
                "Throw the sample away afterwards. Never put it, or a wet probe, back into the bowl.",
                "Milk or nuts in it: this cup, spoon and probe are then for that chocolate only. More in SAFETY.md.");
    }

    static List<String> melted(String start) {
        return List.of(
                DRY,
                "Take chocolate that was held at 45 to 50 °C for ten minutes, the same amount as a sample.",
                "Let it cool in the cup to " + start
                        + ", the tip on the axis, half deep, held by a skewer across the rim.",
                "Then hang the cup into the ice, up to the chocolate's level, its rim dry. Leave it alone until it ends.",
                "Throw the sample away afterwards. More in SAFETY.md.");
    }

    static List<String> smear() {
        return List.of(
                "Draw a clean, dry, cool knife or a strip of baking paper once through the chocolate: a film of half a millimetre.",
                "Lay it down at 18 to 21 °C, out of the draught. Always the same knife, the same film, the same place.",
                "It is set when a finger leaves no mark. Wipe the finger; do not put the knife back into the bowl.");
    }
}
