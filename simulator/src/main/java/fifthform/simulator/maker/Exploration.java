package fifthform.simulator.maker;

import fifthform.curves.check.Require;
import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.util.List;
import java.util.Objects;

/**
 * What somebody who explores has set out to do.
 *
 * @param stays one after the other
 * @param rewarm over which water the dips are
 * @param stirring how
 * @param spells of the probe
 * @param wipesFraction how often a bowl that comes to the table is wiped
 * @param wipesAfter when
 * @param seedGrams thrown in once, 0 for none
 * @param seedAtCelsius when the thermometer has come down to this in the cold water or on the table
 */
record Exploration(
        List<Stay> stays,
        Spot rewarm,
        Stirring stirring,
        List<Spell> spells,
        double wipesFraction,
        Duration wipesAfter,
        double seedGrams,
        double seedAtCelsius) {
    Exploration {
        stays = List.copyOf(stays);
        Objects.requireNonNull(rewarm, "rewarm");
        Objects.requireNonNull(stirring, "stirring");
        spells = List.copyOf(spells);
        Require.within(wipesFraction, 0, 1, "wipesFraction");
        Objects.requireNonNull(wipesAfter, "wipesAfter");
        Require.within(seedGrams, 0, 20_000, "seedGrams");
    }
}
