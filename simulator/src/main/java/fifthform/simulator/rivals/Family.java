package fifthform.simulator.rivals;

import fifthform.simulator.bowl.Spot;
import fifthform.simulator.scenario.Scenario;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The kinds of kitchens that figures are told by. */
final class Family {
    private Family() {}

    /** The kind of this kitchen in each respect. */
    static Map<String, String> of(JudgedKitchen kitchen) {
        Scenario scenario = kitchen.scenario();
        Map<String, String> kinds = new LinkedHashMap<>();
        kinds.put("bowl", scenario.kitchen().bowl().material().name().toLowerCase(Locale.ROOT));
        double grams = scenario.kitchen().chocolate().kilograms() * 1000;
        kinds.put("amount", grams < 500 ? "below 0.5 kg" : grams < 1500 ? "0.5 to 1.5 kg" : "above 1.5 kg");
        kinds.put("bath", bath(kitchen));
        double share = scenario.habits().plan().stirringShare();
        kinds.put("stirring", share < 0.75 ? "gentle" : share < 0.9 ? "usual" : "well");
        double lag = scenario.kitchen().tip().lagSeconds();
        kinds.put("probe", lag < 3 ? "quick" : lag < 6 ? "usual" : "slow");
        return kinds;
    }

    private static String bath(JudgedKitchen kitchen) {
        if (kitchen.water() == Spot.HOT_BATH) return "steam of the pot";
        double above = kitchen.scenario().begins().warmBathCelsius()
                - kitchen.recipe().work().range().highCelsius();
        return above < 10 ? "mild, under 10 K above" : above < 20 ? "10 to 20 K above" : "hot, over 20 K above";
    }
}
