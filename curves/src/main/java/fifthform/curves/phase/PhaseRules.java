package fifthform.curves.phase;

import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.signal.Window;
import java.time.Duration;
import java.time.Instant;

/**
 * Which phase the curve shows. Every rule needs more than one moment, since a wrong phase silences the right cue.
 * Distances from the recipe's temperatures are our own choice.
 */
final class PhaseRules {
    private static final Duration SUSTAINED = Duration.ofSeconds(20);
    private static final Duration WARMING = Duration.ofSeconds(10);
    private static final Duration FOR_LONG = Duration.ofSeconds(100);
    static final Duration SETTLED = Duration.ofSeconds(15);

    private static final double LEFT_THE_MELT_KELVIN = 1.5;
    private static final double NEAR_COOL_KELVIN = 0.2;
    private static final double LEFT_THE_COOL_KELVIN = 0.7;

    /** A batch that was joined while it cooled is at its coldest, but for noise. */
    private static final double JOINED_KELVIN = 0.3;

    /** So far above the coldest of the cooling no spoon alone brings it. */
    private static final double WARMED_KELVIN = 1.0;

    private static final double PLAINLY_RISING_KELVIN_PER_MINUTE = 0.1;
    private static final double NEAR_WORK_KELVIN = 0.2;
    private static final double HARDLY_MOVES_KELVIN_PER_MINUTE = 0.3;
    private static final double DONE_POURING_KELVIN = 2.0;

    private final Recipe recipe;
    private final PhaseProgress progress;
    private final Contact contact;
    private final Melted melted;
    private final double celsius;
    private final double rate;
    private final Window window;
    private final Instant now;

    private PhaseRules(Recipe recipe, Batch batch, Estimate estimate, Window window, Instant now) {
        this.recipe = recipe;
        this.progress = batch.progress();
        this.contact = batch.contact();
        this.melted = batch.melted();
        this.celsius = estimate.chocolateCelsius();
        this.rate = estimate.rateKelvinPerMinute();
        this.window = window;
        this.now = now;
    }

    static Phase next(Recipe recipe, Batch batch, Estimate estimate, Window window, Instant now) {
        PhaseRules rules = new PhaseRules(recipe, batch, estimate, window, now);
        return switch (batch.phase()) {
            case MELT -> rules.afterMelt();
            case COOL -> rules.afterCool();
            case SEED -> rules.afterSeed();
            case REWARM -> rules.afterRewarm();
            case WORK -> rules.afterWork();
            case REST -> rules.afterRest();
        };
    }

    /** What a conclusion about the phase says of the crystals: a batch that was joined while it cooled was melted. */
    static Melted concluded(Phase next, Phase before, Melted melted) {
        boolean joined = next == Phase.COOL && before == Phase.MELT && !melted.isSeen();
        return joined ? Melted.STILL_WARM : melted;
    }

    private Phase afterMelt() {
        double highest = progress.highestCelsius().orElse(celsius);
        boolean wasMelted = melted.isSeen();
        boolean falling = celsius <= highest - LEFT_THE_MELT_KELVIN && rate < -0.4;
        boolean inColdWater = contact.place() == Place.COLD_WATER;
        boolean saidSo = inColdWater && contact.evidence() == Evidence.TOLD;
        boolean left = saidSo || joinedWhileCooling() || sinksForLong() || melted == Melted.COOLED_SINCE;
        return left || (wasMelted && (falling || inColdWater)) ? Phase.COOL : Phase.MELT;
    }

    /**
     * What rose before it fell was being melted, and its probe has been taken out; what never was above the range was
     * never melted, but came from a hot kitchen.
     */
    private boolean joinedWhileCooling() {
        double lowest = progress.lowestCelsius().orElse(celsius);
        return mayBeJoined()
                && celsius <= lowest + JOINED_KELVIN
                && window.highestRateThroughout(now.minus(SUSTAINED)).orElse(0) < -0.8;
    }

    /** A weak bath was given up: it sinks as a bowl does and a tip in the air does not. */
    private boolean sinksForLong() {
        return mayBeJoined()
                && window.highestRateThroughout(now.minus(FOR_LONG)).orElse(0) < -0.2
                && window.fastestFallSince(now.minus(FOR_LONG)).orElseThrow().kelvinPerMinute()
                        > -Melted.TOO_FAST_KELVIN_PER_MINUTE;
    }

    /** Bars of a failed batch were melted by nobody before: only what has cooled to the range is believed to cool. */
    private boolean mayBeJoined() {
        boolean old = melted == Melted.OLD_CRYSTALS && celsius >= workLow();
        return !old
                && progress.highestCelsius().orElse(celsius)
                        > recipe.work().range().highCelsius();
    }

    private Phase afterCool() {
        if (meltedAgain()) return Phase.MELT;
        // Warm again without ever having been cold enough: the batch has gone on, and so must its alarms.
        if (hasWarmed()) return Phase.REWARM;
        return celsius <= coolHigh() + NEAR_COOL_KELVIN ? Phase.SEED : Phase.COOL;
    }

    private Phase afterSeed() {
        if (meltedAgain()) return Phase.MELT;
        boolean warmed = celsius > coolHigh() + LEFT_THE_COOL_KELVIN && rate > PLAINLY_RISING_KELVIN_PER_MINUTE;
        return warmed || hasWarmed() || contact.place() == Place.BATH ? Phase.REWARM : Phase.SEED;
    }

    private Phase afterRewarm() {
        if (meltedAgain()) return Phase.MELT;
        // What came in temper has no crystals to make, unless somebody cools it on purpose.
        boolean keeps = melted == Melted.KEPT && contact.place() != Place.COLD_WATER;
        if (!keeps && celsius < coolHigh() && rate < -0.3 && contact.place() != Place.BATH) return Phase.SEED;
        boolean settled = progress.settledSince()
                .filter(since -> Duration.between(since, now).compareTo(SETTLED) >= 0)
                .isPresent();
        return settled ? Phase.WORK : Phase.REWARM;
    }

    private Phase afterWork() {
        if (meltedAgain()) return Phase.MELT;
        if (celsius >= workLow() - DONE_POURING_KELVIN || rate >= 0) return Phase.WORK;
        boolean seedWasLost =
                progress.highestCelsius().orElse(celsius) >= recipe.meltOut().limitCelsius();
        return seedWasLost || contact.place() == Place.COLD_WATER ? Phase.COOL : Phase.REST;
    }

    private Phase afterRest() {
        if (meltedAgain()) return Phase.MELT;
        return contact.place() == Place.BATH && rising() || hasWarmed() ? Phase.REWARM : Phase.REST;
    }

    /**
     * Wherever the bowl is thought to stand: what has been below the range since the melt and is above it now, or has
     * risen plainly since its coldest, is being rewarmed.
     */
    private boolean hasWarmed() {
        if (!melted.hasSeed()) return false;
        double lowest = progress.lowestCelsius().orElse(celsius);
        boolean above = celsius > recipe.work().range().highCelsius();
        boolean risen = lowest < workLow()
                && celsius > lowest + WARMED_KELVIN
                && window.lowestRateThroughout(now.minus(WARMING)).orElse(0) > PLAINLY_RISING_KELVIN_PER_MINUTE;
        boolean overBath = contact.place() == Place.BATH
                && rising()
                && celsius < recipe.meltOut().limitCelsius();
        return above || risen || overBath;
    }

    /** Hot and rising, or hot and long not falling where it was thought to cool: it never left the melt. */
    private boolean meltedAgain() {
        boolean hot =
                melted == Melted.STILL_WARM && celsius > recipe.meltOut().limitCelsius() + Melted.ABOVE_MELT_OUT_KELVIN;
        boolean inColdWater = contact.place() == Place.COLD_WATER;
        boolean saidSo = inColdWater && contact.evidence() == Evidence.TOLD;
        double slowest = window.lowestRateThroughout(now.minus(SUSTAINED)).orElse(-1);
        return hot && (rising() && !inColdWater || slowest > -0.1 && !saidSo);
    }

    private boolean rising() {
        return window.lowestRateThroughout(now.minus(SUSTAINED)).orElse(0) > 0.4;
    }

    /** Near or above the working range and hardly moving: the coast is over. */
    static boolean hardlyMoves(Recipe recipe, Estimate estimate) {
        return estimate.chocolateCelsius() >= recipe.work().range().lowCelsius() - NEAR_WORK_KELVIN
                && Math.abs(estimate.rateKelvinPerMinute()) < HARDLY_MOVES_KELVIN_PER_MINUTE;
    }

    private double coolHigh() {
        return recipe.cool().range().highCelsius();
    }

    private double workLow() {
        return recipe.work().range().lowCelsius();
    }
}
