package fifthform.simulator.maker;

import fifthform.curves.input.MakerAction.Place;
import fifthform.simulator.bowl.Spot;

/** What the program can know of where the bowl stands. */
public final class Places {
    private Places() {}

    /** What a key can say of it: wherever no water touches the bowl counts as the table. */
    public static Place of(Spot spot) {
        if (spot == Spot.HOT_BATH || spot == Spot.WARM_BATH) return Place.BATH;
        return spot == Spot.COLD_WATER ? Place.COLD_WATER : Place.TABLE;
    }
}
