package fifthform.monitor.model;

import fifthform.curves.crystal.Overshoot;
import fifthform.curves.crystal.SeedWord;
import fifthform.curves.cue.CueId;
import fifthform.curves.engine.State;
import fifthform.curves.input.MakerAction.SampleProved;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Whether it may be poured, as far as crystals and the maker's own sample say. */
public final class Pouring {
    /** So far below the working range crystals still grow on the way up; above that what is there is what comes. */
    private static final double GROWS_BELOW_KELVIN = 1;

    /** Steps that only make sense with crystals to pour. */
    private static final List<CueId> TOWARDS_POURING = List.of(
            CueId.IN_RANGE, CueId.THICKENS_SOON, CueId.PUT_BACK, CueId.TOUCH_OF_WARMTH, CueId.TOUCH_OF_WARM_AIR);

    private Pouring() {}

    /** Whether this step is due, but with too few crystals leads nowhere: cooling again is what helps. */
    public static boolean isInVain(CueId due, State state, Recipe recipe) {
        return TOWARDS_POURING.contains(due) && state.cues().isOpen(due) && isTooFew(state, recipe);
    }

    /** Whether any such step is due. */
    public static boolean isInVain(State state, Recipe recipe) {
        return TOWARDS_POURING.stream().anyMatch(due -> isInVain(due, state, recipe));
    }

    /** In the working range or nearly, with surely too few crystals: pouring would only fill moulds that do not set. */
    public static boolean isTooFew(State state, Recipe recipe) {
        Phase phase = state.batch().phase();
        double grown = recipe.work().range().lowCelsius() - GROWS_BELOW_KELVIN;
        boolean arrived = phase == Phase.WORK
                || phase == Phase.REWARM
                        && state.estimate()
                                .filter(e -> e.chocolateCelsius() >= grown)
                                .isPresent();
        return arrived
                && !isProved(state)
                && state.crystals()
                        .flatMap(temper -> temper.watch().spoken().word())
                        .filter(word -> word == SeedWord.TOO_FEW)
                        .isPresent();
    }

    /** A sample has shown temper since the working range was reached, and no overshoot has come since. */
    static boolean isProved(State state) {
        Optional<Instant> reached = state.cues().done().inRangeAt();
        return state.proved()
                .filter(sample -> sample.verdict() == SampleProved.Verdict.IN_TEMPER)
                .filter(sample ->
                        reached.filter(at -> !sample.at().isBefore(at)).isPresent())
                .filter(sample -> !isOvershotSince(state, sample.at()))
                .isPresent();
    }

    private static boolean isOvershotSince(State state, Instant at) {
        return state.crystals()
                .flatMap(temper -> temper.watch().overshoot())
                .map(Overshoot::since)
                .filter(since -> since.isAfter(at))
                .isPresent();
    }
}
