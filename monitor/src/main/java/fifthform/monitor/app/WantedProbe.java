package fifthform.monitor.app;

import fifthform.curves.setup.Role;
import java.util.Objects;
import java.util.Optional;

/**
 * A probe that is to be watched, before anybody knows how its adapter talks.
 *
 * @param role what it measures
 * @param port where it is
 * @param talk how its adapter talks, where the maker said it
 */
record WantedProbe(Role role, PortName port, Optional<String> talk) {
    WantedProbe {
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(port, "port");
        Objects.requireNonNull(talk, "talk");
    }
}
