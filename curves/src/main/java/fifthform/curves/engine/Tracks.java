package fifthform.curves.engine;

import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Track;
import fifthform.curves.thermocouple.Budget;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** What is known of each probe of the session, in the order of the set-up. */
public record Tracks(List<Entry> entries) {
    /**
     * One probe and what is known of it.
     *
     * @param last its last reading, its converter's arithmetic undone, its correction not applied
     */
    public record Entry(ProbeId probe, Track track, Optional<Sample> last) {
        public Entry {
            Objects.requireNonNull(probe, "probe");
            Objects.requireNonNull(track, "track");
            Objects.requireNonNull(last, "last");
        }

        Entry with(Sample sample, ProbeSetup setup) {
            Sample linearised = sample.linearised(setup.sensor());
            return new Entry(probe, track.with(linearised, setup.correction()), Optional.of(linearised));
        }

        Entry with(ProbeFault fault) {
            return new Entry(probe, track.with(fault), last);
        }

        /** How far its last reading can be trusted; empty before the first. */
        Optional<Budget> budget(ProbeSetup setup) {
            return last.map(sample -> setup.budget(
                    sample.tipCelsius(), sample.junctionCelsius(), sample.sigmaKelvin(), track.noiseKelvin()));
        }
    }

    public Tracks {
        entries = List.copyOf(entries);
    }

    static Tracks silentSince(Setup setup, Instant start) {
        return new Tracks(setup.probes().stream()
                .map(p -> new Entry(p.id(), Track.silentSince(start), Optional.empty()))
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

    /** How far the last reading of this probe can be trusted; empty before its first. */
    Optional<Budget> budget(ProbeSetup setup) {
        return entries.stream()
                .filter(e -> e.probe().equals(setup.id()))
                .findFirst()
                .flatMap(e -> e.budget(setup));
    }

    /** The tracks once this reading has come; a probe that the set-up does not know is passed over. */
    Tracks with(Sample sample, Setup setup) {
        Optional<ProbeSetup> probe = setup.probe(sample.probe());
        return probe.map(p -> changed(p.id(), entry -> entry.with(sample, p))).orElse(this);
    }

    Tracks with(ProbeFault fault) {
        return changed(fault.probe(), entry -> entry.with(fault));
    }

    private Tracks changed(ProbeId probe, UnaryOperator<Entry> change) {
        List<Entry> after = new ArrayList<>(entries.size());
        for (Entry e : entries) after.add(e.probe().equals(probe) ? change.apply(e) : e);
        return new Tracks(after);
    }
}
