package fifthform.simulator.alarms;

import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Set;

/**
 * Which phase the batch is in, from where the bowl really stands and how warm it really is. Where the chocolate lies between
 * two phases both count, and for {@link #GRACE} after a change either of the old and the new.
 */
final class TruePhase {
    /** As the design measures it. */
    static final Duration GRACE = Duration.ofSeconds(20);

    /** So long after the bowl has left the warm water it still turns: rewarm and work look the same. Own choice. */
    private static final Duration COASTS = Duration.ofSeconds(60);

    private static final double STILL_COOLING_KELVIN = 0.5;

    private final Recipe recipe;
    private Part part = Part.MELTING;
    private Spot spot = Spot.TABLE;
    private Instant movedAt = Instant.MIN;
    private boolean liftedFromWarm;
    private Set<Phase> accepted = EnumSet.of(Phase.MELT);
    private Set<Phase> before = EnumSet.of(Phase.MELT);
    private Instant acceptedSince = Instant.MIN;

    /** What the hands are at. */
    private enum Part {
        MELTING,
        COOLING,
        WARMING
    }

    TruePhase(Recipe recipe) {
        this.recipe = recipe;
    }

    void saw(Instant at, Spot now, double shownCelsius) {
        if (now != spot) moved(at, now);
        Set<Phase> accept = accept(at, shownCelsius);
        if (accept.equals(accepted)) return;
        before = accepted;
        accepted = accept;
        acceptedSince = at;
    }

    private void moved(Instant at, Spot now) {
        if (now == Spot.HOT_BATH) part = Part.MELTING;
        else if (spot == Spot.HOT_BATH || now == Spot.COLD_WATER || now == Spot.FRIDGE) part = Part.COOLING;
        else if (now == Spot.WARM_BATH && part != Part.WARMING) {
            part = Part.WARMING;
            liftedFromWarm = false;
        }
        if (spot == Spot.WARM_BATH) liftedFromWarm = true;
        spot = now;
        movedAt = at;
    }

    private Set<Phase> accept(Instant at, double shownCelsius) {
        double coolHigh = recipe.cool().range().highCelsius();
        return switch (part) {
            case MELTING -> EnumSet.of(Phase.MELT);
            case COOLING -> {
                if (shownCelsius > coolHigh + STILL_COOLING_KELVIN) {
                    yield spot == Spot.COLD_WATER ? EnumSet.of(Phase.COOL) : EnumSet.of(Phase.COOL, Phase.SEED);
                }
                yield spot == Spot.COLD_WATER ? EnumSet.of(Phase.COOL, Phase.SEED) : EnumSet.of(Phase.SEED);
            }
            case WARMING -> {
                boolean coasting = Duration.between(movedAt, at).compareTo(COASTS) < 0;
                boolean low = shownCelsius < recipe.work().range().lowCelsius();
                if (!liftedFromWarm) yield EnumSet.of(Phase.REWARM);
                yield spot == Spot.WARM_BATH || coasting || low
                        ? EnumSet.of(Phase.REWARM, Phase.WORK)
                        : EnumSet.of(Phase.WORK);
            }
        };
    }

    boolean isRight(Phase said, Instant at) {
        boolean grace = Duration.between(acceptedSince, at).compareTo(GRACE) <= 0;
        return accepted.contains(said) || grace && before.contains(said);
    }

    /** Whether the chocolate has been melted, taken off the heat, and is not being melted again. */
    boolean leftTheMelt() {
        return part != Part.MELTING;
    }

    /** Whether it has been over the warm water and left it. */
    boolean isWork() {
        return part == Part.WARMING && liftedFromWarm;
    }
}
