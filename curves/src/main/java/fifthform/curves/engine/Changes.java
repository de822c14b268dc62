package fifthform.curves.engine;

import fifthform.curves.alarm.AlarmState;
import fifthform.curves.alarm.Standing;
import fifthform.curves.bowlcheck.OtherBowl;
import fifthform.curves.crystal.CrystalWatch;
import fifthform.curves.crystal.Overshoot;
import fifthform.curves.crystal.Temper;
import fifthform.curves.cue.CueId;
import fifthform.curves.cue.OpenCue;
import fifthform.curves.engine.Event.BowlSeen;
import fifthform.curves.forecast.Turn;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.phase.Contact;
import fifthform.curves.phase.Evidence;
import fifthform.curves.setup.Role;
import fifthform.curves.signal.Doubt;
import fifthform.curves.signal.Judgement;
import fifthform.curves.signal.Lag;
import fifthform.curves.signal.Track;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The events between two states. Found here and nowhere else, so that none can be sent twice or forgotten in a branch.
 */
final class Changes {
    private final State before;
    private final State after;
    private final Instant at;
    private final List<Event> events = new ArrayList<>();

    private Changes(State before, State after) {
        this.before = before;
        this.after = after;
        this.at = after.at();
    }

    static List<Event> between(State before, State after) {
        Changes changes = new Changes(before, after);
        changes.probes();
        changes.lags();
        changes.other();
        changes.turn();
        changes.bowl();
        changes.place();
        changes.phase();
        for (AlarmId id : AlarmId.values()) changes.alarm(id);
        changes.doubts();
        changes.seed();
        for (CueId id : CueId.values()) changes.cue(id);
        return changes.events;
    }

    private void probes() {
        for (Tracks.Entry entry : after.tracks().entries()) {
            Optional<Track> earlier = before.tracks().of(entry.probe());
            // Before its first reading a probe is neither lost nor back.
            if (earlier.isEmpty() || earlier.get().lastCelsius().isEmpty()) continue;
            boolean was = earlier.get().freshAt(before.at());
            boolean is = entry.track().freshAt(at);
            if (was && !is) {
                events.add(new Event.ProbeLost(
                        at, entry.probe(), entry.track().fault().orElse(Cause.SILENT)));
            } else if (!was && is) {
                Duration gone = Duration.between(earlier.get().lastGood(), at);
                events.add(new Event.ProbeBack(at, entry.probe(), gone.toMillis() / 1000.0));
            }
        }
    }

    private void lags() {
        for (Tracks.Entry entry : after.tracks().entries()) {
            Optional<Lag> lag = entry.judgement().lag();
            Optional<Lag> earlier = before.tracks().judgementOf(entry.probe()).flatMap(Judgement::lag);
            if (lag.isPresent() && !lag.equals(earlier)) {
                events.add(new Event.LagMeasured(
                        at, entry.probe(), lag.get().seconds(), lag.get().sigmaSeconds()));
            }
        }
    }

    private void other() {
        List<OtherReading> others = after.otherReadings();
        if (others.isEmpty() || others.equals(before.otherReadings())) return;
        OtherReading newest = others.get(0);
        events.add(new Event.OtherCompared(at, newest.celsius(), newest.aboveKelvin(), newest.withinKelvin()));
    }

    /** The alarm says that something is in doubt, this says why; also when another cause shows while it stands. */
    private void doubts() {
        boolean stood = before.alarms().of(AlarmId.READING_DOUBTFUL).state().isStanding();
        if (!after.alarms().of(AlarmId.READING_DOUBTFUL).state().isStanding()) return;
        for (Tracks.Entry entry : after.tracks().entries()) {
            Optional<Doubt> doubt = entry.judgement().lastDoubt();
            Optional<Doubt> earlier = before.tracks().judgementOf(entry.probe()).flatMap(Judgement::lastDoubt);
            if (entry.role() == Role.BOWL && doubt.isPresent() && !(stood && doubt.equals(earlier))) {
                events.add(new Event.ReadingDoubted(at, entry.probe(), doubt.get()));
            }
        }
    }

    private void turn() {
        Optional<Turn> turn = after.coasting().lastTurn();
        if (turn.isPresent() && !turn.equals(before.coasting().lastTurn())) {
            events.add(new Event.Turned(at, turn.get().celsius(), turn.get().coastKelvin()));
        }
    }

    private void bowl() {
        Optional<OtherBowl> like = after.coasting().bowl().doubt();
        if (like.isPresent() && !like.equals(before.coasting().bowl().doubt())) {
            events.add(new Event.BowlDoubted(at, like.get()));
        }
    }

    private void seed() {
        if (after.crystals().isEmpty()) return;
        CrystalWatch is = after.crystals().get().watch();
        Optional<CrystalWatch> was = before.crystals().map(Temper::watch);
        boolean asBefore = was.filter(w -> w.spoken().word().equals(is.spoken().word())
                        && w.spoken().thick() == is.spoken().thick())
                .isPresent();
        if (is.spoken().word().isPresent() && !asBefore) {
            events.add(new Event.SeedJudged(
                    at, is.spoken().word().get(), is.spoken().thick(), is.seed()));
        }
        Optional<Instant> lost = is.overshoot().flatMap(Overshoot::lostAt);
        if (lost.isEmpty() || lost.equals(was.flatMap(CrystalWatch::overshoot).flatMap(Overshoot::lostAt))) return;
        Overshoot heat = is.overshoot().get();
        events.add(new Event.SeedLost(
                at, heat.highestCelsius(), heat.above().toMillis() / 1000.0, heat.before(), heat.left()));
    }

    private void place() {
        Contact contact = after.batch().contact();
        if (contact.place() == before.batch().contact().place()) return;
        BowlSeen.Evidence how =
                contact.evidence() == Evidence.TOLD ? BowlSeen.Evidence.TOLD : BowlSeen.Evidence.INFERRED;
        events.add(new BowlSeen(at, contact.place(), how));
    }

    private void phase() {
        if (before.batch().phase() != after.batch().phase()) {
            events.add(new Event.PhaseChanged(
                    at, before.batch().phase(), after.batch().phase()));
        }
    }

    private void alarm(AlarmId id) {
        Standing was = before.alarms().of(id);
        Standing is = after.alarms().of(id);
        boolean raised =
                is.state().isNew() && (!was.state().isNew() || !was.raised().equals(is.raised()));
        if (raised) events.add(new Event.AlarmRaised(at, id, is.priority(), is.figureCelsius(), is.reason()));
        else if (was.state().isStanding()
                && is.state() instanceof AlarmState.Acknowledged
                && was.state().isNew()) {
            events.add(new Event.AlarmSeen(at, id));
        }
        if (holds(was.state()) && !holds(is.state())) events.add(new Event.AlarmCleared(at, id));
    }

    /** New or known; a passed alarm has been cleared already. */
    private static boolean holds(AlarmState state) {
        return state.isStanding() && !(state instanceof AlarmState.ReturnedUnacknowledged);
    }

    private void cue(CueId id) {
        boolean was = before.cues().isOpen(id);
        boolean is = after.cues().isOpen(id);
        if (is && !was) {
            OpenCue open = after.cues().open().get(id);
            events.add(new Event.CueGiven(at, id, open.figure(), Optional.of(open.reason())));
        } else if (was && !is) {
            events.add(new Event.CueEnded(at, id));
        }
    }
}
