package fifthform.monitor.app;

import fifthform.monitor.texts.PlanText;
import java.util.List;

/** The cautions that go with a plan. */
final class PlanNotices {
    private PlanNotices() {}

    static List<String> lines() {
        return List.of(
                PlanText.HOT_WATER_AND_STEAM_SCALD_LIFT.say(),
                PlanText.BOILING_WATER_INTO_THE_BATH.say(),
                PlanText.NO_HOT_GLASS_INTO_COLD_WATER.say());
    }
}
