package fifthform.monitor.app;

import java.util.List;

/** The cautions that go with a plan. */
final class PlanNotices {
    private PlanNotices() {}

    static List<String> lines() {
        return List.of(
                "Hot water and steam scald: lift the bowl out instead of carrying a full pan, and tilt it away from you.",
                "Boiling water into the bath: bowl out first, pour low and slowly, no hand in the steam.",
                "No hot glass into cold water. Charger and laptop an arm's length from the water. More in SAFETY.md;"
                        + " local codes come first.");
    }
}
