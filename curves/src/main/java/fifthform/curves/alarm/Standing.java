package fifthform.curves.alarm;

import fifthform.curves.situation.Reason;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One alarm of a batch.
 *
 * @param state its state
 * @param priority how soon the maker has to act, as shown: the highest since it was raised or last seen
 * @param present how soon, as its condition says now; a fall counts once it has lasted
 * @param lowerSince since when its condition has said less than that
 * @param figureCelsius the temperature it is about, as last known while its condition held
 * @param reason why, in figures, as last known while its condition held
 */
public record Standing(
        AlarmState state,
        Priority priority,
        Priority present,
        Optional<Instant> lowerSince,
        OptionalDouble figureCelsius,
        Optional<Reason> reason) {
    static final Standing QUIET = new Standing(
            new AlarmState.Normal(),
            Priority.ADVISE,
            Priority.ADVISE,
            Optional.empty(),
            OptionalDouble.empty(),
            Optional.empty());

    /** A priority that wavers around its limit would be told again and again. Own choice. */
    private static final Duration FALL_LASTS = Duration.ofSeconds(10);

    public Standing {
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(priority, "priority");
        Objects.requireNonNull(present, "present");
        Objects.requireNonNull(lowerSince, "lowerSince");
        Objects.requireNonNull(figureCelsius, "figureCelsius");
        Objects.requireNonNull(reason, "reason");
    }

    Standing next(AlarmSetting setting, Finding finding, Instant now) {
        AlarmState after = state.next(setting, finding, now);
        boolean met = finding.condition() == Condition.MET;
        boolean shelved = state instanceof AlarmState.Shelved;
        // What has become urgent is not what was set aside.
        boolean outgrown = shelved && met && finding.priority() == Priority.URGENT;
        if (!after.isStanding() && !outgrown) return resting(after, finding);
        boolean risen =
                outgrown || met && state.isStanding() && finding.priority().compareTo(priority) > 0;
        // A rise in priority is news even to somebody who has seen the alarm; a fall is not.
        AlarmState told = risen ? new AlarmState.Unacknowledged(now, 0, Optional.empty()) : after;
        boolean fresh = !state.isStanding();
        Priority worst = fresh || risen ? finding.priority() : priority;
        boolean lower = !fresh && met && finding.priority().compareTo(present) < 0;
        Optional<Instant> since = lower ? Optional.of(lowerSince.orElse(now)) : Optional.empty();
        boolean lasts = since.isPresent() && !now.isBefore(since.get().plus(FALL_LASTS));
        return new Standing(
                told,
                worst,
                met && (!lower || lasts) ? finding.priority() : present,
                since,
                met ? finding.figureCelsius() : figureCelsius,
                met ? finding.reason() : reason);
    }

    private static Standing resting(AlarmState after, Finding finding) {
        return new Standing(
                after,
                finding.priority(),
                finding.priority(),
                Optional.empty(),
                finding.figureCelsius(),
                finding.condition() == Condition.MET ? finding.reason() : Optional.empty());
    }

    /** Seen: what is shown from now on is the highest from now on. */
    Standing seen(Instant now) {
        AlarmState after = state.seen(now);
        return new Standing(after, after.isStanding() ? present : priority, present, lowerSince, figureCelsius, reason);
    }

    Standing with(AlarmState other) {
        return new Standing(other, priority, present, lowerSince, figureCelsius, reason);
    }

    /** Whether a worse alarm holds it back. */
    boolean isSpokenFor() {
        return state instanceof AlarmState.Suppressed s
                && s.reason() == AlarmState.Suppressed.Reason.WORSE_ALARM_STANDS;
    }

    /** When it was raised, while it stands. */
    public Optional<Instant> raised() {
        if (state instanceof AlarmState.Unacknowledged s) return Optional.of(s.raised());
        if (state instanceof AlarmState.Acknowledged s) return Optional.of(s.raised());
        if (state instanceof AlarmState.ReturnedUnacknowledged s) return Optional.of(s.raised());
        return Optional.empty();
    }
}
