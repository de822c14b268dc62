package fifthform.curves.cue;

import fifthform.curves.recipe.Phase;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;

/** When lumps of seed have given what they can: below the working range they melt no more, and only thicken it. */
final class SeedCues {
    /** So long on the way through the range it is said; further down everything is a paste already, K. Own choice. */
    private static final double SHOWN_KELVIN = 1;

    private SeedCues() {}

    /** Common practice, no source: what has not melted by then is taken out and set aside. */
    static void collect(Look look) {
        boolean cooling = look.phase() == Phase.COOL || look.phase() == Phase.SEED;
        double high = look.situation().recipe().work().range().highCelsius();
        double seeded = look.before().done().seededGrams();
        boolean here = look.celsius() <= high && look.celsius() > high - SHOWN_KELVIN;
        if (!cooling || seeded == 0 || !here) return;
        look.due(CueId.SEED_OUT, seeded, look.reason(Rule.SEED_HAS_GIVEN).with(Figure.RANGE_HIGH_C, high));
    }
}
