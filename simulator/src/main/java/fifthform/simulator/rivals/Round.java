package fifthform.simulator.rivals;

import fifthform.simulator.maker.Manner;
import fifthform.simulator.rivals.WarningWatch.Warned;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * All entrants in one kitchen.
 *
 * @param tried what each showed
 * @param drift how long before melt-out the engine warned of a forgotten bowl; empty where it never came to that
 */
record Round(Map<Entrant, Tried> tried, Optional<Warned> drift) {
    Round {
        tried = tried.isEmpty() ? Map.of() : new EnumMap<>(tried);
    }

    static Round in(Ring ring, Set<Entrant> entrants) {
        Map<Entrant, Tried> tried = new EnumMap<>(Entrant.class);
        for (Entrant each : entrants) {
            if (each.comesTo(ring.kitchen().number())) tried.put(each, each.in(ring));
        }
        Optional<Warned> drift = Optional.empty();
        if (tried.containsKey(Entrant.STEADY)) {
            drift = ring.drift(k -> EngineRival.beginning(k, Knowledge.NOTHING, Manner.STEADY));
        }
        return new Round(tried, drift);
    }
}
