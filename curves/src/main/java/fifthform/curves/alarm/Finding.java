package fifthform.curves.alarm;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What one look at the batch says about one alarm.
 *
 * @param condition whether its condition holds
 * @param priority how soon the maker would have to act
 * @param figureCelsius the temperature it is about, where it is about one
 */
public record Finding(Condition condition, Priority priority, OptionalDouble figureCelsius) {
    public Finding {
        Objects.requireNonNull(condition, "condition");
        Objects.requireNonNull(priority, "priority");
        Objects.requireNonNull(figureCelsius, "figureCelsius");
    }
}
