package fifthform.curves.cue;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.PhaseTarget;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;

/** While it melts: held hot long enough. */
final class MeltCues {
    private MeltCues() {}

    static void collect(Look look) {
        PhaseTarget melt = look.situation().recipe().melt();
        boolean done = look.phase() == Phase.MELT
                && look.place() == Place.BATH
                && look.progress().dwell().compareTo(melt.dwell()) >= 0;
        if (!done) return;
        Reason reason = look.reason(Rule.HELD_LONG_ENOUGH)
                .with(Figure.RANGE_LOW_C, melt.range().lowCelsius())
                .with(Figure.HELD_S, look.progress().dwell().toSeconds());
        look.due(CueId.MELTED, look.celsius(), reason);
    }
}
