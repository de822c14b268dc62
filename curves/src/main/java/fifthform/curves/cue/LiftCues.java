package fifthform.curves.cue;

import fifthform.curves.cue.Dip.Stage;
import fifthform.curves.recipe.CelsiusRange;
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
            Reason reason = reached ? liftReason() : look.reason(Rule.DIP_IS_OVER);
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
            look.due(CueId.LIFT_NOW, look.turnCelsius(), liftReason());
        } else if (left.isPresent() && isReadyTime(left.get())) {
            Countdown shown = countdown(Math.max(0, left.get()));
            look.due(CueId.GET_READY, shown.seconds(), liftReason().with(Figure.LEFT_S, shown.seconds()));
            return new LiftWait(reachedSince(near), Optional.of(shown));
        }
        return new LiftWait(reachedSince(near), Optional.empty());
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

    private Reason liftReason() {
        Reason reason = look.reason(turnReached() ? Rule.TURN_REACHES_AIM : Rule.UPPER_END_REACHES_RANGE)
                .with(Figure.RANGE_LOW_C, work.lowCelsius())
                .with(Figure.RANGE_HIGH_C, work.highCelsius());
        OptionalDouble left = look.secondsToLift().map(OptionalDouble::of).orElse(OptionalDouble.empty());
        return left.isPresent() ? reason.with(Figure.LEFT_S, Math.max(0, left.getAsDouble())) : reason;
    }
}
