package fifthform.curves.whatif;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.whatif.Answer.End;
import fifthform.curves.whatif.Answer.Why;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Cuts the readings around a lift out of a batch: from the table before the stay in water, or from within that stay, to the
 * maker's next act. Lives within one {@link Rerun#of}.
 */
final class Windows {
    /** So much of the table before shows how warm the wall was and how the room pulls. */
    private static final Duration TABLE_BEFORE = Duration.ofSeconds(120);

    /** What an earlier move left under way has mostly arrived by then. */
    private static final Duration ARRIVED = Duration.ofSeconds(20);

    /** Of a stay longer than this only the end is looked at, unless its bath is asked for. */
    private static final Duration LONG_STAY = Duration.ofMinutes(6);

    private static final Duration LONGEST_STAY = Duration.ofMinutes(30);

    /** How far a curve reaches after a lift. */
    static final Duration REACH = Duration.ofMinutes(10);

    /** A hole in the readings longer than this hides what happened. */
    private static final double LONGEST_HOLE_SECONDS = 20;

    /** After the lift so much must be whole, or nothing shows how the bowl coasts. */
    private static final double WHOLE_AFTER_SECONDS = 40;

    private static final double SPACING_SECONDS = 1.4;
    private static final int FEWEST_BEFORE = 12;

    /** The readings of a window, or why there are none. */
    record Cut(Optional<Window> window, End end, Optional<Why> why, OptionalDouble figure) {
        Cut {
            Objects.requireNonNull(window, "window");
            Objects.requireNonNull(end, "end");
            Objects.requireNonNull(why, "why");
            Objects.requireNonNull(figure, "figure");
        }

        private static Cut refused(Why why, double figure) {
            return new Cut(Optional.empty(), End.RECORDING_ENDS, Optional.of(why), OptionalDouble.of(figure));
        }
    }

    private final PastBatch batch;
    private final PastLift lift;
    private final Stay stay;
    private final Stay after;
    private final Optional<Stay> before;
    private final Optional<Instant> nextMove;

    Windows(PastBatch batch, PastLift lift) {
        this.batch = batch;
        this.lift = lift;
        int index = batch.stayBefore(lift);
        stay = batch.stays().get(index);
        after = batch.stays().get(index + 1);
        before = index == 0 ? Optional.empty() : Optional.of(batch.stays().get(index - 1));
        // The last stay has not ended: there the recording has.
        nextMove = index + 2 < batch.stays().size()
                ? Optional.of(batch.stays().get(index + 2).from())
                : Optional.empty();
    }

    Stay stay() {
        return stay;
    }

    Stay after() {
        return after;
    }

    /** Cuts it out; the whole stay in water where its bath is asked for. */
    Cut cut(boolean wholeStay) {
        if (batch.bowl().size() == 0) return Cut.refused(Why.TOO_FEW_READINGS, 0);
        Instant zero = begin(wholeStay);
        if (Duration.between(zero, lift.at()).compareTo(LONGEST_STAY) > 0) {
            return Cut.refused(Why.TOO_FEW_READINGS, seconds(zero, lift.at()));
        }
        Instant end = lift.at().plus(REACH);
        End why = End.TEN_MINUTES;
        Optional<Instant> other = batch.otherActAfter(lift.at());
        for (Optional<Instant> act : java.util.List.of(nextMove, other)) {
            if (act.isPresent() && act.get().isBefore(end)) {
                end = act.get();
                why = End.NEXT_ACT;
            }
        }
        return readings(zero, end, why);
    }

    private Instant begin(boolean wholeStay) {
        boolean fromTable = before.filter(b -> b.place() == Place.TABLE)
                .filter(b -> Duration.between(b.from(), b.to()).compareTo(ARRIVED.multipliedBy(2)) > 0)
                .isPresent();
        Instant inWater = lift.at().minus(LONG_STAY);
        if (!wholeStay && stay.from().isBefore(inWater)) return inWater;
        if (!fromTable) return stay.from();
        Instant arrived = before.orElseThrow().from().plus(ARRIVED);
        Instant early = stay.from().minus(TABLE_BEFORE);
        return arrived.isAfter(early) ? arrived : early;
    }

    private Cut readings(Instant zero, Instant end, End why) {
        Readings bowl = batch.bowl();
        double liftSeconds = seconds(zero, lift.at());
        double until = seconds(zero, end);
        int first = bowl.from(zero);
        double[] at = new double[bowl.size() - first];
        double[] tip = new double[at.length];
        int n = 0;
        double last = 0;
        int beforeLift = 0;
        End ends = why;
        for (int i = first; i < bowl.size(); i++) {
            double t = bowl.seconds(i, zero);
            if (t > until) break;
            if (t - last > LONGEST_HOLE_SECONDS) {
                if (t < liftSeconds + WHOLE_AFTER_SECONDS) return Cut.refused(Why.PROBE_NOT_IN_CHOCOLATE, t - last);
                ends = End.RECORDING_ENDS;
                until = last;
                break;
            }
            boolean kept = n == 0 || t - at[n - 1] >= SPACING_SECONDS;
            last = t;
            if (!kept) continue;
            at[n] = t;
            tip[n++] = bowl.celsius(i);
            if (t <= liftSeconds) beforeLift++;
        }
        boolean hidden = until - last > LONGEST_HOLE_SECONDS && last < liftSeconds + WHOLE_AFTER_SECONDS;
        if (hidden && why == End.NEXT_ACT) return Cut.refused(Why.PROBE_NOT_IN_CHOCOLATE, until - last);
        if (until - last > LONGEST_HOLE_SECONDS / 2) {
            ends = End.RECORDING_ENDS;
            until = last;
        }
        if (beforeLift < FEWEST_BEFORE) return Cut.refused(Why.TOO_FEW_READINGS, beforeLift);
        if (until < liftSeconds + WHOLE_AFTER_SECONDS / 2)
            return Cut.refused(Why.TOO_FEW_READINGS, until - liftSeconds);
        Course course = new Course(stay.place(), seconds(zero, stay.from()), liftSeconds, until);
        Window window = new Window(
                zero, course, java.util.Arrays.copyOf(at, n), java.util.Arrays.copyOf(tip, n), bathCelsius(zero));
        return new Cut(Optional.of(window), ends, Optional.empty(), OptionalDouble.empty());
    }

    /** The bath's probe while the bowl stood over it; early in the stay, as the water cools. */
    private double bathCelsius(Instant zero) {
        if (stay.place() != Place.BATH) return Double.NaN;
        Readings bath = batch.bath();
        Instant from = stay.from().isAfter(zero) ? stay.from() : zero;
        double sum = 0;
        int n = 0;
        for (int i = bath.from(from); i < bath.size() && n < 6; i++) {
            if (bath.seconds(i, from) > seconds(from, lift.at())) break;
            sum += bath.celsius(i);
            n++;
        }
        return n == 0 ? Double.NaN : sum / n;
    }

    private static double seconds(Instant from, Instant to) {
        return (to.toEpochMilli() - from.toEpochMilli()) / 1000.0;
    }
}
