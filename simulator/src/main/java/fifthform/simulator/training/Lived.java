package fifthform.simulator.training;

import fifthform.curves.network.Moment;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.Spot;
import java.util.Objects;

/**
 * One step of 2 s of a session that was gone through.
 *
 * @param moment what the network is told at its end
 * @param kitchen how things really are then
 * @param spot where the bowl has stood up to then
 * @param movedSeconds when it was put there
 */
record Lived(Moment moment, KitchenState kitchen, Spot spot, double movedSeconds) {
    Lived {
        Objects.requireNonNull(moment, "moment");
        Objects.requireNonNull(kitchen, "kitchen");
        Objects.requireNonNull(spot, "spot");
    }

    boolean onTable() {
        return spot == Spot.TABLE;
    }

    double atSeconds() {
        return moment.endSeconds();
    }
}
