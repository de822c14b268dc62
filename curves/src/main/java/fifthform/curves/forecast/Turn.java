package fifthform.curves.forecast;

import fifthform.curves.check.Require;
import java.time.Instant;
import java.util.Objects;

/**
 * A turning point that was seen after a lift.
 *
 * @param at when it was seen to have turned
 * @param celsius the furthest temperature, °C
 * @param lift the lift it followed
 */
public record Turn(Instant at, double celsius, Lift lift) {
    public Turn {
        Objects.requireNonNull(at, "at");
        Require.finite(celsius, "celsius");
        Objects.requireNonNull(lift, "lift");
    }

    public double coastKelvin() {
        return lift.coastKelvin();
    }
}
