package fifthform.monitor.app;

import fifthform.monitor.texts.BarsText;
import java.util.List;

/** Cautions before bars set and while they are kept. */
final class KeepNotices {
    private KeepNotices() {}

    static List<String> setting() {
        return List.of(BarsText.THE_PROBE_LIES_BESIDE_THE.say(), BarsText.KEEP_RAW_FOOD_AND_DRIPS_AWAY.say());
    }

    static List<String> storing() {
        return List.of(
                BarsText.THE_PROBE_LIES_BESIDE_THE_BARS.say(), BarsText.WHAT_IS_FUZZY_ON_A_BAR_KEEP_NOTICES.say());
    }

    static String bestBefore() {
        return BarsText.THIS_IS_YOUR_OWN_NOTE_AND.say();
    }
}
