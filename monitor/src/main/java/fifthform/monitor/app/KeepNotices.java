package fifthform.monitor.app;

import java.util.List;

/** Cautions before bars set and while they are kept. */
final class KeepNotices {
    private KeepNotices() {}

    static List<String> setting() {
        return List.of(
                "The probe lies beside the moulds, not in what is eaten. Lead the lead so that no door pinches it and nobody trips.",
                "Keep raw food and drips away from open moulds. Label moulds with milk, nuts or other allergens. More in SAFETY.md.");
    }

    static List<String> storing() {
        return List.of(
                "The probe lies beside the bars. Keep laptop and charger out of damp and heat, and do not cover them.",
                "What is fuzzy on a bar is no bloom: throw it away. More in SAFETY.md.");
    }

    static String bestBefore() {
        return "This is your own note and no statement of safety: how long a bar keeps is decided by your recipe, your hygiene"
                + " and your local law, not by this program.";
    }
}
