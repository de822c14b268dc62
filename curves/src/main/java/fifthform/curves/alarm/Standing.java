package fifthform.curves.alarm;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One alarm of a batch.
 *
 * @param state its state
 * @param priority how soon the maker has to act; the highest since it was raised
 * @param figureCelsius the temperature it is about, at its worst moment known
 */
public record Standing(AlarmState state, Priority priority, OptionalDouble figureCelsius) {
    static final Standing QUIET = new Standing(new AlarmState.Normal(), Priority.ADVISE, OptionalDouble.empty());

    public Standing {
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(priority, "priority");
        Objects.requireNonNull(figureCelsius, "figureCelsius");
    }

    Standing next(AlarmSetting setting, Finding finding, Instant now) {
        AlarmState after = state.next(setting, finding, now);
        if (!after.isStanding()) return new Standing(after, finding.priority(), finding.figureCelsius());
        boolean met = finding.condition() == Condition.MET;
        boolean risen = met && state.isStanding() && finding.priority().compareTo(priority) > 0;
        // A rise in priority is news even to somebody who has seen the alarm; a fall is not.
        AlarmState told = risen ? new AlarmState.Unacknowledged(now, 0, Optional.empty()) : after;
        boolean fresh = !state.isStanding();
        Priority worst = fresh || risen ? finding.priority() : priority;
        return new Standing(told, worst, met ? finding.figureCelsius() : figureCelsius);
    }

    Standing with(AlarmState other) {
        return new Standing(other, priority, figureCelsius);
    }

    /** When it was raised, while it stands. */
    public Optional<Instant> raised() {
        if (state instanceof AlarmState.Unacknowledged s) return Optional.of(s.raised());
        if (state instanceof AlarmState.Acknowledged s) return Optional.of(s.raised());
        if (state instanceof AlarmState.ReturnedUnacknowledged s) return Optional.of(s.raised());
        return Optional.empty();
    }
}
