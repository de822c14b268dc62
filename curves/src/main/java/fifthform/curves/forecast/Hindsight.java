package fifthform.curves.forecast;

import fifthform.curves.check.Require;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Contact;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How this session's forecasts have come out so far, and what follows for the width of the next: a band that is passed
 * too often grows, one that is never passed shrinks, for each place and each of two distances by itself.
 *
 * <p>Every few seconds a forecast is kept; a minute and three minutes later the chocolate shows whether its band held.
 * Each miss makes the logarithm of the factor larger by nine tenths of a step, each hit smaller by a tenth, so that in the
 * long run nine of ten hold whatever the kitchen. Source: Gibbs and Candès, <i>Adaptive conformal inference under
 * distribution shift</i>, 2021 (from memory); step and bounds are our own choice.
 *
 * @param waiting forecasts that have not come due, oldest first
 * @param table on the table
 * @param bath over the warm water
 * @param cold in the cold water
 */
public record Hindsight(List<Said> waiting, Factors table, Factors bath, Factors cold) {
    /** Nothing has come due yet. */
    public static final Hindsight NONE = new Hindsight(List.of(), Factors.ONE, Factors.ONE, Factors.ONE);

    /**
     * Factors of the band's width, as logarithms.
     *
     * @param near a minute ahead
     * @param far three minutes ahead
     */
    record Factors(double near, double far) {
        static final Factors ONE = new Factors(0, 0);

        /** The factor so many seconds ahead: between the two distances along a line of its logarithm. */
        private double at(double seconds) {
            double share = Math.min(1, Math.max(0, (seconds - NEAR_SECONDS) / (FAR_SECONDS - NEAR_SECONDS)));
            return StrictMath.exp(near + share * (far - near));
        }
    }

    /**
     * What was said at a moment.
     *
     * @param at when
     * @param since since when the bowl stood where it did
     * @param course the middle
     * @param rateSigma uncertainty of the rate then, K/s
     * @param levelSigma uncertainty of the temperature then, K
     * @param nearSeen whether a minute has passed
     */
    record Said(Instant at, Instant since, Course course, double rateSigma, double levelSigma, boolean nearSeen) {
        private double sigmasOff(double celsius, double seconds) {
            double sigma = CourseSpread.kelvin(course, seconds, rateSigma, levelSigma);
            return Math.abs(celsius - course.at(seconds)) / sigma;
        }
    }

    private static final double NEAR_SECONDS = 60;
    private static final double FAR_SECONDS = 180;

    /** A reading later than this says nothing of what was said of three minutes. */
    private static final double TOO_LATE_SECONDS = 240;

    private static final double SPACING_SECONDS = 5;
    private static final double STEP_PER_SECOND = 0.04;
    private static final double LONGEST_STEP = 0.5;
    private static final double MISSES = 0.1;

    private static final double NARROWEST = StrictMath.log(0.25);
    private static final double WIDEST = StrictMath.log(3);

    public Hindsight {
        waiting = List.copyOf(waiting);
        Require.within(waiting.size(), 0, TOO_LATE_SECONDS / SPACING_SECONDS + 1, "waiting");
        Objects.requireNonNull(table, "table");
        Objects.requireNonNull(bath, "bath");
        Objects.requireNonNull(cold, "cold");
    }

    /** How much wider than at first the band of a bowl in this place is, so many seconds ahead; 1 before anything came due. */
    double factor(Place place, double seconds) {
        return of(place).at(seconds);
    }

    /** Once the chocolate is there, and {@code forecast} is said of what follows. */
    public Hindsight with(Estimate estimate, Contact contact, Forecast forecast) {
        Factors factors = of(contact.place());
        // Neighbours tell nearly the same, so what a comparison teaches goes with the time between two.
        double step = waiting.size() < 2 ? 0 : Math.min(LONGEST_STEP, STEP_PER_SECOND * spacing());
        List<Said> kept = new ArrayList<>(waiting.size() + 1);
        for (Said said : waiting) {
            // A bowl that was moved does not show what would have come.
            double age = seconds(said.at(), estimate.at());
            if (!said.since().equals(contact.since()) || age >= TOO_LATE_SECONDS) continue;
            if (age >= FAR_SECONDS) {
                double off = said.sigmasOff(estimate.chocolateCelsius(), age);
                factors = new Factors(factors.near(), learned(factors.far(), off, step));
                continue;
            }
            if (age >= NEAR_SECONDS && !said.nearSeen()) {
                double off = said.sigmasOff(estimate.chocolateCelsius(), age);
                factors = new Factors(learned(factors.near(), off, step), factors.far());
                kept.add(new Said(said.at(), said.since(), said.course(), said.rateSigma(), said.levelSigma(), true));
            } else {
                kept.add(said);
            }
        }
        boolean due = kept.isEmpty() || seconds(kept.get(kept.size() - 1).at(), estimate.at()) >= SPACING_SECONDS;
        if (due) kept.add(said(estimate, contact, forecast));
        return with(kept, contact.place(), factors);
    }

    private double spacing() {
        return seconds(waiting.get(0).at(), waiting.get(1).at());
    }

    private static Said said(Estimate estimate, Contact contact, Forecast f) {
        return new Said(
                estimate.at(), contact.since(), f.course(), f.rateSigmaKelvinPerSecond(), f.levelSigmaKelvin(), false);
    }

    private static double learned(double logFactor, double sigmasOff, double step) {
        boolean missed = sigmasOff > Outlook.NINETY_PERCENT * StrictMath.exp(logFactor);
        double next = logFactor + step * (missed ? 1 - MISSES : -MISSES);
        return Math.min(WIDEST, Math.max(NARROWEST, next));
    }

    private Factors of(Place place) {
        return switch (place) {
            case TABLE -> table;
            case BATH -> bath;
            case COLD_WATER -> cold;
        };
    }

    private Hindsight with(List<Said> others, Place place, Factors factors) {
        return new Hindsight(
                others,
                place == Place.TABLE ? factors : table,
                place == Place.BATH ? factors : bath,
                place == Place.COLD_WATER ? factors : cold);
    }

    private static double seconds(Instant from, Instant to) {
        return (to.toEpochMilli() - from.toEpochMilli()) / 1000.0;
    }
}
