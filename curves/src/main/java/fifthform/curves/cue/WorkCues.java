package fifthform.curves.cue;

import fifthform.curves.cue.Dip.Purpose;
import fifthform.curves.cue.Dip.Stage;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import java.time.Duration;

/** While it is worked: in range, and how long it can still be poured where no warmth comes. */
final class WorkCues {
    private static final Duration IN_RANGE_SHOWN = Duration.ofSeconds(30);
    private static final double EDGE_KELVIN = 0.2;

    /** A touch of warmth that was asked for so long ago will not come, s. Own choice. */
    private static final double UNHEARD_SECONDS = 30;

    /** So far under the range it is too thick to pour; the alarm about it stands there as well. */
    private static final double TOO_THICK_KELVIN = 0.5;

    private static final double FALLING_KELVIN_PER_MINUTE = -0.05;
    private static final double LONGEST_LEFT_SECONDS = 300;

    private WorkCues() {}

    static void collect(Look look, Dips dips) {
        if (look.phase() != Phase.WORK
                || dips.dip().filter(d -> d.purpose() == Purpose.REACH).isPresent()) return;
        CelsiusRange work = look.situation().recipe().work().range();
        inRange(look, work);
        thickensSoon(look, dips, work);
    }

    private static void inRange(Look look, CelsiusRange work) {
        // Once said it is not taken back for a hair's breadth: at the edge of the range noise would say it again and
        // again.
        double margin = look.wasOpen(CueId.IN_RANGE) ? EDGE_KELVIN : 0;
        boolean inside = look.celsius() >= work.lowCelsius() - margin && look.celsius() <= work.highCelsius() + margin;
        // From when it was first said: on the way to it, short dips may have spent a while in the range.
        boolean fresh = look.before()
                .done()
                .inRangeAt()
                .filter(at -> Duration.between(at, look.situation().now()).compareTo(IN_RANGE_SHOWN) > 0)
                .isEmpty();
        if (!inside || !fresh) return;
        Reason reason = look.reason(Rule.SETTLED)
                .with(Figure.RANGE_LOW_C, work.lowCelsius())
                .with(Figure.RANGE_HIGH_C, work.highCelsius());
        look.due(CueId.IN_RANGE, look.celsius(), reason);
    }

    private static void thickensSoon(Look look, Dips dips, CelsiusRange work) {
        boolean unheard = dips.is(Stage.ASKED, Purpose.HOLD)
                && dips.dip().orElseThrow().secondsAt(look.situation().now()) >= UNHEARD_SECONDS;
        boolean stands = look.wasOpen(CueId.THICKENS_SOON) && look.rate() < 0;
        if (!unheard && !stands || look.rate() >= FALLING_KELVIN_PER_MINUTE && !stands) return;
        double way = look.celsius() - (work.lowCelsius() - TOO_THICK_KELVIN);
        double left = 60 * way / Math.max(-FALLING_KELVIN_PER_MINUTE, -look.rate());
        if (left <= 0 || left > LONGEST_LEFT_SECONDS) return;
        Reason reason = look.reason(Rule.LEAVES_THE_RANGE)
                .with(Figure.RANGE_LOW_C, work.lowCelsius())
                .with(Figure.LEFT_S, left);
        look.due(CueId.THICKENS_SOON, left, reason);
    }
}
