package fifthform.monitor.session;

import fifthform.curves.alarm.AlarmBank;
import fifthform.curves.cue.CueBoard;
import fifthform.curves.engine.State;
import fifthform.curves.forecast.Coasting;

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
                state.crystals(),
                alarms,
                cues);
    }

    /** What a screen would get of it. */
    public static SessionSnapshot with(SessionSnapshot s, State state) {
        return new SessionSnapshot(s.setup(), state, s.tally(), s.trace(), s.rawCelsius(), s.fault(), 0);
    }
}
