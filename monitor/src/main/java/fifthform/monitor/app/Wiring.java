package fifthform.monitor.app;

import fifthform.monitor.intake.LiveSource.Ticking;
import fifthform.monitor.practice.Training;
import fifthform.monitor.session.SessionListener;
import fifthform.probe.reader.ProbeLine;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A probe, wired up: what its readers read, who follows the session because of it, and what the speed keys do.
 *
 * @param lines one for each reader
 * @param ticking where the time between inputs comes from
 * @param training where the keys are the hands in a simulated kitchen
 */
record Wiring(
        List<ProbeLine> lines,
        List<SessionListener> listeners,
        KeyDesk.Speed speed,
        Ticking ticking,
        Optional<Training> training) {
    Wiring {
        lines = List.copyOf(lines);
        listeners = List.copyOf(listeners);
        Objects.requireNonNull(speed, "speed");
        Objects.requireNonNull(ticking, "ticking");
        Objects.requireNonNull(training, "training");
    }

    /** The bowl is in other hands. */
    Wiring(List<ProbeLine> lines, List<SessionListener> listeners, KeyDesk.Speed speed, Ticking ticking) {
        this(lines, listeners, speed, ticking, Optional.empty());
    }

    /** The same, in the hands of whoever sits at the keys. */
    Wiring trained(Training by) {
        return new Wiring(lines, listeners, speed, ticking, Optional.of(by));
    }
}
