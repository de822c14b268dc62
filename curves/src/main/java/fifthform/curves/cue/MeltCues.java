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
        melted(look);
        meltFirst(look);
    }

    /** Who sends bars of a failed batch into cold water too soon keeps crystals that bloomed once. */
    private static void meltFirst(Look look) {
        boolean unsure = look.situation()
                .crystals()
                .filter(c -> !c.watch().melt().erased())
                .isPresent();
        boolean again = look.situation().setup().beginning().again().isPresent();
        boolean warm = look.celsius() > look.situation().recipe().work().range().highCelsius();
        if (!again || !unsure || !warm || look.phase() != Phase.COOL) return;
        double low = look.situation().recipe().melt().range().lowCelsius();
        look.due(CueId.MELT_FIRST, low, look.reason(Rule.NOT_ALL_MELTED).with(Figure.RANGE_LOW_C, low));
    }

    private static void melted(Look look) {
        PhaseTarget melt = look.situation().recipe().melt();
        // Where it is to be the second time, the model must agree that nothing is left.
        boolean leftOver = look.situation().setup().beginning().again().isPresent()
                && look.situation()
                        .crystals()
                        .filter(c -> !c.watch().melt().erased())
                        .isPresent();
        boolean done = !leftOver
                && look.phase() == Phase.MELT
                && look.place() == Place.BATH
                && look.progress().dwell().compareTo(melt.dwell()) >= 0;
        if (!done) return;
        Reason reason = look.reason(Rule.HELD_LONG_ENOUGH)
                .with(Figure.RANGE_LOW_C, melt.range().lowCelsius())
                .with(Figure.HELD_S, look.progress().dwell().toSeconds());
        look.due(CueId.MELTED, look.celsius(), reason);
    }
}
