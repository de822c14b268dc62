package fifthform.simulator.rivals;

import fifthform.curves.engine.Event;
import fifthform.simulator.bench.Moment;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.scenario.ProbeScale;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a rival said of the trough just before the bowl left the cold water. The trough is the lowest of the next two
 * minutes: later it is the room that cools it. Our own choice.
 */
final class TroughWatch implements Watch {
    private static final Duration COUNTS_FOR = Duration.ofMinutes(2);

    private final ProbeScale scale;
    private Optional<Rival.Said> said = Optional.empty();
    private Optional<Instant> left = Optional.empty();
    private double lowest = Double.POSITIVE_INFINITY;

    TroughWatch(ProbeScale scale) {
        this.scale = scale;
    }

    @Override
    public void saw(Moment before, Moment after, List<Event> events) {
        boolean leaves =
                before.hands().spot() == Spot.COLD_WATER && after.hands().spot() == Spot.TABLE;
        if (leaves && left.isEmpty()) {
            left = Optional.of(before.at());
            said = ((Rival) before.program()).said();
        }
        boolean counts =
                left.filter(l -> !after.at().isAfter(l.plus(COUNTS_FOR))).isPresent();
        if (counts) lowest = Math.min(lowest, after.kitchen().bulkCelsius());
    }

    /** Forecast less truth in the readings' scale, K. */
    OptionalDouble errorKelvin() {
        return said.map(s -> OptionalDouble.of(s.celsius() - scale.shows(lowest)))
                .orElse(OptionalDouble.empty());
    }
}
