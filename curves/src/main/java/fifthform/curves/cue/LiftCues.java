package fifthform.curves.cue;

import fifthform.curves.cue.Dip.Stage;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/** When the bowl should leave the warm bath: get ready, lift now, and the end of a short dip. */
final class LiftCues {
    private static final double GET_READY_SECONDS = 15;

    /** Further off the seconds are too unsure to be held to; whole minutes are said then. Own choice. */
    private static final double SHOWN_COOLING_SECONDS = 120;

    /** Who counts seconds needs a word only, not a reaction. Own choice. */
    private static final double WORD_SECONDS = 1;

    /** After so many dips their answers say more than a forecast made within seconds. Own choice. */
    private static final int DIPS_TO_TRUST = 2;

    /**
     * A spoon that rests or a tip that leans on the wall reaches the aim for a moment only; so the last seconds before it
     * must hold as well. Tuned on the home fleet.
     */
    private static final Duration BELIEVED_AFTER = Duration.ofSeconds(4);

    /** One reading alone is not enough to tell a maker to lift. */
    private static final Duration NEXT_READING = Duration.ofMillis(1);

    private final Look look;
    private final CelsiusRange work;

    private LiftCues(Look look) {
        this.look = look;
        this.work = look.situation().recipe().work().range();
    }

    static LiftWait collect(Look look, Dips dips) {
        LiftCues cues = new LiftCues(look);
        if (look.phase() == Phase.COOL && look.place() == Place.COLD_WATER) return cues.coolWait();
        // The key of the way back is forgotten as often as others: one stay, one cue.
        if (look.wasToldToLift() && !look.isLeftOverBath()) return LiftWait.NONE;
        // A touch that holds the range is counted by whoever lifts once, too.
        if (dips.dip()
                .filter(d -> d.is(Stage.OVER_BATH) && cues.isCountedOut(d))
                .isPresent()) return cues.endOfDip(dips.dip().orElseThrow());
        // While a dip is asked for or looked at the bowl is off the bath, whatever a forgotten key says, unless the
        // curve leaves no doubt that somebody put it there and left it.
        boolean stays = dips.dip().filter(d -> !cues.isOutstayed(d)).isEmpty();
        boolean asked = stays && look.isSurelyOverBath() && !look.mayCoast();
        return asked || look.isLeftOverBath() ? cues.oneLift() : LiftWait.NONE;
    }

    private boolean isCountedOut(Dip dip) {
        return !look.wantsOneLift() || dip.purpose() == Dip.Purpose.HOLD;
    }

    /** Nobody counts any more, and a word of it is not late by the hands' time: a dip has become a stay until told. */
    private boolean isOutstayed(Dip dip) {
        double counted = dip.seconds() + look.reactionSeconds();
        return dip.is(Stage.OVER_BATH) && dip.secondsAt(look.situation().now()) >= counted;
    }

    /** Who counts seconds needs a word at their end; who waits to be told needs it a reaction time before. */
    private LiftWait endOfDip(Dip dip) {
        double lead = dip.isCounted() ? WORD_SECONDS : look.reactionSeconds();
        boolean over = dip.secondsAt(look.situation().now()) >= dip.seconds() - lead;
        boolean reached = dip.isCounted() ? countedEnough() : upperEndReached() || turnReached();
        boolean lift = reached && lasted(NEXT_READING) || over && !dip.isCounted() || look.wasOpen(CueId.LIFT_NOW);
        if (lift) {
            Reason reason =
                    reached ? liftReason(!turnReached() && !look.wantsOneLift()) : look.reason(Rule.DIP_IS_OVER);
            look.due(CueId.LIFT_NOW, look.turnCelsius(), reason.with(Figure.DIP_S, dip.seconds()));
        } else if (over && look.isToldOverBath()) {
            Reason reason = look.reason(Rule.DIP_IS_OVER).with(Figure.DIP_S, dip.seconds());
            look.due(CueId.OFF_NOW, dip.seconds(), reason);
        }
        return new LiftWait(reachedSince(reached), Optional.empty());
    }

    private LiftWait oneLift() {
        Optional<Double> left = look.secondsToLift().map(s -> s - look.reactionSeconds());
        boolean wide = look.isUnsure() && upperEndReached();
        boolean reached = turnReached() || wide;
        boolean near = wide || left.filter(s -> s <= BELIEVED_AFTER.toSeconds()).isPresent();
        // Once said it stands until the bowl is seen or said to have left: wavering would cost the maker's trust.
        if (reached && lasted(BELIEVED_AFTER) || look.wasOpen(CueId.LIFT_NOW)) {
            look.due(CueId.LIFT_NOW, look.turnCelsius(), liftReason(!turnReached() && (wide || saidByTheBand())));
        } else if (left.isPresent() && isReadyTime(left.get())) {
            Countdown shown = countdown(Math.max(0, left.get()));
            look.due(CueId.GET_READY, shown.seconds(), liftReason(wide).with(Figure.LEFT_S, shown.seconds()));
            return new LiftWait(reachedSince(near), Optional.of(shown));
        }
        return new LiftWait(reachedSince(near), Optional.empty());
    }

    /** Out of the cold water nobody is told to get ready; the seconds left are shown all the same. */
    private LiftWait coolWait() {
        boolean shown = look.before().lift().countdown().isPresent();
        double within = shown ? 2 * SHOWN_COOLING_SECONDS : SHOWN_COOLING_SECONDS;
        Optional<Countdown> left = look.secondsToLift()
                .map(s -> s - look.reactionSeconds())
                .filter(s -> s <= within)
                .map(s -> countdown(Math.max(0, s)));
        return new LiftWait(Optional.empty(), left);
    }

    private Countdown countdown(double fresh) {
        Instant now = look.situation().now();
        return look.before()
                .lift()
                .countdown()
                .map(shown -> shown.follows(fresh, now))
                .orElse(new Countdown(fresh, now));
    }

    private boolean isReadyTime(double left) {
        return left <= GET_READY_SECONDS || look.wasOpen(CueId.GET_READY) && left <= 2 * GET_READY_SECONDS;
    }

    private boolean turnReached() {
        return look.secondsToLift().filter(s -> s <= look.reactionSeconds()).isPresent();
    }

    /** Whether the upper end of the turning point's band, once the hands have acted, reaches the range's. */
    private boolean upperEndReached() {
        double onTheWay = Math.max(0, look.rate()) / 60 * look.reactionSeconds();
        return look.turn()
                .filter(t -> t.upperCelsius() + onTheWay >= work.highCelsius())
                .isPresent();
    }

    /** The seconds rest on what dips have given; only a turning point at the end of the range itself cuts them short. */
    private boolean countedEnough() {
        boolean known = look.before().dips().response().dips() >= DIPS_TO_TRUST;
        return known ? turnCelsiusOnLift() >= work.highCelsius() : upperEndReached();
    }

    private double turnCelsiusOnLift() {
        return look.turnCelsius() + Math.max(0, look.rate()) / 60 * look.reactionSeconds();
    }

    /** Whether the second, or all but it, has been reached for so long. */
    private boolean lasted(Duration time) {
        return look.before()
                .lift()
                .reached()
                .filter(since -> !since.plus(time).isAfter(look.readingAt()))
                .isPresent();
    }

    private Optional<Instant> reachedSince(boolean reached) {
        return reached ? Optional.of(look.before().lift().reached().orElse(look.readingAt())) : Optional.empty();
    }

    /** What wavers after it was said goes on to be told by what it was said by. */
    private boolean saidByTheBand() {
        OpenCue said = look.before().open().get(CueId.LIFT_NOW);
        return said != null && said.reason().rule() == Rule.UPPER_END_REACHES_RANGE;
    }

    /** @param byTheBand whether the upper end of the band decides, and not where its middle should land */
    private Reason liftReason(boolean byTheBand) {
        Reason reason = look.reason(byTheBand ? Rule.UPPER_END_REACHES_RANGE : Rule.TURN_REACHES_AIM)
                .with(Figure.RANGE_LOW_C, work.lowCelsius())
                .with(Figure.RANGE_HIGH_C, work.highCelsius());
        Optional<Double> aim = look.aimCelsius().filter(a -> !byTheBand);
        if (aim.isPresent()) reason = reason.with(Figure.AIM_C, aim.get());
        OptionalDouble left = look.secondsToLift().map(OptionalDouble::of).orElse(OptionalDouble.empty());
        return left.isPresent() ? reason.with(Figure.LEFT_S, Math.max(0, left.getAsDouble())) : reason;
    }
}
