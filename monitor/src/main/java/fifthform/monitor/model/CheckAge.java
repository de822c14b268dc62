package fifthform.monitor.model;

import fifthform.curves.probecheck.CheckAgain;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Origin;
import fifthform.monitor.texts.WatchText;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** How long ago the bowl's probe was checked, as a tail to what it is worth. */
public final class CheckAge {
    private static final long LONGEST_DAYS_IN_DAYS = 60;
    private static final double DAYS_A_MONTH = 30.44;

    private CheckAge() {}

    /** For example {@code , checked 12 days ago}; simulated probes have no age. */
    static String words(Origin origin, Correction correction, Instant now) {
        // Nobody can check a simulated probe: what cannot be acted on is not said.
        if (origin == Origin.SIMULATED) return "";
        if (!correction.isChecked()) return WatchText.PROBE_NOT_CHECKED.say();
        Optional<Duration> age = correction.checkedAt().map(at -> Duration.between(at, now));
        if (age.isEmpty() || age.get().isNegative()) return "";
        return age.get().compareTo(CheckAgain.USUAL) > 0
                ? WatchText.CHECK_AGAIN_LAST_CHECK.say(ago(age.get()))
                : WatchText.CHECKED.say(ago(age.get()));
    }

    /** For example {@code 12 days ago}. */
    public static String ago(Duration age) {
        long days = age.toDays();
        if (days == 0) return WatchText.TODAY.say();
        if (days == 1) return WatchText.A_DAY_AGO.say();
        if (days <= LONGEST_DAYS_IN_DAYS) return WatchText.DAYS_AGO.say(days);
        return WatchText.MONTHS_AGO.say(Math.round(days / DAYS_A_MONTH));
    }
}
