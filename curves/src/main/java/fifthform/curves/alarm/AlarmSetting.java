package fifthform.curves.alarm;

import fifthform.curves.check.Require;
import fifthform.curves.input.AlarmId;
import fifthform.curves.recipe.Phase;
import java.time.Duration;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;

/**
 * The definition of one alarm. What has no consequence, no action and no time to act is no alarm and cannot be made one.
 *
 * @param id its name
 * @param deadbandKelvin how far the temperature must come back before the condition is over, 0 to 5 K
 * @param onDelay how long the condition must hold before the alarm is raised
 * @param offDelay how long it must be over before the alarm clears
 * @param phases where it means anything
 * @param consequence what happens if nobody acts
 * @param time how long there usually is to act
 * @param ending what it takes to go away
 * @param action what the maker should do, in words
 */
public record AlarmSetting(
        AlarmId id,
        double deadbandKelvin,
        Duration onDelay,
        Duration offDelay,
        Set<Phase> phases,
        Consequence consequence,
        TimeAvailable time,
        Ending ending,
        String action) {
    public AlarmSetting {
        Objects.requireNonNull(id, "id");
        Require.within(deadbandKelvin, 0, 5, "deadbandKelvin");
        Require.notNegative(onDelay, "onDelay");
        Require.notNegative(offDelay, "offDelay");
        if (phases.isEmpty()) throw new IllegalArgumentException("phases of " + id + " must not be empty");
        // An enum set keeps one order; Set.copyOf would iterate differently from run to run.
        phases = Collections.unmodifiableSet(EnumSet.copyOf(phases));
        Objects.requireNonNull(consequence, "consequence");
        Objects.requireNonNull(time, "time");
        Objects.requireNonNull(ending, "ending");
        if (action.isBlank()) throw new IllegalArgumentException("action of " + id + " must say what to do");
    }

    /** Priority where the situation does not leave more or less time than usual. */
    public Priority usualPriority() {
        return time.with(consequence);
    }
}
