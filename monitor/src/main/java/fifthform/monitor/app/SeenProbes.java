package fifthform.monitor.app;

import fifthform.curves.setup.Role;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.adapters.KeptAdapter;
import fifthform.monitor.model.CheckAge;
import fifthform.monitor.settings.Units;
import fifthform.monitor.start.SeenProbe;
import fifthform.monitor.texts.StartText;
import fifthform.probe.find.FoundPort;
import fifthform.probe.find.KnownProbe;
import fifthform.probe.find.Ports;
import fifthform.probe.reader.ProbeLine;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What is plugged in and may be the bowl's probe, in words; nothing is opened for it. */
final class SeenProbes {
    private final Adapters adapters;
    private final Optional<String> lastPort;
    private final Units units;

    SeenProbes(Adapters adapters, Optional<String> lastPort, Units units) {
        this.adapters = adapters;
        this.lastPort = lastPort;
        this.units = units;
    }

    /** The likeliest first: one used in a bowl before, the last one, the others. */
    List<SeenProbe> look() {
        KnownProbes known = new KnownProbes(adapters.load());
        List<FoundPort> ready = new ArrayList<>();
        try {
            Ports.list(InstantSource.system()).stream()
                    .filter(port -> port.state() == FoundPort.State.READY)
                    .forEach(ready::add);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        ready.sort(Comparator.comparingInt(port -> rank(port, known.at(port.path()))));
        return ready.stream().map(port -> seen(port, known.at(port.path()))).toList();
    }

    private int rank(FoundPort port, Optional<KeptAdapter> kept) {
        if (kept.filter(adapter -> AdapterFinder.carries(adapter, Role.BOWL)).isPresent()) return 0;
        boolean last = lastPort.filter(
                        name -> KnownProbes.place(PortName.parse(name).port()).equals(port.path()))
                .isPresent();
        return last ? 1 : kept.isPresent() ? 2 : 3;
    }

    private SeenProbe seen(FoundPort port, Optional<KeptAdapter> kept) {
        Optional<KnownProbe> probe =
                kept.flatMap(adapter -> KnownProbes.on(adapter, Role.BOWL, ProbeLine.FIRST_TO_SPEAK));
        Optional<Instant> checked = probe.flatMap(p -> p.correction().checkedAt());
        String check = checked.map(at -> StartText.PROBE_CHECKED.say(
                        CheckAge.ago(age(at)),
                        units.difference(2 * probe.orElseThrow().correction().sigmaKelvin())))
                .orElseGet(StartText.PROBE_UNCHECKED::say);
        String words = kept.isPresent()
                ? StartText.PROBE_USED.say(port.description())
                : StartText.PROBE_NEW.say(port.description());
        return new SeenProbe(port.path(), words, check, checked.isPresent());
    }

    private static Duration age(Instant at) {
        Duration age = Duration.between(at, Instant.now());
        return age.isNegative() ? Duration.ZERO : age;
    }
}
