package fifthform.curves.learning;

import fifthform.curves.check.Require;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * How a batch's bars came out, as far as looks tell: when marks of lost temper were not there yet, and when they were.
 *
 * <p>Marks come in time, and do not go away. So looks make an interval, and a later one refines an earlier: fine after a
 * day is weak evidence, fine after a week is strong, and marks that were not there after a day are more often something
 * else's than those that were.
 *
 * @param cleanAtHours age at the last look that found none, h
 * @param markedAtHours age at the first look that found some, h; later than the last clean one
 * @param sureness of the maker
 */
public record Outcome(OptionalDouble cleanAtHours, OptionalDouble markedAtHours, BarLook.Sureness sureness) {
    /** Bars that look well when younger have shown nothing yet. Own choice, a little less than the usual day. */
    static final double EARLIEST_HOURS = 18;

    /**
     * Lost temper shows with this time constant: bloom begins within 24 h and has levelled out at 96 h (Afoakwa et al.
     * 2009, J Food Eng 91:571-581, abstract); the figure between is ours: 76 % by 24 h, 93 % by 48 h.
     */
    private static final double SHOWS_HOURS = 16;

    /** Lost temper that nobody ever sees. Own choice. */
    private static final double SHOWS_IN_THE_END = 0.98;

    /** Marks of other causes (mould, demoulding) that come as soon, and those of the store, one a so many h. Own choice. */
    private static final double OTHER_CAUSES = 0.025;

    private static final double STORE_HOURS = 3500;

    /** How often a maker who is sure, or not, takes one for the other. Own choice. */
    private static final double ERROR_WHEN_SURE = 0.02;

    private static final double ERROR_WHEN_UNSURE = 0.2;

    public Outcome {
        Require.within(cleanAtHours, 0, BarLook.OLDEST_HOURS, "cleanAtHours");
        Require.within(markedAtHours, 0, BarLook.OLDEST_HOURS, "markedAtHours");
        if (cleanAtHours.isEmpty() && markedAtHours.isEmpty()) {
            throw new IllegalArgumentException("an outcome must have been seen");
        }
        if (cleanAtHours.isPresent()
                && markedAtHours.isPresent()
                && cleanAtHours.getAsDouble() >= markedAtHours.getAsDouble()) {
            throw new IllegalArgumentException(
                    "marks must come after the last look without, were at " + markedAtHours + " and " + cleanAtHours);
        }
    }

    /** What a batch's looks say together: an outcome, or why there is none. */
    public static Judged of(List<BarLook> looks) {
        OptionalDouble clean = looks.stream()
                .filter(l -> l.sign() == Sign.CLEAN)
                .mapToDouble(BarLook::ageHours)
                .max();
        OptionalDouble marked = looks.stream()
                .filter(l -> l.sign() == Sign.LOST_TEMPER)
                .mapToDouble(BarLook::ageHours)
                .min();
        if (clean.isPresent() && marked.isPresent() && clean.getAsDouble() >= marked.getAsDouble()) {
            return Judged.out(LeftOut.CONTRADICTS);
        }
        if (marked.isEmpty() && clean.isEmpty()) return Judged.out(withoutSign(looks));
        if (marked.isEmpty() && clean.getAsDouble() < EARLIEST_HOURS) return Judged.out(LeftOut.TOO_EARLY);
        return Judged.in(new Outcome(clean, marked, sureness(looks)));
    }

    private static LeftOut withoutSign(List<BarLook> looks) {
        boolean other = looks.stream().anyMatch(l -> l.sign() != Sign.UNCLEAR);
        return other ? LeftOut.OTHER_CAUSE : LeftOut.UNCLEAR;
    }

    /** One sure look is enough: it is the one that counts. */
    private static BarLook.Sureness sureness(List<BarLook> looks) {
        boolean sure = looks.stream()
                .filter(l -> l.sign() == Sign.CLEAN || l.sign() == Sign.LOST_TEMPER)
                .anyMatch(l -> l.sureness() == BarLook.Sureness.SURE);
        return sure ? BarLook.Sureness.SURE : BarLook.Sureness.UNSURE;
    }

    public boolean isMarked() {
        return markedAtHours.isPresent();
    }

    /** How likely the looks are of bars whose temper was lost. */
    double ifLost() {
        return withError(likelihood(Outcome::shownIfLost), likelihood(Outcome::shownIfKept));
    }

    /** How likely they are of bars whose temper was kept. */
    double ifKept() {
        return withError(likelihood(Outcome::shownIfKept), likelihood(Outcome::shownIfLost));
    }

    private double withError(double own, double other) {
        double error = sureness == BarLook.Sureness.SURE ? ERROR_WHEN_SURE : ERROR_WHEN_UNSURE;
        return (1 - error) * own + error * other;
    }

    private double likelihood(DoubleUnaryOperator shownBy) {
        double notBefore = cleanAtHours.isPresent() ? shownBy.applyAsDouble(cleanAtHours.getAsDouble()) : 0;
        double by = markedAtHours.isPresent() ? shownBy.applyAsDouble(markedAtHours.getAsDouble()) : 1;
        return by - notBefore;
    }

    private static double shownIfLost(double hours) {
        return SHOWS_IN_THE_END * -StrictMath.expm1(-hours / SHOWS_HOURS);
    }

    private static double shownIfKept(double hours) {
        return -StrictMath.expm1(OTHER_CAUSES * StrictMath.expm1(-hours / SHOWS_HOURS) - hours / STORE_HOURS);
    }
}
