package fifthform.curves.alarm;

import fifthform.curves.situation.Reason;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one look at the batch says about one alarm.
 *
 * @param condition whether its condition holds
 * @param priority how soon the maker would have to act
 * @param figureCelsius the temperature it is about, where it is about one
 * @param reason why its condition holds, where it does
 */
public record Finding(Condition condition, Priority priority, OptionalDouble figureCelsius, Optional<Reason> reason) {
    /** A finding of which no reason is asked. */
    public Finding(Condition condition, Priority priority, OptionalDouble figureCelsius) {
        this(condition, priority, figureCelsius, Optional.empty());
    }

    public Finding {
        Objects.requireNonNull(condition, "condition");
        Objects.requireNonNull(priority, "priority");
        Objects.requireNonNull(figureCelsius, "figureCelsius");
        Objects.requireNonNull(reason, "reason");
    }

    Finding because(Optional<Reason> why) {
        return new Finding(condition, priority, figureCelsius, why);
    }
}
