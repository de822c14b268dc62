package fifthform.curves.cue;

import fifthform.curves.cue.Dip.Purpose;
import fifthform.curves.cue.Dip.Stage;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.PhaseProgress;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Holding.Warmth;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** When the bowl should go over the bath, and for how long: after the hold, after a peak that fell short, while working. */
final class DipCues {
    /** With dips the peak should lie so far inside, so that a probe a little off still lands in the range. Own choice. */
    private static final double INSIDE_KELVIN = 0.25;

    private static final double FELL_SHORT_KELVIN = 0.1;

    /** Who wants one lift mends so much by short dips; further below, another stay until told is quicker. Own choice. */
    private static final double MENDED_BY_DIPS_KELVIN = 1.5;

    /** So far above the cool range it is on its way up. Own choice. */
    private static final double WARMED_KELVIN = 0.7;

    private static final double COAST_OVER_KELVIN_PER_MINUTE = 0.3;

    /** A touch of warmth is asked for when the range would be left so soon after the hands can act, s. */
    private static final double HOLD_AHEAD_SECONDS = 40;

    private static final double HARDLY_FALLS_KELVIN_PER_MINUTE = 0.05;
    private static final double HOLD_MARGIN_KELVIN = 0.1;

    /** Steps that ask for a dip; one of them stands while it is asked for. */
    private static final List<CueId> ASKING = List.of(
            CueId.CRYSTALS_ENOUGH, CueId.WARM_UP, CueId.PUT_BACK, CueId.TOUCH_OF_WARMTH, CueId.TOUCH_OF_WARM_AIR);

    private final Look look;
    private final Dips dips;
    private final CelsiusRange work;

    private DipCues(Look look, Dips dips) {
        this.look = look;
        this.dips = dips;
        this.work = look.situation().recipe().work().range();
    }

    static Dips collect(Look look, Dips dips) {
        return new DipCues(look, dips).next();
    }

    private Dips next() {
        if (dips.is(Stage.ASKED)) return asking(dips);
        if (dips.dip().isPresent()) return dips;
        if (look.place() == Place.COLD_WATER) return dips;
        if (look.isKept() && isUpUnasked()) return warmUp();
        if (stillHeld()) return held();
        boolean reaching = look.phase() == Phase.REWARM || look.phase() == Phase.SEED;
        if (reaching) return fellShort() ? onceMore() : dips;
        if (look.phase() == Phase.WORK) {
            if (fellShort()) return onceMore();
            return !inBox() && leavesSoon() ? asking(ask(Purpose.HOLD)) : dips;
        }
        return dips;
    }

    private boolean isUpUnasked() {
        return look.phase() == Phase.REWARM && look.isFirstWarming();
    }

    /** In temper as it came: to the warm water at once, and to stay there until told. */
    private Dips warmUp() {
        if (look.place() == Place.BATH) return dips;
        Reason reason = look.reason(Rule.KEPT_IN_TEMPER)
                .with(Figure.RANGE_LOW_C, work.lowCelsius())
                .with(Figure.RANGE_HIGH_C, work.highCelsius());
        look.due(CueId.WARM_UP, OptionalDouble.empty(), reason);
        return dips;
    }

    private boolean stillHeld() {
        return isHolding() && dips.begunAt().isEmpty() && !(look.isKept() && look.phase() == Phase.REWARM);
    }

    /** A warming that was none, as on the table after the cold water, does not end the time for crystals. */
    private boolean isHolding() {
        boolean warmed =
                look.celsius() > look.situation().recipe().cool().range().highCelsius() + WARMED_KELVIN;
        return look.phase() == Phase.SEED || look.phase() == Phase.REWARM && !warmed && look.place() == Place.TABLE;
    }

    private Duration heldFor() {
        PhaseProgress progress = look.progress();
        return dips.heldSince()
                .filter(progress.since()::isAfter)
                .map(from -> Duration.between(from, look.situation().now()))
                .orElse(progress.dwell());
    }

    /** Crystals form; once there are enough the way up begins, by a first dip or by one stay. */
    private Dips held() {
        // A phase told by key may be told too early: what is warm enough to be poured is sent over no bath.
        if (look.place() == Place.BATH || look.celsius() >= work.lowCelsius()) return dips;
        Duration dwell = heldFor();
        Duration left = holdLeft(dwell);
        if (!left.isNegative() && !left.isZero()) {
            Reason reason = look.reason(Rule.STILL_HOLDING).with(Figure.HELD_S, dwell.toSeconds());
            look.due(CueId.STIR_ON, left.toSeconds() / 60.0, withSeed(reason));
            return dips;
        }
        if (look.dipsWanted()) return asking(ask(Purpose.REACH));
        Reason reason = look.reason(Rule.HELD_LONG_ENOUGH).with(Figure.HELD_S, dwell.toSeconds());
        look.due(CueId.CRYSTALS_ENOUGH, OptionalDouble.empty(), withSeed(reason));
        return dips;
    }

    /**
     * By the crystals, since a hold's depth counts as its time does; where they cannot say, by the recipe alone. The
     * recipe's time is the fence all the same, for the model was calibrated to behaviours and not to this bowl: never less
     * than two thirds of it, nor more than two and a half times as much. Of seed that was added its shape is a guess, so
     * there the recipe's time is the least.
     */
    private Duration holdLeft(Duration held) {
        Duration wanted = look.situation().recipe().cool().dwell();
        Duration byRecipe = wanted.minus(held);
        Duration byCrystals = look.situation()
                .crystals()
                .flatMap(c -> c.holdLeft(look.situation().now()))
                .orElse(byRecipe);
        boolean seeded = look.before().done().seededGrams() > 0;
        Duration least = seeded ? byRecipe : wanted.multipliedBy(2).dividedBy(3).minus(held);
        Duration most = wanted.multipliedBy(5).dividedBy(2).minus(held);
        Duration atLeast = byCrystals.compareTo(least) > 0 ? byCrystals : least;
        return atLeast.compareTo(most) > 0 ? most : atLeast;
    }

    private Reason withSeed(Reason reason) {
        return look.situation()
                .crystals()
                .map(c -> reason.with(Figure.SEED_PCT, 100 * c.watch().seed().middle()))
                .orElse(reason);
    }

    private Dips onceMore() {
        boolean far = look.celsius() < work.lowCelsius() - MENDED_BY_DIPS_KELVIN;
        if (!far || look.dipsWanted() || dips.response().isKnown()) return asking(ask(Purpose.REACH));
        look.due(CueId.CRYSTALS_ENOUGH, OptionalDouble.empty(), look.reason(Rule.HELD_LONG_ENOUGH));
        return dips;
    }

    private Dips ask(Purpose purpose) {
        return dips.with(new DipSize(look, purpose, response(purpose))
                .asked(look.situation().now()));
    }

    /** Warm air warms otherwise than the bath does. */
    private DipResponse response(Purpose purpose) {
        return purpose == Purpose.HOLD && look.holdsByAir() ? dips.air() : dips.response();
    }

    /** The length stands as it was first asked for: who has begun to count must not be told another. */
    private Dips asking(Dips asked) {
        Dip dip = asked.dip().orElseThrow();
        // Whatever the phase is taken for, "put it back" would send who still holds it to the cold water; and crystals
        // warm the bowl by themselves, so that a way up may seem to have begun which nobody was told of.
        boolean untold = look.before().done().liftedAt().isEmpty();
        boolean first = (isHolding() || untold)
                && asked.begunAt().filter(dip.askedAt()::equals).isPresent();
        CueId id = dip.purpose() == Purpose.HOLD ? touch() : first ? firstDip() : CueId.PUT_BACK;
        Reason reason = new DipSize(look, dip.purpose(), response(dip.purpose()))
                .reason(whenAsked(dip))
                .with(Figure.DIP_S, dip.seconds());
        look.due(id, dip.seconds(), reason);
        return asked;
    }

    private CueId touch() {
        return look.holdsByAir() ? CueId.TOUCH_OF_WARM_AIR : CueId.TOUCH_OF_WARMTH;
    }

    private CueId firstDip() {
        return look.isKept() ? CueId.WARM_UP : CueId.CRYSTALS_ENOUGH;
    }

    private Optional<Reason> whenAsked(Dip dip) {
        boolean same = look.before()
                .dips()
                .dip()
                .filter(d -> d.is(Stage.ASKED) && d.askedAt().equals(dip.askedAt()))
                .isPresent();
        return ASKING.stream()
                .filter(id -> same && look.wasOpen(id))
                .map(id -> look.before().open().get(id).reason())
                .findFirst();
    }

    /** The coast is over, and it lies below the range, or too little inside where dips may bring it further. */
    private boolean fellShort() {
        if (isOverBathBelieved()) return false;
        boolean further =
                look.dipsWanted() && !reached() && !new DipSize(look, Purpose.REACH, dips.response()).isTooStrong();
        double wanted = further ? work.lowCelsius() + INSIDE_KELVIN : work.lowCelsius() - FELL_SHORT_KELVIN;
        double turns = look.rate() <= 0 ? look.celsius() : Math.max(look.celsius(), look.turnCelsius());
        boolean coastIsOver = dips.response().isKnown()
                || look.situation().coasting().lift().isEmpty() && look.rate() < COAST_OVER_KELVIN_PER_MINUTE;
        return turns < wanted && coastIsOver;
    }

    /** Once it was said to be in the range, staying there is another matter. */
    private boolean reached() {
        return look.before().done().inRangeAt().isPresent();
    }

    /** A key that says "bath" after the last dip is over was not taken back; the dips know better. */
    private boolean isOverBathBelieved() {
        return look.place() != Place.TABLE && !dips.response().isKnown();
    }

    private boolean leavesSoon() {
        if (look.place() != Place.TABLE || look.rate() >= HARDLY_FALLS_KELVIN_PER_MINUTE) return false;
        double ahead = look.reactionSeconds() + HOLD_AHEAD_SECONDS;
        double then = look.celsius() + Math.min(0, look.rate()) / 60 * ahead;
        return then < work.lowCelsius() + HOLD_MARGIN_KELVIN && (hasRoom() || isLeaving());
    }

    /** There the box is set, see {@link HoldCues}; nobody takes the bowl out for seconds. */
    private boolean inBox() {
        return look.situation()
                .setup()
                .holding()
                .filter(h -> h.warmth() == Warmth.BOX)
                .isPresent();
    }

    /** Over a bath so strong that a second of it may go over, it is better to wait until the range is nearly left. */
    private boolean hasRoom() {
        return new DipSize(look, Purpose.HOLD, response(Purpose.HOLD))
                        .shortestReaches()
                        .orElse(0)
                <= work.highCelsius();
    }

    private boolean isLeaving() {
        return look.celsius() < work.lowCelsius();
    }
}
