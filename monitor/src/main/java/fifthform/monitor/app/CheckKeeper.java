package fifthform.monitor.app;

import fifthform.curves.probecheck.Finding;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Role;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.adapters.KeptAdapter;
import fifthform.monitor.adapters.KeptCheck;
import fifthform.monitor.texts.CheckText;
import fifthform.probe.find.KnownAdapter;
import fifthform.probe.find.KnownProbe;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** Keeps checks of real probes with their adapters, passed or not. */
final class CheckKeeper {
    private final Adapters adapters;

    CheckKeeper(Adapters adapters) {
        this.adapters = Objects.requireNonNull(adapters, "adapters");
    }

    /** The file in which the check is kept now; empty where nothing is to be kept of this probe. */
    Optional<Path> keep(CheckSubject subject, CheckOutcome outcome, Instant at) throws Refusal {
        boolean nothingToTell = outcome.points().isEmpty() && subject.kept().isEmpty();
        if (subject.kind() != CheckSubject.Kind.REAL || nothingToTell) return Optional.empty();
        Optional<Correction> correction = outcome.finding().map(Finding::correction);
        String words = outcome.failure().orElseGet(() -> correction.isPresent() ? "passed" : "plausible");
        KeptCheck check = new KeptCheck(
                correction.flatMap(Correction::checkedAt).orElse(at),
                outcome.channel(),
                outcome.points(),
                correction,
                words);
        try {
            KeptAdapter kept = adapters.remember(adapter(subject, outcome.channel()), Origin.REAL);
            adapters.keep(kept, check);
            return Optional.of(kept.file());
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, CheckText.THE_CHECK_COULD_NOT_BE_KEPT.say(e.getMessage()));
        }
    }

    private static KnownAdapter adapter(CheckSubject subject, int channel) {
        Optional<KnownProbe> before = subject.kept().flatMap(kept -> kept.probe(channel));
        KnownProbe probe = new KnownProbe(
                channel,
                before.map(KnownProbe::role).orElse(Role.BOWL),
                subject.sensor(),
                Correction.UNCHECKED,
                before.map(KnownProbe::lagSeconds).orElse(OptionalDouble.empty()));
        return new KnownAdapter(
                subject.usb(),
                KnownProbes.keptPlace(subject.place()),
                subject.spoken().talk(),
                List.of(probe));
    }

    /** Forgets the adapter; its file is kept under another name. */
    Path forget(KeptAdapter adapter) throws Refusal {
        try {
            return adapters.forget(adapter);
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, CheckText.COULD_NOT_BE_SET_ASIDE_THE.say(adapter.file(), e.getMessage()));
        }
    }
}
