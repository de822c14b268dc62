package fifthform.curves.cue;

import fifthform.curves.forecast.Coasting;
import fifthform.curves.forecast.Turn;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import java.util.OptionalDouble;

/** From the hot bath down to the cool range: seed, out of the cold water, back into it where it was left too soon. */
final class CoolCues {
    private static final double STILL_FALLING_KELVIN_PER_MINUTE = -0.3;
    private static final double HARDLY_FALLING_KELVIN_PER_MINUTE = -0.6;

    /** A stay in cold water, s: first guess and bounds. Own choice. */
    private static final double FIRST_STAY_SECONDS = 8;

    private static final double SHORTEST_STAY_SECONDS = 2;
    private static final double LONGEST_STAY_SECONDS = 40;
    private static final double STAY_SHARE = 0.8;
    private static final double SLOWEST_KELVIN_PER_SECOND = 0.3 / 60;

    private final Look look;
    private final CelsiusRange cool;

    private CoolCues(Look look) {
        this.look = look;
        this.cool = look.situation().recipe().cool().range();
    }

    static void collect(Look look) {
        CoolCues cues = new CoolCues(look);
        cues.seed();
        cues.stopCooling();
        cues.backIntoTheCold();
    }

    /**
     * Seed keeps its crystals once the chocolate has cooled below melt-out. Seeders add it there, before it thickens:
     * common practice, no source.
     */
    private void seed() {
        OptionalDouble planned = look.situation().setup().seedGrams();
        boolean cooling = look.phase() == Phase.COOL || look.phase() == Phase.SEED;
        Done done = look.before().done();
        boolean waits = planned.isPresent() && done.seededGrams() == 0 && done.seed() != Done.Seed.OVER;
        if (!waits || !cooling) return;
        double keeps = look.situation().recipe().meltOut().limitCelsius();
        if (look.celsius() > keeps && !look.wasOpen(CueId.SEED_NOW)) return;
        Reason reason = look.reason(Rule.SEED_KEEPS)
                .with(Figure.RANGE_HIGH_C, keeps)
                .with(Figure.SEED_G, planned.getAsDouble());
        look.due(CueId.SEED_NOW, planned, reason);
    }

    /** Out of the cold water once the trough, with the hands' reaction on the way, reaches the middle of the range. */
    private void stopCooling() {
        boolean cooling =
                (look.phase() == Phase.COOL || look.phase() == Phase.SEED) && look.place() == Place.COLD_WATER;
        if (!cooling) return;
        boolean reached =
                look.secondsToLift().filter(s -> s <= look.reactionSeconds()).isPresent();
        boolean alreadyCold = look.celsius() < cool.lowCelsius();
        boolean stillTold = look.wasOpen(CueId.STOP_COOLING) && look.rate() < STILL_FALLING_KELVIN_PER_MINUTE;
        if (!reached && !alreadyCold && !stillTold) return;
        Reason reason = look.reason(alreadyCold && !reached ? Rule.PAST_THE_RANGE : Rule.TURN_REACHES_AIM)
                .with(Figure.AIM_C, reached ? look.aimCelsius().orElse(cool.midCelsius()) : cool.midCelsius())
                .with(Figure.RANGE_LOW_C, cool.lowCelsius())
                .with(Figure.RANGE_HIGH_C, cool.highCelsius());
        look.due(CueId.STOP_COOLING, look.turnCelsius(), reason);
    }

    /** Lifted too soon: it has stopped sinking above the cool range, and waiting for the room to cool it takes too long. */
    private void backIntoTheCold() {
        if (look.phase() != Phase.COOL || look.place() != Place.TABLE) return;
        boolean stranded = look.celsius() > cool.highCelsius()
                && look.rate() > HARDLY_FALLING_KELVIN_PER_MINUTE
                && look.situation().coasting().lift().isEmpty();
        if (!stranded && !look.wasOpen(CueId.PUT_BACK)) return;
        Reason reason = look.reason(Rule.SIZED_BY_COAST).with(Figure.AIM_C, cool.midCelsius());
        look.due(CueId.PUT_BACK, staySeconds(), reason);
    }

    /** By the rate of the last fall and the coast after it; somewhat less, since a stay can be repeated, not undone. */
    private double staySeconds() {
        Coasting coasting = look.situation().coasting();
        double perSecond = coasting.lastTurn()
                .map(Turn::lift)
                .map(lift -> -lift.kelvinPerMinute() / 60)
                .filter(rate -> rate >= SLOWEST_KELVIN_PER_SECOND)
                .orElse(0.0);
        if (perSecond == 0) return FIRST_STAY_SECONDS;
        double coastSeconds = coasting.coast().seconds();
        double missing = STAY_SHARE * (look.celsius() - cool.midCelsius());
        double seconds = SHORTEST_STAY_SECONDS;
        while (seconds < LONGEST_STAY_SECONDS) {
            double moved = seconds + coastSeconds * -StrictMath.expm1(-2 * seconds / coastSeconds);
            if (perSecond * moved >= missing) break;
            seconds += 0.5;
        }
        return seconds;
    }
}
