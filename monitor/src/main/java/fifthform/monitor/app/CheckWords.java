package fifthform.monitor.app;

import fifthform.curves.probecheck.Agreement;
import fifthform.curves.probecheck.Drift;
import fifthform.curves.probecheck.Objection;
import fifthform.curves.probecheck.Part;
import fifthform.monitor.texts.CheckText;

/** What the check of a probe found, in words. */
final class CheckWords {
    private CheckWords() {}

    /** What is wrong, and what to do. */
    static String of(Objection objection) {
        return switch (objection) {
            case NO_READING -> CheckText.OBJECTION_NO_READING.say();
            case NOT_IN -> CheckText.OBJECTION_NOT_IN.say();
            case STILL_FALLING -> CheckText.OBJECTION_STILL_FALLING.say();
            case STILL_RISING -> CheckText.OBJECTION_STILL_RISING.say();
            case RESTLESS -> CheckText.OBJECTION_RESTLESS.say();
            case TOO_FAR -> CheckText.OBJECTION_TOO_FAR.say();
            case STUCK -> CheckText.OBJECTION_STUCK.say();
        };
    }

    /** Where a part of the doubt that is left comes from. */
    static String of(Part.Source source) {
        return switch (source) {
            case ICE_POINT -> CheckText.PART_ICE_POINT.say();
            case BOILING_POINT -> CheckText.PART_BOILING_POINT.say();
            case WIRE -> CheckText.PART_WIRE.say();
            case BETWEEN -> CheckText.PART_BETWEEN.say();
            case CHIP -> CheckText.PART_CHIP.say();
            case JUNCTION -> CheckText.PART_JUNCTION.say();
        };
    }

    static String of(Agreement agreement) {
        if (!agreement.holds()) return CheckText.AGREE_NOT.say();
        return agreement.isAsCloseAsMeasured() ? CheckText.AGREE_CLOSELY.say() : CheckText.AGREE_WITHIN_DOUBT.say();
    }

    static String of(Drift drift) {
        if (drift.isNone()) return CheckText.DRIFT_NONE.say();
        return drift.isSeen() ? CheckText.DRIFT_SEEN.say() : CheckText.DRIFT_MAYBE.say();
    }
}
