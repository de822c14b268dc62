package fifthform.curves.engine;

import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Judgement;
import fifthform.curves.signal.Surroundings;
import fifthform.curves.signal.Track;
import fifthform.curves.situation.ProbePlace;
import fifthform.curves.thermocouple.Budget;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** What is known of each probe of the session, in the order of the set-up. */
public record Tracks(List<Entry> entries) {
    /**
     * One probe, what it measures, its curve, and what is to be said about itself.
     *
     * @param last its last reading, its converter's arithmetic undone, its correction not applied
     */
    public record Entry(ProbeId probe, Role role, Track track, Judgement judgement, Optional<Sample> last) {
        public Entry {
            Objects.requireNonNull(probe, "probe");
            Objects.requireNonNull(role, "role");
            Objects.requireNonNull(track, "track");
            Objects.requireNonNull(judgement, "judgement");
            Objects.requireNonNull(last, "last");
        }

        /** How far its last reading can be trusted; empty before the first. */
        Optional<Budget> budget(ProbeSetup setup) {
            return last.map(sample -> setup.budget(
                    sample.tipCelsius(), sample.junctionCelsius(), sample.sigmaKelvin(), track.noiseKelvin()));
        }

        private Entry read(Sample sample, ProbeSetup setup, Judgement judged, Surroundings around) {
            // What was read elsewhere, or on the way, is no part of the chocolate's curve.
            boolean back = judgement.tipIsElsewhere() && !judged.tipIsElsewhere();
            Sample resolved = judged.resolved(sample.linearised(setup.sensor()));
            Track read = (back ? track.anew() : track).with(resolved, setup.correction());
            OptionalDouble slope = back ? judgement.slopeBefore() : OptionalDouble.empty();
            Track curve = slope.isPresent() ? read.goingOn(slope.getAsDouble()) : read;
            Track followed = curve.doubted(judged.doubt(around));
            return new Entry(probe, role, followed, judged.naming(followed.doubt()), Optional.of(resolved));
        }

        private Entry with(Track otherTrack, Judgement otherJudgement) {
            return new Entry(probe, role, otherTrack, otherJudgement, last);
        }
    }

    public Tracks {
        entries = List.copyOf(entries);
    }

    static Tracks silentSince(Setup setup, Instant start) {
        return new Tracks(setup.probes().stream()
                .map(p -> new Entry(
                        p.id(), p.role(), Track.silentSince(start, p.role()), Judgement.since(start), Optional.empty()))
                .toList());
    }

    /** What is known of this probe. */
    public Optional<Track> of(ProbeId probe) {
        return entry(probe).map(Entry::track);
    }

    /** What is known of the probe with this role. */
    public Optional<Track> of(Setup setup, Role role) {
        return setup.withRole(role).flatMap(p -> of(p.id()));
    }

    /** How far the last reading of this probe can be trusted; empty before its first. */
    Optional<Budget> budget(ProbeSetup setup) {
        return entry(setup.id()).flatMap(e -> e.budget(setup));
    }

    /** What is to be said about this probe itself. */
    public Optional<Judgement> judgementOf(ProbeId probe) {
        return entry(probe).map(Entry::judgement);
    }

    private Optional<Entry> entry(ProbeId probe) {
        for (Entry e : entries) if (e.probe().equals(probe)) return Optional.of(e);
        return Optional.empty();
    }

    /** The set-up of the bowl's probe, with the lag that a dip showed in place of the one assumed. */
    ProbeSetup asMeasured(ProbeSetup bowl) {
        return judgementOf(bowl.id())
                .flatMap(Judgement::lag)
                .map(lag -> bowl.withLagSeconds(lag.seconds()))
                .orElse(bowl);
    }

    /**
     * The tracks once this reading has come; a probe that the set-up does not know is passed over. Only the bowl's
     * probe in the bowl is judged by what is around it.
     */
    Tracks with(Sample sample, Setup setup, ProbePlace place, Surroundings around) {
        Optional<ProbeSetup> probe = setup.probe(sample.probe());
        if (probe.isEmpty()) return this;
        boolean inTheBowl = probe.get().role() == Role.BOWL && place == ProbePlace.IN_THE_CHOCOLATE;
        return changed(
                sample.probe(),
                e -> e.read(
                        sample,
                        probe.get(),
                        inTheBowl
                                ? e.judgement().inTheBowl(sample, around)
                                : e.judgement().elsewhere(sample),
                        around));
    }

    Tracks with(ProbeFault fault) {
        return changed(
                fault.probe(), e -> e.with(e.track().with(fault), e.judgement().with(fault)));
    }

    /** Out of the chocolate on purpose. */
    Tracks takenOut(ProbeId probe) {
        return changed(probe, e -> e.with(e.track(), e.judgement().takenOut()));
    }

    /** In the chocolate again: what was read elsewhere says nothing of it. */
    Tracks putBack(ProbeId probe, Instant at) {
        return changed(probe, e -> e.with(e.track().anew(), e.judgement().putBack(at)));
    }

    private Tracks changed(ProbeId probe, UnaryOperator<Entry> change) {
        List<Entry> after = new ArrayList<>(entries.size());
        for (Entry e : entries) after.add(e.probe().equals(probe) ? change.apply(e) : e);
        return new Tracks(after);
    }
}
