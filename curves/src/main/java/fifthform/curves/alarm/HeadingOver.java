package fifthform.curves.alarm;

import fifthform.curves.estimate.Estimate;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Phase;
import fifthform.curves.signal.Window;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Situation;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether the chocolate is on its way past the working range: a lift that was cued and not done, a turning point beyond
 * the recipe's warning temperature, or one beyond the range where a bath pushes hard. What else turns between the range and
 * the warning temperature is the cue's business; no kitchen probe tells it from the range, and a warning of it would be
 * false for whoever works steadily at its upper end.
 */
final class HeadingOver {
    /**
     * How long after the hands should have acted a cue to lift counts as missed: the curve needs about this long to
     * show that the bowl has left, and an alarm at a maker who has just obeyed would teach them to ignore it. A bowl
     * that really was left is caught by its forecast peak, whichever comes first.
     */
    private static final Duration LIFT_OVERDUE = Duration.ofSeconds(20);

    private static final double STILL_PUSHED = 0.85;
    private static final double PUSH_KELVIN_PER_MINUTE = 0.4;
    private static final double FAINT_PUSH_KELVIN_PER_MINUTE = 0.2;

    /** So long a bowl must have been seen to rise; a coast has been rising since before it. Own choice. */
    private static final Duration RISE_SEEN = Duration.ofSeconds(8);

    private static final double RISES_KELVIN_PER_MINUTE = 0.2;

    /** A cool cloth is worth while for no less. Own choice. */
    private static final double TO_COME_KELVIN = 0.1;

    private static final double URGENT_OVER_KELVIN = 0.3;
    private static final double GUARD_SOON_SECONDS = 20;
    private static final double PASSED_SOON_SECONDS = 30;

    /** What the network contests for so long is believed. Own choice. */
    private static final Duration CONTESTED = Duration.ofSeconds(15);

    private final Situation situation;
    private final double warnCelsius;

    HeadingOver(Situation situation) {
        this.situation = situation;
        this.warnCelsius = situation.recipe().meltOut().warnCelsius();
    }

    Finding look(double deadbandKelvin) {
        Optional<Forecast> forecast = situation.forecast();
        Optional<Estimate> trusted = situation.trusted();
        if (forecast.isEmpty() || trusted.isEmpty()) {
            Priority usual = AlarmTable.of(AlarmId.HEADING_OVER).usualPriority();
            return new Finding(Condition.UNKNOWN, usual, OptionalDouble.empty());
        }
        double peak = peak(forecast.get());
        double over = peak - limitCelsius(trusted.get());
        boolean soon = peak > warnCelsius + URGENT_OVER_KELVIN || guardIsNear(trusted.get());
        TimeAvailable time = soon ? TimeAvailable.UNDER_HALF_A_MINUTE : TimeAvailable.UP_TO_THREE_MINUTES;
        Condition condition = headsOver(trusted.get(), over, deadbandKelvin);
        return new Finding(condition, time.with(Consequence.BATCH), OptionalDouble.of(peak));
    }

    Reason reason(AlarmReasons reasons) {
        return overdue(situation.trusted().orElseThrow()) == Condition.MET
                ? reasons.liftOverdue(fastestOfLate())
                : reasons.peakPasses(limitCelsius(situation.trusted().orElseThrow()), beforeHandsAct());
    }

    private double peak(Forecast forecast) {
        return Math.max(forecast.ifLifted().celsius(), beforeHandsAct().orElse(Double.NEGATIVE_INFINITY));
    }

    /** On the way up it goes on until the hands act, whatever is forecast for a lift at this moment; then it is here. */
    private OptionalDouble beforeHandsAct() {
        if (!isOnTheWayUp()) return OptionalDouble.empty();
        Estimate estimate = situation.trusted().orElseThrow();
        double reaction = situation.reaction().toMillis() / 1000.0;
        return OptionalDouble.of(estimate.chocolateCelsius() + estimate.rateKelvinPerMinute() / 60 * reaction);
    }

    /** The end of the range where a bath pushes so hard that the warning temperature is passed within half a minute. */
    private double limitCelsius(Estimate estimate) {
        double soon = estimate.chocolateCelsius() + slowest() / 60 * PASSED_SOON_SECONDS;
        boolean hard = isOnTheWayUp() && soon >= warnCelsius;
        return hard ? situation.recipe().work().range().highCelsius() : warnCelsius;
    }

    /** While it is worked, what looks like a bath is mostly the coast of a touch that lies behind. */
    private boolean isOnTheWayUp() {
        return situation.batch().place() == Place.BATH && situation.batch().phase() == Phase.REWARM;
    }

    private double slowest() {
        return situation
                .window()
                .lowestRateThroughout(situation.now().minus(RISE_SEEN))
                .orElse(0);
    }

    private Condition headsOver(Estimate estimate, double overKelvin, double deadbandKelvin) {
        Condition overdue = overdue(estimate);
        if (overdue == Condition.MET) return Condition.MET;
        Condition passes = passes(estimate, overKelvin, deadbandKelvin);
        return passes == Condition.OVER ? overdue : passes;
    }

    /**
     * It takes a rise that has lasted, since a tip that comes back from the air rises as well. Off the bath there is
     * nothing left to lift: there it takes something that is still to come.
     */
    private Condition passes(Estimate estimate, double overKelvin, double deadbandKelvin) {
        Condition seen = Condition.high(overKelvin, deadbandKelvin);
        if (seen != Condition.MET) return seen;
        double stillToCome = limitCelsius(estimate) + overKelvin - estimate.chocolateCelsius();
        boolean offTheBath = situation.batch().place() != Place.BATH;
        boolean toCome = !offTheBath || stillToCome > TO_COME_KELVIN;
        if (slowest() > RISES_KELVIN_PER_MINUTE && toCome && !situation.isContested(warnCelsius, CONTESTED))
            return Condition.MET;
        // A wobble of the spoon's is no turning point yet.
        double fastest = situation
                .window()
                .highestRateThroughout(situation.now().minus(RISE_SEEN))
                .orElse(0);
        return fastest > RISES_KELVIN_PER_MINUTE ? Condition.BETWEEN : Condition.OVER;
    }

    /** Whether the hands have not obeyed a cue to lift: the push that was there before it goes on. */
    private Condition overdue(Estimate estimate) {
        Duration patience = situation.reaction().plus(LIFT_OVERDUE);
        boolean late = situation
                .liftDueSince()
                .filter(since -> Duration.between(since, situation.now()).compareTo(patience) >= 0)
                .isPresent();
        double rate = estimate.rateKelvinPerMinute();
        if (!late || rate < FAINT_PUSH_KELVIN_PER_MINUTE) return Condition.OVER;
        boolean pushed = rate > STILL_PUSHED * fastestOfLate() && rate > PUSH_KELVIN_PER_MINUTE;
        // A rest of the spoon slackens the rise as a lift does: it takes more than that to take the alarm back.
        return pushed ? Condition.MET : Condition.BETWEEN;
    }

    private double fastestOfLate() {
        return situation
                .window()
                .fastestRiseSince(situation.now().minus(LIFT_OVERDUE))
                .map(Window.Point::kelvinPerMinute)
                .orElse(0.0);
    }

    private boolean guardIsNear(Estimate estimate) {
        double rate = estimate.rateKelvinPerMinute() / 60;
        double way = situation.recipe().meltOut().guardCelsius() - estimate.chocolateCelsius();
        boolean onBath = situation.batch().place() == Place.BATH;
        return way <= 0 || (onBath && rate > 0 && way / rate < GUARD_SOON_SECONDS);
    }
}
