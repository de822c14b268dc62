package fifthform.monitor.app;

import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.Role;
import fifthform.probe.Spoken;
import fifthform.probe.find.FoundPort;
import fifthform.probe.find.Ports;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.Scenarios;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** Turns what the maker said of probes into what a session reads. */
final class ProbeChooser {
    static final String PRACTICE = "practice";
    private static final String FILE = "file:";

    /** How much faster than life practice runs: a batch of 45 minutes in a minute and a half, and slower at the cue. */
    private static final double PRACTICE_SPEED = 30;

    private final Optional<String> talk;
    private final WatchSpeed speed;
    private final Duration interval;
    private final Optional<String> bathPort;
    private final Optional<String> roomPort;

    ProbeChooser(
            Optional<String> talk,
            WatchSpeed speed,
            Duration interval,
            Optional<String> bathPort,
            Optional<String> roomPort) {
        this.talk = Objects.requireNonNull(talk, "talk");
        this.speed = Objects.requireNonNull(speed, "speed");
        this.interval = Objects.requireNonNull(interval, "interval");
        this.bathPort = Objects.requireNonNull(bathPort, "bathPort");
        this.roomPort = Objects.requireNonNull(roomPort, "roomPort");
    }

    /** What {@code --probe} names; without it the last probe, else the only one found. */
    ProbeChoice choose(Optional<String> probe, Optional<String> lastPort) throws Refusal {
        if (talk.isPresent()) Protocols.named(talk.get());
        String name = probe.isPresent() ? probe.get() : found(lastPort);
        if (name.equals(PRACTICE) || name.startsWith(PRACTICE + ":")) return practice(name);
        if (name.startsWith(FILE)) {
            return new TapeProbe(
                    Path.of(name.substring(FILE.length())), spoken().talk().toString(), interval, speed);
        }
        if (speed.factor().isPresent()) {
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    "--speed was given with a real probe, which runs at the speed of life. Nothing was done. Leave --speed out.");
        }
        return ports(name);
    }

    /** The one protocol that fits a plain line, unless the maker names another. */
    private Spoken spoken() throws Refusal {
        return Protocols.named(talk.orElse(Protocols.TEXT));
    }

    private ProbeChoice practice(String name) throws Refusal {
        String id = name.equals(PRACTICE) ? Scenarios.FIRST : name.substring(PRACTICE.length() + 1);
        Scenario scenario = Answers.orRefuse(Scenarios.builtIn().find(id), Exit.NOT_UNDERSTOOD);
        return new PracticeProbe(scenario, speed.factor().orElse(PRACTICE_SPEED), speed.atCues());
    }

    private ProbeChoice ports(String bowlPort) throws Refusal {
        List<PortProbe.Port> ports = new ArrayList<>();
        ports.add(port(Setups.BOWL, Role.BOWL, bowlPort));
        if (bathPort.isPresent()) ports.add(port(Setups.BATH, Role.BATH, bathPort.get()));
        if (roomPort.isPresent()) ports.add(port(Setups.ROOM, Role.ROOM, roomPort.get()));
        return new PortProbe(ports);
    }

    private PortProbe.Port port(ProbeId id, Role role, String port) throws Refusal {
        return new PortProbe.Port(id, role, port, spoken());
    }

    private String found(Optional<String> lastPort) throws Refusal {
        List<FoundPort> ready = readyPorts();
        if (lastPort.isPresent() && ready.stream().anyMatch(p -> p.path().equals(lastPort.get())))
            return lastPort.get();
        if (ready.size() == 1) return ready.get(0).path();
        String what = ready.isEmpty()
                ? "No probe was found. No reading can be taken. Plug in the adapter and look with: fifthform ports"
                : "Several adapters were found. Nothing was started. Name one with --probe: "
                        + ready.stream().map(FoundPort::path).collect(Collectors.joining(", "));
        throw new Refusal(
                Exit.NO_PROBE,
                what + System.lineSeparator() + "Or practise on a simulated bowl: fifthform watch --probe practice");
    }

    private static List<FoundPort> readyPorts() throws Refusal {
        try {
            return Ports.list(InstantSource.system()).stream()
                    .filter(p -> p.state() == FoundPort.State.READY)
                    .toList();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refusal(Exit.NO_PROBE, "Looking for probes was interrupted. Nothing was started. Try again.");
        }
    }
}
