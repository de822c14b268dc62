package fifthform.monitor.app;

import fifthform.curves.probecheck.Target;
import fifthform.monitor.texts.CheckText;
import java.util.List;

/** What the maker is told before a point is taken: how to make it, and the cautions that go with it. */
final class CheckNotices {
    private CheckNotices() {}

    static List<String> of(Target target) {
        return switch (target.kind()) {
            case ICE ->
                List.of(
                        CheckText.FILL_A_CUP_WITH_CRUSHED_ICE.say(),
                        CheckText.PUT_THE_TIP_IN_THE_MIDDLE.say(),
                        CheckText.LAPTOP_AND_WATER.say());
            case BOIL ->
                List.of(
                        CheckText.BRING_PLAIN_WATER_TO_A_ROLLING.say(),
                        CheckText.BOILING_WATER_AND_STEAM_SCALD.say(),
                        CheckText.KEEP_THE_LEAD_OFF_FLAME_AND.say(),
                        CheckText.LAPTOP_AND_WATER.say());
        };
    }

    static List<String> bath() {
        return List.of(CheckText.PUT_BOTH_TIPS_SIDE_BY_SIDE.say(), CheckText.LAPTOP_AND_WATER.say());
    }
}
