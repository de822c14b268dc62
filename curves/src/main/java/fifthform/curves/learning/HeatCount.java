package fifthform.curves.learning;

import fifthform.curves.engine.State;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.phase.Batch;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.situation.ProbePlace;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A batch's heat, counted state by state, so that a live session and a replay count alike.
 *
 * <p>It counts from the last time that half of the cool hold was kept: who overshoots, cools again and holds has new crystals. Heat
 * after the chocolate was melted again is not that of the bars that were poured before.
 *
 * @param scale what a minute weighs
 * @param stage whether there are crystals whose heat counts
 * @param weightedMinutes the heat so far
 * @param highestCelsius highest temperature in rewarm and work, °C
 * @param overRange time above the working range
 * @param whole whether readings were missing while it was above the range
 * @param last the last reading
 */
public record HeatCount(
        HeatScale scale,
        Stage stage,
        double weightedMinutes,
        OptionalDouble highestCelsius,
        Duration overRange,
        Whole whole,
        Optional<Point> last) {
    /** Whether there are crystals whose heat counts. */
    public enum Stage {
        NOT_COOLED,
        COOLED,
        /** Melted after it had been cooled; what was counted is of the bars that were poured before. */
        MELTED_AGAIN
    }

    /** Whether all of the heat was seen. */
    public enum Whole {
        WHOLE,
        READINGS_MISSING
    }

    /** A moment of the curve. */
    public record Point(Instant at, double celsius) {
        public Point {
            Objects.requireNonNull(at, "at");
        }
    }

    /** Shorter gaps are bridged by a straight line: crystal model, section 4. */
    private static final Duration BRIDGED = Duration.ofMinutes(2);

    /**
     * Part of the recipe's hold that is enough to count. Own choice: the hold is 6 min, this project's table of faults takes
     * less than 2 min for a cause of marks and 3 to 5 min for the remedy (common practice, no source).
     */
    private static final double HOLD_SHARE = 0.5;

    public HeatCount {
        Objects.requireNonNull(scale, "scale");
        Objects.requireNonNull(stage, "stage");
        Objects.requireNonNull(highestCelsius, "highestCelsius");
        Objects.requireNonNull(overRange, "overRange");
        Objects.requireNonNull(whole, "whole");
        Objects.requireNonNull(last, "last");
    }

    /** Before the first state. */
    public static HeatCount start(HeatScale scale) {
        return from(scale, Stage.NOT_COOLED, Optional.empty());
    }

    private static HeatCount from(HeatScale scale, Stage stage, Optional<Point> last) {
        return new HeatCount(scale, stage, 0, OptionalDouble.empty(), Duration.ZERO, Whole.WHOLE, last);
    }

    /**
     * The heat after one more state of the engine.
     *
     * @param recipe the one in force, for how long it must be held cool
     */
    public HeatCount with(Recipe recipe, State after) {
        HeatCount staged = staged(recipe, after.batch());
        Optional<Estimate> news = after.estimate()
                .filter(Estimate::isUsable)
                .filter(e -> after.probe() == ProbePlace.IN_THE_CHOCOLATE)
                .filter(e -> last.filter(l -> !l.at().isBefore(e.at())).isEmpty());
        return news.map(e -> staged.read(
                        new Point(e.at(), e.chocolateCelsius()), after.batch().phase()))
                .orElse(staged);
    }

    /** The dose; empty where no heat after a cool hold was seen. */
    public Optional<HeatDose> dose() {
        if (highestCelsius.isEmpty()) return Optional.empty();
        return Optional.of(
                new HeatDose(scale.equivalentCelsius(weightedMinutes), highestCelsius.getAsDouble(), overRange));
    }

    /** Why this batch's dose says nothing; empty where it does. */
    public Optional<LeftOut> leftOut(Recipe recipe) {
        if (stage == Stage.NOT_COOLED) return Optional.of(LeftOut.NOT_COOLED);
        boolean reached = highestCelsius.orElse(Double.NEGATIVE_INFINITY)
                >= recipe.work().range().lowCelsius();
        if (!reached) return Optional.of(LeftOut.NOT_REACHED);
        return whole == Whole.WHOLE ? Optional.empty() : Optional.of(LeftOut.READINGS_MISSING);
    }

    private HeatCount staged(Recipe recipe, Batch batch) {
        double needed = HOLD_SHARE * recipe.cool().dwell().toMillis();
        boolean held = batch.phase() == Phase.SEED && batch.progress().dwell().toMillis() >= needed;
        if (held) return stage == Stage.COOLED && highestCelsius.isEmpty() ? this : from(scale, Stage.COOLED, last);
        if (stage == Stage.COOLED && batch.phase() == Phase.MELT) {
            return new HeatCount(scale, Stage.MELTED_AGAIN, weightedMinutes, highestCelsius, overRange, whole, last);
        }
        // Melted, and on to the working range without crystals.
        boolean uncooled = stage == Stage.MELTED_AGAIN && isHot(batch.phase());
        return uncooled ? from(scale, Stage.NOT_COOLED, last) : this;
    }

    private HeatCount read(Point point, Phase phase) {
        boolean counts = stage == Stage.COOLED && isHot(phase);
        if (!counts || last.isEmpty())
            return new HeatCount(scale, stage, weightedMinutes, highestCelsius, overRange, whole, Optional.of(point));
        Point before = last.get();
        Duration passed = Duration.between(before.at(), point.at());
        boolean above = Math.max(before.celsius(), point.celsius()) > scale.highCelsius();
        boolean missing = above && passed.compareTo(BRIDGED) > 0;
        double minutes = passed.toNanos() / 60e9;
        double mean = (scale.weight(before.celsius()) + scale.weight(point.celsius())) / 2;
        return new HeatCount(
                scale,
                stage,
                missing ? weightedMinutes : weightedMinutes + minutes * mean,
                OptionalDouble.of(Math.max(point.celsius(), highestCelsius.orElse(point.celsius()))),
                above && !missing ? overRange.plus(passed) : overRange,
                missing ? Whole.READINGS_MISSING : whole,
                Optional.of(point));
    }

    private static boolean isHot(Phase phase) {
        return phase == Phase.REWARM || phase == Phase.WORK;
    }
}
