package fifthform.monitor.app;

import fifthform.curves.input.Input;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.monitor.intake.LiveSource.Ticking;
import fifthform.monitor.intake.SessionClock;
import fifthform.probe.Spoken;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.SerialSource;
import fifthform.probe.reader.ProbeLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;

/** Real probes on serial ports: the bowl's, and if there are, one in the bath and one for the room. */
final class PortProbe implements ProbeChoice {
    private static final KeyDesk.Speed SPEED_OF_LIFE = new KeyDesk.Speed() {
        @Override
        public void faster() {}

        @Override
        public void slower() {}
    };

    private final List<Port> ports;

    /** One adapter and what its probe measures. */
    record Port(ProbeId id, Role role, String port, Spoken spoken) {}

    PortProbe(List<Port> ports) {
        this.ports = List.copyOf(Objects.requireNonNull(ports, "ports"));
    }

    @Override
    public Origin origin() {
        return Origin.REAL;
    }

    @Override
    public List<ProbeSetup> probes() {
        return ports.stream()
                .map(p -> Setups.probe(p.id(), p.role(), p.spoken().talk().toString(), p.port()))
                .toList();
    }

    /** Opens every port once: one that cannot be opened now ends the command with the reason, not with a silent screen. */
    @Override
    public Wiring wire(SessionClock clock, Consumer<Input> hands) throws Refusal {
        List<ProbeLine> lines = new ArrayList<>();
        for (Port p : ports) {
            SerialSource source = new SerialSource(p.port(), p.spoken().line(), clock);
            try {
                OpenedOnce opened = new OpenedOnce(source, source.open());
                lines.add(new ProbeLine(
                        p.id().name(), opened, p.spoken().protocol(), Map.of(ProbeLine.FIRST_TO_SPEAK, p.id())));
            } catch (LinkException e) {
                throw new Refusal(Exit.NO_PROBE, e.getMessage() + " " + e.whatToDo());
            }
        }
        return new Wiring(lines, List.of(), SPEED_OF_LIFE, Ticking.BY_THE_CLOCK);
    }
}
