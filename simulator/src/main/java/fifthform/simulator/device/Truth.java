package fifthform.simulator.device;

import fifthform.simulator.bowl.Forms;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.Spot;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * How it really stands in the kitchen at a moment.
 *
 * @param bulkCelsius most of the chocolate, °C
 * @param wallCelsius the bowl, °C
 * @param spot where the bowl stands
 * @param forms the crystals of the whole bowl; empty where the kitchen only has such as melt once
 */
public record Truth(Instant at, double bulkCelsius, double wallCelsius, Spot spot, Optional<Forms> forms) {
    public Truth {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(spot, "spot");
        Objects.requireNonNull(forms, "forms");
    }

    static Truth of(Instant at, Kitchen kitchen, KitchenState state, Spot spot) {
        return new Truth(at, state.bulkCelsius(), state.wallCelsius(), spot, kitchen.forms(state));
    }
}
