package fifthform.curves.recipe;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Targets worked out from a composition, with what they rest on.
 *
 * @param recipe the whole recipe; the source of each value with it
 * @param targets each target with source and rule, in the order of {@link Target}
 * @param warnings what the rule cannot carry, whole sentences; empty where it can carry all
 */
public record WorkedTargets(Recipe recipe, List<Worked> targets, List<String> warnings) {
    public WorkedTargets {
        Objects.requireNonNull(recipe, "recipe");
        targets = List.copyOf(targets);
        warnings = List.copyOf(warnings);
    }

    /**
     * One target.
     *
     * @param target which
     * @param lowCelsius °C
     * @param highCelsius °C; the same where it is one figure
     * @param band how far sources, and the rule's own ±40 %, disagree; empty where there is one choice only
     * @param source where it comes from: prints with what they print, or "common practice", or "own choice"
     * @param why the rule, with the numbers put in
     */
    public record Worked(
            Target target,
            double lowCelsius,
            double highCelsius,
            Optional<CelsiusRange> band,
            String source,
            String why) {
        public Worked {
            Objects.requireNonNull(target, "target");
            Objects.requireNonNull(band, "band");
            Objects.requireNonNull(source, "source");
            Objects.requireNonNull(why, "why");
        }
    }

    /** The target of this name. */
    public Worked target(Target target) {
        return targets.get(target.ordinal());
    }
}
