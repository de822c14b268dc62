package fifthform.monitor.session;

import fifthform.curves.alarm.AlarmBank;
import fifthform.curves.crystal.CrystalWatch;
import fifthform.curves.crystal.SeedWord;
import fifthform.curves.crystal.Spoken;
import fifthform.curves.crystal.Temper;
import fifthform.curves.cue.CueBoard;
import fifthform.curves.engine.State;
import fifthform.curves.forecast.Coasting;
import java.util.Optional;

/** A real moment with one thing otherwise, for tests of what no batch in the tree has. */
public final class Altered {
    private Altered() {}

    /** The same moment, other things known of the bowl. */
    public static State with(State state, Coasting coasting) {
        return with(state, coasting, state.cues(), state.alarms());
    }

    /** The same moment, other steps due. */
    public static State with(State state, CueBoard cues) {
        return with(state, state.coasting(), cues, state.alarms());
    }

    /** The same moment, other alarms. */
    public static State with(State state, AlarmBank alarms) {
        return with(state, state.coasting(), state.cues(), alarms);
    }

    private static State with(State state, Coasting coasting, CueBoard cues, AlarmBank alarms) {
        return with(state, coasting, cues, alarms, state.crystals());
    }

    private static State with(
            State state, Coasting coasting, CueBoard cues, AlarmBank alarms, Optional<Temper> crystals) {
        return new State(
                state.inputs(),
                state.started(),
                state.at(),
                state.told(),
                state.tracks(),
                state.window(),
                state.estimate(),
                state.insight(),
                state.batch(),
                coasting,
                state.calibration(),
                state.forecast(),
                state.hindsight(),
                crystals,
                alarms,
                cues);
    }

    /** The same moment with another word about the crystals. */
    public static SessionSnapshot saying(SessionSnapshot s, SeedWord word) {
        State state = s.state();
        Temper temper = state.crystals().orElseThrow();
        CrystalWatch was = temper.watch();
        Spoken spoken = new Spoken(Optional.of(word), false, Optional.of(state.at()), Optional.empty());
        CrystalWatch watch = new CrystalWatch(
                was.kinetics(),
                was.copies(),
                was.beat(),
                was.melt(),
                was.four(),
                spoken,
                was.misgiving(),
                was.overshoot());
        Temper other = new Temper(watch, temper.stir(), temper.hold());
        return with(s, with(state, state.coasting(), state.cues(), state.alarms(), Optional.of(other)));
    }

    /** What a screen would get of it. */
    public static SessionSnapshot with(SessionSnapshot s, State state) {
        return new SessionSnapshot(s.setup(), state, s.tally(), s.trace(), s.rawCelsius(), s.fault(), 0);
    }
}
