package fifthform.simulator.rivals;

import fifthform.curves.recipe.CelsiusRange;
import fifthform.simulator.bench.Moment;
import fifthform.simulator.rivals.CueWatch.Told;
import fifthform.simulator.rivals.LandingWatch.Landing;
import fifthform.simulator.rivals.SteadyWatch.Steady;
import fifthform.simulator.rivals.WarningWatch.Warned;
import fifthform.simulator.scenario.ProbeScale;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One batch with one rival, and what it showed.
 *
 * @param kitchen where
 * @param last the last moment
 * @param landing where the rewarm came to
 * @param cue what was said at the cue; empty where none came
 * @param rows what was said every few seconds before it
 * @param troughErrorKelvin forecast less truth of the turning point after the cold water, K
 * @param placeFraction how much of the time it knew where the bowl stood; not a number where it never said
 * @param phaseFraction the same of the phase
 * @param warned of a bowl that passed melt-out
 * @param steady false words
 */
record Tried(
        JudgedKitchen kitchen,
        Moment last,
        Landing landing,
        Optional<Told> cue,
        List<Told> rows,
        OptionalDouble troughErrorKelvin,
        double placeFraction,
        double phaseFraction,
        Optional<Warned> warned,
        Steady steady) {
    /** So far above the range counts as over. */
    private static final double OVER_KELVIN = 0.3;

    Tried {
        Objects.requireNonNull(kitchen, "kitchen");
        Objects.requireNonNull(last, "last");
        Objects.requireNonNull(landing, "landing");
        Objects.requireNonNull(cue, "cue");
        rows = List.copyOf(rows);
        Objects.requireNonNull(troughErrorKelvin, "troughErrorKelvin");
        Objects.requireNonNull(warned, "warned");
        Objects.requireNonNull(steady, "steady");
    }

    /** Where a rewarm lay. */
    enum Place {
        SHORT,
        IN_RANGE,
        OVER
    }

    /** By the probe at rest, the whole rewarm: its last turn must be in the range and nothing before it over. */
    Place shown() {
        ProbeScale scale = kitchen.scale();
        return place(scale.shows(landing.highestCelsius()), scale.shows(landing.settledCelsius()));
    }

    /** By the true temperature. */
    Place inTruth() {
        return place(landing.highestCelsius(), landing.settledCelsius());
    }

    private Place place(double highest, double settled) {
        if (landing.lifts() == 0) return Place.SHORT; // never came to a rewarm
        CelsiusRange range = kitchen.recipe().work().range();
        if (highest > range.highCelsius() + OVER_KELVIN) return Place.OVER;
        return settled < range.lowCelsius() ? Place.SHORT : Place.IN_RANGE;
    }

    /** The highest in the readings' scale less the middle of the range, K; not a number where there was no rewarm. */
    double besideMiddleKelvin() {
        return kitchen.scale().shows(landing.highestCelsius())
                - kitchen.recipe().work().range().midCelsius();
    }
}
