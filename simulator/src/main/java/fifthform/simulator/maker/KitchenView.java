package fifthform.simulator.maker;

import java.time.Instant;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What a maker can see.
 *
 * @param at the time
 * @param shownCelsius the last number on the thermometer, °C; it stays there when the thermometer falls silent
 */
public record KitchenView(Instant at, OptionalDouble shownCelsius) {
    public KitchenView {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(shownCelsius, "shownCelsius");
    }
}
