package fifthform.simulator.maker;

import fifthform.simulator.bowl.Spot;
import java.time.Duration;

/** How far a maker thinks the batch is, and how long at the most it may take without a word from anyone. */
enum Stage {
    MELTING(Spot.HOT_BATH, Duration.ofMinutes(40)),
    COOLING(Spot.COLD_WATER, Duration.ofMinutes(25)),
    HOLDING(Spot.TABLE, Duration.ofMinutes(15)),
    WARMING(Spot.WARM_BATH, Duration.ofMinutes(12)),
    SETTLING(Spot.TABLE, Duration.ofMinutes(10)),
    POURING(Spot.TABLE, Duration.ofMinutes(60)),
    GONE(Spot.TABLE, Duration.ZERO);

    private final Spot spot;
    private final Duration patience;

    Stage(Spot spot, Duration patience) {
        this.spot = spot;
        this.patience = patience;
    }

    /** Where the bowl stands when this stage begins. */
    Spot spot() {
        return spot;
    }

    /** After so long without a cue the maker goes on unasked. Common practice, no source. */
    Duration patience() {
        return patience;
    }

    /** The stage that follows; nothing follows the last. */
    Stage following() {
        return values()[Math.min(ordinal() + 1, values().length - 1)];
    }
}
