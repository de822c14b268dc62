package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.simulator.bench.WhatIfTrial.Compared;
import fifthform.simulator.bench.WhatIfTrial.Held;
import fifthform.simulator.bench.WhatIfTrial.Told;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** A what-if against the simulator's own re-run of the changed batch; {@code WhatIfBench} is the same at length. */
class WhatIfTrialTest {
    private static final long BATCHES = 16;

    @Test
    void theBandHoldsWhatReallyCameOfTheChangedAct() {
        Fleet fleet = Fleet.builtIn(Fleet.HOME).withSeed(43);
        List<Held> held = LongStream.range(0, BATCHES)
                .mapToObj(n -> WhatIfTrial.of(fleet, n, Told.MUCH))
                .flatMap(t -> t.held().stream())
                .toList();
        long answered = held.stream().map(Held::number).distinct().count();
        assertTrue(answered >= 7, answered + " batches with an answer");
        double turns = held.stream().filter(Held::turnHeld).count() / (double) held.size();
        assertTrue(turns >= 0.85, "turning point held in " + turns);
        List<Compared> curve = held.stream().flatMap(h -> h.moments().stream()).toList();
        double moments = curve.stream().filter(Compared::held).count() / (double) curve.size();
        assertTrue(moments >= 0.85, "curve held in " + moments);
        // A band that holds everything says nothing.
        double half =
                held.stream().mapToDouble(Held::turnHalfWidthKelvin).average().orElseThrow();
        assertTrue(half <= 0.6, "± " + half + " K");
    }
}
