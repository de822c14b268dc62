package fifthform.curves.check;

import java.time.Duration;
import java.util.Objects;
import java.util.OptionalDouble;

/** Guards for constructors: a value outside its range is a bug of the caller and says its name, range and value. */
public final class Require {
    private Require() {}

    /** Returns {@code value} if {@code low ≤ value ≤ high}; refuses NaN. */
    public static double within(double value, double low, double high, String name) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(name + " must be " + low + " to " + high + ", was " + value);
        }
        return value;
    }

    /** As {@link #within(double, double, double, String)} where a value is given at all. */
    public static OptionalDouble within(OptionalDouble value, double low, double high, String name) {
        Objects.requireNonNull(value, name);
        if (value.isPresent()) within(value.getAsDouble(), low, high, name);
        return value;
    }

    /** Returns {@code value} if it is neither infinite nor NaN. */
    public static double finite(double value, String name) {
        if (!Double.isFinite(value)) throw new IllegalArgumentException(name + " must be finite, was " + value);
        return value;
    }

    /** Returns {@code value} if it is zero or longer. */
    public static Duration notNegative(Duration value, String name) {
        Objects.requireNonNull(value, name);
        if (value.isNegative()) throw new IllegalArgumentException(name + " must not be negative, was " + value);
        return value;
    }
}
