package fifthform.monitor.app;

import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.monitor.adapters.Adapters;
import fifthform.probe.find.KnownAdapter;
import fifthform.probe.find.KnownProbe;
import fifthform.probe.find.Ports;
import fifthform.probe.reader.ProbeLine;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Remembers the adapters of a session, so that the next one needs no options. */
final class AdapterMemory {
    private final Adapters adapters;

    AdapterMemory(Adapters adapters) {
        this.adapters = Objects.requireNonNull(adapters, "adapters");
    }

    /**
     * Before a session: where each adapter is and how it talks.
     *
     * @throws IOException it cannot be written; what was kept before stands
     */
    void remember(PortProbe choice) throws IOException {
        remember(choice, OptionalDouble.empty());
    }

    /**
     * After it: the lag that the bowl's tip showed as well.
     *
     * @throws IOException it cannot be written; what was kept before stands
     */
    void remember(PortProbe choice, OptionalDouble bowlLagSeconds) throws IOException {
        Map<String, List<PortProbe.Wired>> byAdapter = choice.wired().stream()
                .collect(Collectors.groupingBy(
                        wired -> wired.adapter().path(), LinkedHashMap::new, Collectors.toList()));
        for (Map.Entry<String, List<PortProbe.Wired>> entry : byAdapter.entrySet()) {
            String path = entry.getKey();
            List<KnownProbe> probes = entry.getValue().stream()
                    // Which channel spoke first is not known yet; it is remembered once somebody names it.
                    .filter(wired -> wired.channel() != ProbeLine.FIRST_TO_SPEAK)
                    .map(wired -> known(wired, bowlLagSeconds))
                    .toList();
            KnownAdapter known = new KnownAdapter(
                    Ports.identity(path),
                    KnownProbes.keptPlace(path),
                    entry.getValue().get(0).adapter().spoken().talk(),
                    probes);
            adapters.remember(known, Origin.REAL);
        }
    }

    /** Checks are kept by check-probe alone; here only what is used for what. */
    private static KnownProbe known(PortProbe.Wired wired, OptionalDouble bowlLagSeconds) {
        double seconds = wired.setup().lagSeconds();
        OptionalDouble before =
                seconds == ProbeSetup.USUAL_LAG_SECONDS ? OptionalDouble.empty() : OptionalDouble.of(seconds);
        boolean measured = wired.setup().role() == Role.BOWL && bowlLagSeconds.isPresent();
        OptionalDouble lag = measured ? bowlLagSeconds : before;
        return new KnownProbe(
                wired.channel(), wired.setup().role(), wired.setup().sensor(), Correction.UNCHECKED, lag);
    }
}
