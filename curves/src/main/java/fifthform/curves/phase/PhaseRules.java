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
    static final Duration SETTLED = Duration.ofSeconds(15);

    /** Above melt-out by this much, no form V is left to protect: the chocolate is being melted. */
    private static final double MELTED_AGAIN_KELVIN = 2.0;

    private static final double LEFT_THE_MELT_KELVIN = 1.5;
    private static final double NEAR_COOL_KELVIN = 0.2;
    private static final double LEFT_THE_COOL_KELVIN = 0.7;
    private static final double NEAR_WORK_KELVIN = 0.2;
    private static final double HARDLY_MOVES_KELVIN_PER_MINUTE = 0.3;
    private static final double DONE_POURING_KELVIN = 2.0;

    private final Recipe recipe;
    private final PhaseProgress progress;
    private final Contact contact;
    private final double celsius;
    private final double rate;
    private final Window window;
    private final Instant now;

    private PhaseRules(
            Recipe recipe, PhaseProgress progress, Contact contact, Estimate estimate, Window window, Instant now) {
        this.recipe = recipe;
        this.progress = progress;
        this.contact = contact;
        this.celsius = estimate.chocolateCelsius();
        this.rate = estimate.rateKelvinPerMinute();
        this.window = window;
        this.now = now;
    }

    static Phase next(
            Recipe recipe, PhaseProgress progress, Contact contact, Estimate estimate, Window window, Instant now) {
        PhaseRules rules = new PhaseRules(recipe, progress, contact, estimate, window, now);
        return switch (progress.phase()) {
            case MELT -> rules.afterMelt();
            case COOL -> rules.afterCool();
            case SEED -> rules.afterSeed();
            case REWARM -> rules.afterRewarm();
            case WORK -> rules.afterWork();
            case REST -> rules.afterRest();
        };
    }

    private Phase afterMelt() {
        double highest = progress.highestCelsius().orElse(celsius);
        boolean wasMelted = highest >= recipe.meltOut().limitCelsius() + MELTED_AGAIN_KELVIN;
        boolean falling = celsius <= highest - LEFT_THE_MELT_KELVIN && rate < -0.4;
        boolean joinedWhileCooling =
                window.highestRateThroughout(now.minus(SUSTAINED)).orElse(0) < -0.8;
        boolean toldSo = contact.place() == Place.COLD_WATER;
        return (wasMelted && (falling || toldSo)) || joinedWhileCooling ? Phase.COOL : Phase.MELT;
    }

    private Phase afterCool() {
        if (meltedAgain()) return Phase.MELT;
        if (celsius <= coolHigh() + NEAR_COOL_KELVIN) return Phase.SEED;
        // Back over the bath without ever having been cold enough: the batch has gone on, and so must its alarms.
        boolean warmedEarly = contact.place() == Place.BATH
                && rising()
                && celsius < recipe.meltOut().limitCelsius();
        return warmedEarly ? Phase.REWARM : Phase.COOL;
    }

    private Phase afterSeed() {
        if (meltedAgain()) return Phase.MELT;
        boolean warmed = celsius > coolHigh() + LEFT_THE_COOL_KELVIN && rate > 0.1;
        return warmed || contact.place() == Place.BATH ? Phase.REWARM : Phase.SEED;
    }

    private Phase afterRewarm() {
        if (meltedAgain()) return Phase.MELT;
        if (celsius < coolHigh() && rate < -0.3 && contact.place() != Place.BATH) return Phase.SEED;
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
        return contact.place() == Place.BATH && rising() ? Phase.REWARM : Phase.REST;
    }

    private boolean meltedAgain() {
        return celsius > recipe.meltOut().limitCelsius() + MELTED_AGAIN_KELVIN
                && contact.place() != Place.COLD_WATER
                && rising();
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
