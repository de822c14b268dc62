package fifthform.monitor.app;

import fifthform.monitor.intake.LiveSource.Ticking;
import fifthform.monitor.session.SessionListener;
import fifthform.probe.reader.ProbeLine;
import java.util.List;
import java.util.Objects;

/**
 * A probe, wired up: what its readers read, who follows the session because of it, and what the speed keys do.
 *
 * @param lines one for each reader
 * @param ticking where the time between inputs comes from
 */
record Wiring(List<ProbeLine> lines, List<SessionListener> listeners, KeyDesk.Speed speed, Ticking ticking) {
    Wiring {
        lines = List.copyOf(lines);
        listeners = List.copyOf(listeners);
        Objects.requireNonNull(speed, "speed");
        Objects.requireNonNull(ticking, "ticking");
    }
}
