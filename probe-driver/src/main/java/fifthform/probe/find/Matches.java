package fifthform.probe.find;

import fifthform.curves.setup.Role;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Which adapters that were used before are plugged in now.
 *
 * <p>One with a serial number is known by vendor, product and serial number, wherever it is; one without by vendor, product
 * and place, since another of its kind would look the same; a port that is no USB adapter by its place.
 *
 * @param all every pair of a known adapter and a port that it may be on
 */
public record Matches(List<Match> all) {
    /** A known adapter and the port on which it seems to be. */
    public record Match(KnownAdapter adapter, FoundPort port) {
        public Match {
            Objects.requireNonNull(adapter, "adapter");
            Objects.requireNonNull(port, "port");
        }
    }

    public Matches {
        all = List.copyOf(all);
    }

    public static Matches of(List<KnownAdapter> known, List<FoundPort> ports) {
        return new Matches(known.stream()
                .flatMap(adapter ->
                        ports.stream().filter(port -> isOn(adapter, port)).map(port -> new Match(adapter, port)))
                .toList());
    }

    /** Those with a probe for this role. */
    public Matches withRole(Role role) {
        return new Matches(all.stream()
                .filter(match -> match.adapter().probes().stream().anyMatch(probe -> probe.role() == role))
                .toList());
    }

    /** The one that may be used without asking; empty where there is none or more than one. */
    public Optional<Match> only() {
        return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    /** Whether the maker has to say which one it is. */
    public boolean isAmbiguous() {
        return all.size() > 1;
    }

    private static boolean isOn(KnownAdapter adapter, FoundPort port) {
        return adapter.isAt(port.place(), port.usb()) || adapter.isAt(port.path(), port.usb());
    }
}
