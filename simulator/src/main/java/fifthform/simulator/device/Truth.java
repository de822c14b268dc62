package fifthform.simulator.device;

import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.Spot;
import java.time.Instant;
import java.util.Objects;

/**
 * How it really stands in the kitchen at a moment.
 *
 * @param bulkCelsius most of the chocolate, °C
 * @param wallCelsius the bowl, °C
 * @param spot where the bowl stands
 */
public record Truth(Instant at, double bulkCelsius, double wallCelsius, Spot spot) {
    public Truth {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(spot, "spot");
    }

    static Truth of(Instant at, KitchenState state, Spot spot) {
        return new Truth(at, state.bulkCelsius(), state.wallCelsius(), spot);
    }
}
