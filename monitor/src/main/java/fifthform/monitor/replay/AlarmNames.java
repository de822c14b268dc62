package fifthform.monitor.replay;

import fifthform.curves.input.AlarmId;
import fifthform.monitor.texts.ReplayText;

/** What an alarm was about, told afterwards: no longer what to do, but what it was. */
public final class AlarmNames {
    private AlarmNames() {}

    public static String of(AlarmId alarm) {
        return switch (alarm) {
            case HEADING_OVER -> ReplayText.WAS_HEADING_OVER.say();
            case OVER_RANGE -> ReplayText.WAS_OVER_RANGE.say();
            case NEAR_MELT_OUT -> ReplayText.WAS_NEAR_MELT_OUT.say();
            case MELT_OUT -> ReplayText.WAS_MELT_OUT.say();
            case HEADING_UNDER -> ReplayText.WAS_HEADING_UNDER.say();
            case TOO_COOL -> ReplayText.WAS_TOO_COOL.say();
            case OVER_COOLED -> ReplayText.WAS_OVER_COOLED.say();
            case MELT_TOO_HOT -> ReplayText.WAS_MELT_TOO_HOT.say();
            case BATH_HOT -> ReplayText.WAS_BATH_HOT.say();
            case PROBE_FAULT -> ReplayText.WAS_PROBE_FAULT.say();
            case NO_READING -> ReplayText.WAS_NO_READING.say();
            case READING_DOUBTFUL -> ReplayText.WAS_READING_DOUBTFUL.say();
            case NOT_RECORDING -> ReplayText.WAS_NOT_RECORDING.say();
            case PROBE_OUT -> ReplayText.WAS_PROBE_OUT.say();
        };
    }
}
