package fifthform.simulator.maker;

import fifthform.curves.check.Require;
import fifthform.simulator.bowl.ProbePlace;
import java.util.Objects;

/**
 * For a while the probe is not where it should be.
 *
 * @param fromSeconds since the batch began, s
 * @param toSeconds when it is back, s
 * @param place where it is meanwhile
 */
record Spell(double fromSeconds, double toSeconds, ProbePlace place) {
    Spell {
        Require.within(fromSeconds, 0, 1e5, "fromSeconds");
        Require.within(toSeconds, fromSeconds, 1e5, "toSeconds");
        Objects.requireNonNull(place, "place");
    }

    boolean lasts(double seconds) {
        return seconds >= fromSeconds && seconds < toSeconds;
    }
}
