package fifthform.curves.setup;

import fifthform.curves.check.Require;
import fifthform.curves.recipe.Recipe;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * All that is settled when a session starts. It stands whole in the journal's header, so that a replay knows what the
 * engine knew.
 *
 * @param recipe the chocolate
 * @param bowl the bowl and the amount in it
 * @param probes the probes; exactly one has the role {@link Role#BOWL}
 * @param reactionTime from a cue to the hands' act, 0 to 30 s
 * @param bathCelsius planned temperature of the rewarming bath, °C, where the maker said it
 * @param roomCelsius temperature of the kitchen, °C, where the maker said it
 * @param origin real or simulated
 * @param approach how the working range is to be reached
 * @param seedGrams seed the maker means to add while it cools, 0 to 20 000 g; empty where no seeding is planned
 * @param beginning what the batch begins with
 * @param holding how long it is to be held in the working range, and by what; empty where nothing is planned
 */
public record Setup(
        Recipe recipe,
        Bowl bowl,
        List<ProbeSetup> probes,
        Duration reactionTime,
        OptionalDouble bathCelsius,
        OptionalDouble roomCelsius,
        Origin origin,
        Approach approach,
        OptionalDouble seedGrams,
        Beginning beginning,
        Optional<Holding> holding) {
    /** From cue to act, until it is measured. Own choice within the 3.5–4 s that trials used. */
    public static final Duration USUAL_REACTION = Duration.ofMillis(3500);

    public Setup {
        Objects.requireNonNull(recipe, "recipe");
        Objects.requireNonNull(bowl, "bowl");
        probes = List.copyOf(probes);
        // Loops: a set-up is made at every step of the engine.
        int bowls = 0;
        for (ProbeSetup probe : probes) if (probe.role() == Role.BOWL) bowls++;
        if (bowls != 1) throw new IllegalArgumentException("probes must hold one with role BOWL, held " + bowls);
        if (probes.size() > 1 && probes.stream().map(ProbeSetup::id).distinct().count() != probes.size()) {
            throw new IllegalArgumentException("probes must have different ids, were " + probes);
        }
        Require.notNegative(reactionTime, "reactionTime");
        if (reactionTime.compareTo(Duration.ofSeconds(30)) > 0) {
            throw new IllegalArgumentException("reactionTime must be at most 30 s, was " + reactionTime);
        }
        Require.within(bathCelsius, -20, 150, "bathCelsius");
        Require.within(roomCelsius, -20, 60, "roomCelsius");
        Objects.requireNonNull(origin, "origin");
        Objects.requireNonNull(approach, "approach");
        Require.within(seedGrams, 0, 20_000, "seedGrams");
        Objects.requireNonNull(beginning, "beginning");
        Objects.requireNonNull(holding, "holding");
    }

    /** The probe in the chocolate. */
    public ProbeSetup bowlProbe() {
        return withRole(Role.BOWL).orElseThrow();
    }

    /** The first probe with this role. */
    public Optional<ProbeSetup> withRole(Role role) {
        for (ProbeSetup probe : probes) if (probe.role() == role) return Optional.of(probe);
        return Optional.empty();
    }

    /** The probe with this id. */
    public Optional<ProbeSetup> probe(ProbeId id) {
        for (ProbeSetup probe : probes) if (probe.id().equals(id)) return Optional.of(probe);
        return Optional.empty();
    }

    /** The same set-up with quicker or slower hands. */
    public Setup withReactionTime(Duration other) {
        return with(recipe, other, approach, seedGrams, beginning, holding);
    }

    /** The same set-up with another chocolate. */
    public Setup withRecipe(Recipe other) {
        return with(other, reactionTime, approach, seedGrams, beginning, holding);
    }

    /** The same set-up with another way to the working range. */
    public Setup withApproach(Approach other) {
        return with(recipe, reactionTime, other, seedGrams, beginning, holding);
    }

    /** The same set-up with this much seed planned. */
    public Setup withSeedGrams(OptionalDouble other) {
        return with(recipe, reactionTime, approach, other, beginning, holding);
    }

    /** The same set-up of a batch that begins otherwise. */
    public Setup withBeginning(Beginning other) {
        return with(recipe, reactionTime, approach, seedGrams, other, holding);
    }

    /** The same set-up with this hold planned. */
    public Setup withHolding(Optional<Holding> other) {
        return with(recipe, reactionTime, approach, seedGrams, beginning, other);
    }

    private Setup with(
            Recipe otherRecipe,
            Duration otherReaction,
            Approach otherApproach,
            OptionalDouble otherSeed,
            Beginning otherBeginning,
            Optional<Holding> otherHolding) {
        return new Setup(
                otherRecipe,
                bowl,
                probes,
                otherReaction,
                bathCelsius,
                roomCelsius,
                origin,
                otherApproach,
                otherSeed,
                otherBeginning,
                otherHolding);
    }
}
