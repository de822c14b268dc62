package fifthform.monitor.app;

import fifthform.curves.cue.CueBoard;
import fifthform.curves.cue.CueId;
import fifthform.curves.cue.Dip;
import fifthform.curves.engine.State;
import fifthform.curves.input.AlarmId;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.model.Pouring;

/** What somebody means at this moment who says that the step is done: the cue that is due, or else the whole phase. */
enum StepMeant {
    OFF_THE_WATER,
    /** The seed that was asked for is in. */
    SEED_IS_IN,
    WARM_AIR_WAS_GIVEN,
    ON_THE_BATH,
    INTO_COLD_WATER,
    MELTS_AGAIN,
    COOLS_AGAIN,
    /** What is set on a box, taken out or heard ends no phase. */
    HOLD_IS_SEEN_TO,
    SAMPLE_IS_IN_TEMPER,
    /** Wiping, stirring, a warmer bath, and looking where a dip turns, end no phase. */
    CARE_IS_TAKEN,
    /** Nobody pours from here; a press that was meant for a cue just gone must not end the way up. */
    TOO_SOON,
    PHASE_IS_OVER;

    static StepMeant at(State state, Recipe recipe) {
        CueBoard cues = state.cues();
        if (isOpen(cues, CueId.LIFT_NOW, CueId.OFF_NOW, CueId.GET_READY, CueId.STOP_COOLING)) return OFF_THE_WATER;
        if (cues.isOpen(CueId.SEED_NOW)) return SEED_IS_IN;
        // Its alarm is on the screen before any step that warms, and says so of this key.
        if (state.alarms().standing().contains(AlarmId.MELT_OUT)) return COOLS_AGAIN;
        // What the screen says then is no sample's verdict, no warmth, and no end of the work.
        if (Pouring.isInVain(state, recipe)) return COOLS_AGAIN;
        if (cues.isOpen(CueId.TOUCH_OF_WARM_AIR)) return WARM_AIR_WAS_GIVEN;
        if (cues.isOpen(CueId.WARM_UP)) return ON_THE_BATH;
        if (cues.isOpen(CueId.MELT_FIRST)) return MELTS_AGAIN;
        if (isOpen(cues, CueId.BOX_WARMER, CueId.BOX_COOLER, CueId.KEEP_FLUID, CueId.HOLD_OVER, CueId.SEED_OUT))
            return HOLD_IS_SEEN_TO;
        if (cues.isOpen(CueId.TOUCH_OF_WARMTH)) return ON_THE_BATH;
        if (cues.isOpen(CueId.PUT_BACK)) return state.batch().phase() == Phase.COOL ? INTO_COLD_WATER : ON_THE_BATH;
        if (cues.isOpen(CueId.IN_RANGE)) return SAMPLE_IS_IN_TEMPER;
        // A hand is often later than the cue it answers, and that must not end the way up below the range.
        if (isDip(cues, Dip.Stage.OVER_BATH)) return OFF_THE_WATER;
        if (isCareOnly(cues) || isDip(cues, Dip.Stage.LOOKING)) return CARE_IS_TAKEN;
        if (Pouring.isTooFew(state, recipe)) return COOLS_AGAIN;
        return isBelowTheRange(state, recipe) ? TOO_SOON : PHASE_IS_OVER;
    }

    private static boolean isOpen(CueBoard cues, CueId... any) {
        for (CueId id : any) if (cues.isOpen(id)) return true;
        return false;
    }

    private static boolean isDip(CueBoard cues, Dip.Stage stage) {
        return cues.dips().dip().filter(dip -> dip.is(stage)).isPresent();
    }

    private static boolean isCareOnly(CueBoard cues) {
        return isOpen(cues, CueId.WIPE_AND_STIR, CueId.WEAK_BATH) && !isOpen(cues, CueId.MELTED, CueId.CRYSTALS_ENOUGH);
    }

    private static boolean isBelowTheRange(State state, Recipe recipe) {
        double low = recipe.work().range().lowCelsius();
        return state.batch().phase() == Phase.REWARM
                && state.estimate().filter(e -> e.chocolateCelsius() < low).isPresent();
    }
}
