package fifthform.monitor.app;

import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.thermocouple.Sensor;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.adapters.KeptAdapter;
import fifthform.probe.Spoken;
import fifthform.probe.find.KnownProbe;
import fifthform.probe.find.Ports;
import fifthform.probe.find.UsbIdentity;
import fifthform.probe.reader.ProbeLine;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/** What is remembered of the probe behind a port: the one place where a real set-up gets its correction from. */
final class KnownProbes {
    private static final Path DEVICES = Path.of("/dev");

    private final Adapters.Loaded loaded;
    private final Function<String, Optional<UsbIdentity>> identity;

    KnownProbes(Adapters.Loaded loaded) {
        this(loaded, Ports::identity);
    }

    /** @param identity what the adapter on a port says of itself */
    KnownProbes(Adapters.Loaded loaded, Function<String, Optional<UsbIdentity>> identity) {
        this.loaded = Objects.requireNonNull(loaded, "loaded");
        this.identity = Objects.requireNonNull(identity, "identity");
    }

    /** The adapter that is plugged in at this port. */
    Optional<KeptAdapter> at(String port) {
        Optional<UsbIdentity> usb = identity.apply(place(port));
        return loaded.at(keptPlace(port), usb).or(() -> loaded.at(place(port), usb));
    }

    /**
     * The set-up of a probe: with its sensor, correction and lag where it is known, else unchecked.
     *
     * @param channel the adapter's channel, or {@link ProbeLine#FIRST_TO_SPEAK}
     */
    ProbeSetup setup(ProbeId id, Role role, Spoken spoken, PortName port, int channel) {
        String talk = spoken.talk().toString();
        String place = place(port.port());
        String named = new PortName(place, port.channel()).toString();
        Optional<KnownProbe> known = at(place).flatMap(adapter -> on(adapter, role, channel));
        return known.map(k -> Setups.probe(
                        id,
                        talk,
                        named,
                        new KnownProbe(k.channel(), role, sensor(k, spoken), k.correction(), k.lagSeconds())))
                .orElseGet(() -> Setups.unchecked(id, role, spoken, named));
    }

    /** What is kept comes first: a correction holds only for the arithmetic with which it was found. */
    private static Sensor sensor(KnownProbe known, Spoken spoken) {
        boolean free =
                known.sensor().equals(Sensor.UNKNOWN) && !known.correction().isChecked();
        return free ? spoken.protocol().sensor() : known.sensor();
    }

    /** A channel by its number; where nobody named one, the one with that role, else the only one. */
    static Optional<KnownProbe> on(KeptAdapter adapter, Role role, int channel) {
        if (channel != ProbeLine.FIRST_TO_SPEAK) return adapter.probe(channel);
        var probes = adapter.known().probes();
        return probes.stream()
                .filter(p -> p.role() == role)
                .findFirst()
                .or(() -> probes.size() == 1 ? Optional.of(probes.get(0)) : Optional.empty());
    }

    /** How files name the place of the adapter on this port: the socket, where the system counts sockets. */
    static String keptPlace(String port) {
        return Ports.place(place(port));
    }

    /** {@code ttyUSB0} and {@code /dev/ttyUSB0} are one place. */
    static String place(String port) {
        try {
            Path device = DEVICES.resolve(port);
            return Files.exists(device) ? device.toString() : port;
        } catch (InvalidPathException e) {
            return port;
        }
    }
}
