package fifthform.curves.contrast;

import fifthform.curves.engine.State;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.MakerAction.SeedAdded;
import fifthform.curves.input.MakerAction.Undone;
import fifthform.curves.input.Recorded;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Setup;
import fifthform.curves.situation.ProbePlace;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A batch's traits, counted state by state, of the last time that melted chocolate was cooled. Its heat is counted by
 * {@link fifthform.curves.learning.HeatCount}.
 *
 * @param phase the phase of the last state
 * @param lowestCelsius lowest temperature of the cool step, °C
 * @param cool time in the cool range
 * @param poured time in work with readings
 * @param pouredKelvinSeconds temperature over that time, °C·s
 * @param seeded the act by which seed went in
 * @param lastAt when the last reading was
 */
public record TraitCount(
        Phase phase,
        OptionalDouble lowestCelsius,
        Duration cool,
        Duration poured,
        double pouredKelvinSeconds,
        Optional<Long> seeded,
        Optional<Instant> lastAt) {
    /** Before the first state. */
    public static final TraitCount START = new TraitCount(
            Phase.MELT, OptionalDouble.empty(), Duration.ZERO, Duration.ZERO, 0, Optional.empty(), Optional.empty());

    /** So far above the cool range crystals still form about as well. As the engine counts its hold. */
    private static final double COOL_MARGIN_KELVIN = 0.5;

    /** Longer gaps are not counted as spent like their end: crystal model, section 4. */
    private static final Duration BRIDGED = Duration.ofMinutes(2);

    /** Shorter is no pouring temperature. Own choice. */
    private static final Duration LEAST_POURED = Duration.ofMinutes(1);

    public TraitCount {
        Objects.requireNonNull(phase, "phase");
        Objects.requireNonNull(lowestCelsius, "lowestCelsius");
        Objects.requireNonNull(cool, "cool");
        Objects.requireNonNull(poured, "poured");
        Objects.requireNonNull(seeded, "seeded");
        Objects.requireNonNull(lastAt, "lastAt");
    }

    /** The traits after one more state of the engine. */
    public TraitCount with(Recipe recipe, Recorded recorded, State after) {
        Phase now = after.batch().phase();
        boolean anew = isCool(now) && !isCool(phase) && phase == Phase.MELT;
        TraitCount here = anew
                ? new TraitCount(now, OptionalDouble.empty(), Duration.ZERO, Duration.ZERO, 0, Optional.empty(), lastAt)
                : new TraitCount(now, lowestCelsius, cool, poured, pouredKelvinSeconds, seeded, lastAt);
        here = here.acted(recorded);
        Optional<Estimate> news = after.estimate()
                .filter(Estimate::isUsable)
                .filter(e -> after.probe() == ProbePlace.IN_THE_CHOCOLATE)
                .filter(e -> lastAt.filter(at -> !at.isBefore(e.at())).isEmpty());
        return news.isPresent() ? here.read(recipe, news.get()) : here;
    }

    private TraitCount acted(Recorded recorded) {
        if (recorded.input() instanceof SeedAdded) return seeded(Optional.of(recorded.sequence()));
        boolean takenBack = recorded.input() instanceof Undone undone
                && seeded.filter(by -> by == undone.sequence()).isPresent();
        return takenBack ? seeded(Optional.empty()) : this;
    }

    private TraitCount seeded(Optional<Long> by) {
        return new TraitCount(phase, lowestCelsius, cool, poured, pouredKelvinSeconds, by, lastAt);
    }

    private TraitCount read(Recipe recipe, Estimate estimate) {
        double celsius = estimate.chocolateCelsius();
        Duration since = lastAt.map(at -> Duration.between(at, estimate.at())).orElse(Duration.ZERO);
        Duration passed = since.compareTo(BRIDGED) > 0 ? Duration.ZERO : since;
        boolean cools = isCool(phase);
        boolean inRange = cools && celsius <= recipe.cool().range().highCelsius() + COOL_MARGIN_KELVIN;
        boolean pours = phase == Phase.WORK;
        return new TraitCount(
                phase,
                cools ? OptionalDouble.of(Math.min(celsius, lowestCelsius.orElse(celsius))) : lowestCelsius,
                inRange ? cool.plus(passed) : cool,
                pours ? poured.plus(passed) : poured,
                pours ? pouredKelvinSeconds + celsius * passed.toMillis() / 1000.0 : pouredKelvinSeconds,
                seeded,
                Optional.of(estimate.at()));
    }

    /**
     * What is known at the end.
     *
     * @param setup whether seed was planned: where it was and nobody said that it went in, nobody knows
     */
    public BatchTraits traits(Setup setup) {
        BatchTraits traits = BatchTraits.NONE.with(Trait.LOWEST, lowestCelsius);
        if (lowestCelsius.isPresent()) traits = traits.with(Trait.COOL_MINUTES, cool.toMillis() / 60_000.0);
        if (poured.compareTo(LEAST_POURED) >= 0)
            traits = traits.with(Trait.POURING, pouredKelvinSeconds / (poured.toMillis() / 1000.0));
        boolean planned = setup.seedGrams().orElse(0) > 0;
        if (seeded.isPresent()) return traits.with(Trait.SEED, 1);
        return planned ? traits : traits.with(Trait.SEED, 0);
    }

    private static boolean isCool(Phase phase) {
        return phase == Phase.COOL || phase == Phase.SEED;
    }
}
