package fifthform.monitor.model;

import fifthform.curves.cue.Dip.Stage;
import fifthform.curves.engine.State;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.forecast.Forecasts;
import fifthform.curves.forecast.Outlook;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Phase;
import java.util.Optional;

/** What of the forecast is worth showing now, so that rows, ladder, curve and band agree. */
final class Ahead {
    private Ahead() {}

    /**
     * Where it goes if it is left where it stands. Just moved into or over water it still goes the way it went before,
     * often the opposite one: nothing is said until its rate is of that water.
     */
    static Optional<Forecast> course(State state) {
        return state.forecast().filter(f -> isSettled(state));
    }

    /** Whether rate and forecast are of where the bowl stands. */
    static boolean isSettled(State state) {
        return state.batch().place() == Place.TABLE || Forecasts.isSettled(state.batch(), state.at());
    }

    /** Where it turns off the water. On the table there is a turning point to come only while a coast goes on. */
    static Optional<Outlook> turn(State state) {
        boolean coasts =
                state.batch().place() != Place.TABLE || state.coasting().lift().isPresent() || isLooking(state);
        return state.forecast()
                .filter(f -> coasts && state.batch().phase() != Phase.MELT)
                .map(Forecast::ifLifted);
    }

    /** Off the bath after a dip, of which something is still to come. */
    static boolean isLooking(State state) {
        return state.cues()
                .dips()
                .dip()
                .filter(dip -> dip.stage() == Stage.LOOKING)
                .isPresent();
    }

    /** The phase whose range is aimed at: short dips lead up to the working range while the phase still has its old name. */
    static Phase aimedFor(State state) {
        Phase phase = state.batch().phase();
        boolean goesUp = phase == Phase.SEED && state.cues().dips().begunAt().isPresent();
        return goesUp ? Phase.REWARM : phase;
    }
}
