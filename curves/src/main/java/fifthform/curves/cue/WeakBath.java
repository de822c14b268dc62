package fifthform.curves.cue;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Evidence;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import java.time.Duration;

/** Whether the water for the rewarm is too cool to bring the chocolate to its range: seen by short dips, or by a stay. */
final class WeakBath {
    /** From a dip of so long on less than so much is too little, s and K. Own choice. */
    private static final double WEAK_FROM_SECONDS = 10;

    private static final double WEAK_KELVIN_IN_A_MINUTE = 0.35;
    private static final int WEAK_AFTER_DIPS = 2;

    /** A thick wall answers late, and bars that begin to melt hold a rise up: sooner nothing is said. Own choice. */
    private static final Duration STAYED = Duration.ofMinutes(4);

    /** At a pace that would take longer than this to the range nobody goes on stirring. Own choice. */
    private static final double LONGEST_SECONDS = 600;

    /** Once said, the bath must have become clearly better before the word goes. Own choice. */
    private static final double WELL_AGAIN = 1.6;

    /** A bath so far above the range is slow for this bowl, not weak; a hotter one would only be harder to leave in time. */
    private static final double HOT_KELVIN = 8;

    /** Over so long the rise is taken: bars melt in fits and starts, and a spoon rests. */
    private static final int RISE_SECONDS = 100;

    /** The answer of warmer water shows sooner. */
    private static final int ANSWER_SECONDS = 45;

    private final Look look;
    private final CelsiusRange work;

    private WeakBath(Look look) {
        this.look = look;
        work = look.situation().recipe().work().range();
    }

    static void collect(Look look, Dips dips) {
        WeakBath bath = new WeakBath(look);
        if (look.celsius() >= bath.work.lowCelsius()) return;
        bath.byDips(dips.response());
        if (dips.dip().isEmpty()) bath.byStay();
    }

    private void byDips(DipResponse response) {
        boolean way = look.phase() == Phase.REWARM || look.phase() == Phase.SEED;
        boolean weak = response.dips() >= WEAK_AFTER_DIPS
                && response.lastSeconds() >= WEAK_FROM_SECONDS
                && 60 * response.kelvinPerSecond() < WEAK_KELVIN_IN_A_MINUTE;
        if (!way || !weak) return;
        Reason reason = look.reason(Rule.DIPS_GIVE_TOO_LITTLE)
                .with(Figure.DIPS_SEEN, response.dips())
                .with(Figure.DIP_K_PER_S, response.kelvinPerSecond())
                .with(Figure.DIPS_MOVED_K, response.movedKelvin());
        look.due(CueId.WEAK_BATH, Math.max(0, response.movedKelvin()), reason);
    }

    /** A bowl left in water that has grown cool levels off below the range, and its maker would wait for nothing. */
    private void byStay() {
        boolean stays =
                look.phase() == Phase.REWARM && look.place() == Place.BATH && isBelieved() && look.stood(STAYED);
        if (!stays || look.wasOpen(CueId.LIFT_NOW)) return;
        double missing = work.lowCelsius() - Math.max(look.celsius(), look.turnCelsius());
        double pace = Math.max(look.pace(RISE_SECONDS), look.pace(ANSWER_SECONDS));
        double counted = look.wasOpen(CueId.WEAK_BATH) ? pace / WELL_AGAIN : pace;
        boolean levelsOff = 60 * counted < WEAK_KELVIN_IN_A_MINUTE && missing > counted * LONGEST_SECONDS;
        if (missing <= 0 || !levelsOff || isHot()) return;
        look.due(
                CueId.WEAK_BATH,
                Math.max(0, 60 * pace),
                look.reason(Rule.STAY_GIVES_TOO_LITTLE).with(Figure.RANGE_LOW_C, work.lowCelsius()));
    }

    private boolean isHot() {
        return look.readBathCelsius().orElse(0) >= work.highCelsius() + HOT_KELVIN;
    }

    /** From the rules alone a bowl that levels off may as well stand on the table. */
    private boolean isBelieved() {
        return look.situation().batch().contact().evidence() == Evidence.TOLD
                || look.situation().odds().isSurelyOverBath();
    }
}
