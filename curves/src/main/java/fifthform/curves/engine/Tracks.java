package fifthform.curves.engine;

import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Track;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** What is known of each probe of the session, in the order of the set-up. */
public record Tracks(List<Entry> entries) {
    /** One probe and what is known of it. */
    public record Entry(ProbeId probe, Track track) {
        public Entry {
            Objects.requireNonNull(probe, "probe");
            Objects.requireNonNull(track, "track");
        }
    }

    public Tracks {
        entries = List.copyOf(entries);
    }

    static Tracks silentSince(Setup setup, Instant start) {
        return new Tracks(setup.probes().stream()
                .map(p -> new Entry(p.id(), Track.silentSince(start)))
                .toList());
    }

    /** What is known of this probe. */
    public Optional<Track> of(ProbeId probe) {
        return entries.stream()
                .filter(e -> e.probe().equals(probe))
                .map(Entry::track)
                .findFirst();
    }

    /** What is known of the probe with this role. */
    public Optional<Track> of(Setup setup, Role role) {
        return setup.withRole(role).flatMap(p -> of(p.id()));
    }

    /** The tracks once this reading has come; a probe that the set-up does not know is passed over. */
    Tracks with(Sample sample, Setup setup) {
        Optional<ProbeSetup> probe = setup.probe(sample.probe());
        return probe.map(p -> changed(p.id(), t -> t.with(sample, p.correction())))
                .orElse(this);
    }

    Tracks with(ProbeFault fault) {
        return changed(fault.probe(), t -> t.with(fault));
    }

    private Tracks changed(ProbeId probe, UnaryOperator<Track> change) {
        List<Entry> after = new ArrayList<>(entries.size());
        for (Entry e : entries) after.add(e.probe().equals(probe) ? new Entry(probe, change.apply(e.track())) : e);
        return new Tracks(after);
    }
}
