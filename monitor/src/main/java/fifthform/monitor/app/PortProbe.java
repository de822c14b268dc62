package fifthform.monitor.app;

import fifthform.curves.input.Input;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.ProbeSetup;
import fifthform.monitor.intake.LiveSource.Ticking;
import fifthform.monitor.intake.SessionClock;
import fifthform.probe.find.AdapterSource;
import fifthform.probe.link.KernelFilesSource;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import fifthform.probe.reader.ProbeLine;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Consumer;

/** Real probes: the bowl's, and if there are, one in the bath and one for the room, on one adapter or several. */
final class PortProbe implements ProbeChoice {
    /** The kernel's sensors convert for up to a quarter of a second; twice a second is enough for a bowl. */
    private static final Duration KERNEL_INTERVAL = Duration.ofMillis(500);

    private static final KeyDesk.Speed SPEED_OF_LIFE = new KeyDesk.Speed() {
        @Override
        public void faster() {}

        @Override
        public void slower() {}
    };

    private final List<Wired> probes;

    /**
     * One probe on its adapter.
     *
     * @param channel the adapter's channel, or {@link ProbeLine#FIRST_TO_SPEAK}
     */
    record Wired(ProbeSetup setup, Adapter adapter, int channel) {
        Wired {
            Objects.requireNonNull(setup, "setup");
            Objects.requireNonNull(adapter, "adapter");
        }
    }

    /** @param probes each on a channel of its own; those on one adapter share its line */
    PortProbe(List<Wired> probes) {
        this.probes = List.copyOf(Objects.requireNonNull(probes, "probes"));
    }

    @Override
    public Origin origin() {
        return Origin.REAL;
    }

    @Override
    public List<ProbeSetup> probes() {
        return probes.stream().map(Wired::setup).toList();
    }

    /** The probes with their adapters, for remembering. */
    List<Wired> wired() {
        return probes;
    }

    /** Opens every port once: one that cannot be opened now ends the command with the reason, not with a silent screen. */
    @Override
    public Wiring wire(SessionClock clock, Consumer<Input> hands) throws Refusal {
        Map<String, List<Wired>> byAdapter = new LinkedHashMap<>();
        for (Wired probe : probes)
            byAdapter
                    .computeIfAbsent(probe.adapter().path(), path -> new ArrayList<>())
                    .add(probe);
        List<ProbeLine> lines = new ArrayList<>();
        for (List<Wired> together : byAdapter.values()) lines.add(line(together, clock));
        return new Wiring(lines, List.of(), SPEED_OF_LIFE, Ticking.BY_THE_CLOCK);
    }

    private static ProbeLine line(List<Wired> together, SessionClock clock) throws Refusal {
        Adapter adapter = together.get(0).adapter();
        LinkSource source = source(adapter, clock);
        Map<Integer, ProbeId> channels = new TreeMap<>();
        together.forEach(probe -> channels.put(probe.channel(), probe.setup().id()));
        try {
            OpenedOnce opened = new OpenedOnce(source, source.open());
            return new ProbeLine(
                    together.get(0).setup().id().name(),
                    opened,
                    adapter.spoken().protocol(),
                    channels);
        } catch (LinkException e) {
            throw new Refusal(Exit.NO_PROBE, e.getMessage() + " " + e.whatToDo());
        }
    }

    /** Opens an adapter's line, again and again. */
    static LinkSource source(Adapter adapter, InstantSource clock) {
        return isKernelSensor(adapter.path())
                ? new KernelFilesSource(Path.of(adapter.path()), KERNEL_INTERVAL, clock)
                : AdapterSource.on(adapter.path(), adapter.spoken().line(), clock);
    }

    /** Sensors of the kernel are directories; ports never are. */
    static boolean isKernelSensor(String path) {
        return Files.isDirectory(Path.of(path));
    }
}
