package fifthform.curves.cue;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Evidence;
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
    private static final double WELL_AGAIN_SECONDS = 360;

    /** Over so long the rise is taken: bars melt in fits and starts, and a spoon rests. */
    private static final int RISE_SECONDS = 100;

    /** Once said, the answer of warmer water should show soon. */
    private static final int ANSWER_SECONDS = 45;

    private final Look look;
    private final double lowCelsius;

    private WeakBath(Look look) {
        this.look = look;
        lowCelsius = look.situation().recipe().work().range().lowCelsius();
    }

    static void collect(Look look, Dips dips) {
        WeakBath bath = new WeakBath(look);
        if (look.celsius() >= bath.lowCelsius) return;
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
        double missing = lowCelsius - Math.max(look.celsius(), look.turnCelsius());
        double rise = look.pace(RISE_SECONDS);
        boolean said = look.wasOpen(CueId.WEAK_BATH);
        double pace = said ? Math.max(rise, look.pace(ANSWER_SECONDS)) : rise;
        double longest = said ? WELL_AGAIN_SECONDS : LONGEST_SECONDS;
        if (missing <= 0 || missing <= pace * longest) return;
        look.due(
                CueId.WEAK_BATH,
                Math.max(0, 60 * rise),
                look.reason(Rule.STAY_GIVES_TOO_LITTLE).with(Figure.RANGE_LOW_C, lowCelsius));
    }

    /** From the rules alone a bowl that levels off may as well stand on the table. */
    private boolean isBelieved() {
        return look.situation().batch().contact().evidence() == Evidence.TOLD
                || look.situation().odds().isSurelyOverBath();
    }
}
