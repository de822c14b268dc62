package fifthform.curves.recipe;

import fifthform.curves.check.Require;
import java.util.List;
import java.util.Objects;

/**
 * A chocolate and how it wants to be tempered.
 *
 * @param id short name for commands and files: lower-case letters, digits, hyphens
 * @param name name for people
 * @param composition what it is made of
 * @param melt melting range and how long it is held there
 * @param cool cool range and how long it is held there so that crystals form
 * @param work working range; its dwell is zero
 * @param meltOut warning and melt-out temperatures
 * @param scorchCelsius highest temperature while melting, °C
 * @param rewarmBathCelsius hottest bath for the rewarm, °C
 * @param basis one line on where the targets come from
 * @param sources the source of each value, in the order of the text
 */
public record Recipe(
        String id,
        String name,
        Composition composition,
        PhaseTarget melt,
        PhaseTarget cool,
        PhaseTarget work,
        MeltOut meltOut,
        double scorchCelsius,
        double rewarmBathCelsius,
        String basis,
        List<Source> sources) {
    public Recipe {
        Objects.requireNonNull(id, "id");
        if (!id.matches("[a-z0-9][a-z0-9-]*")) {
            throw new IllegalArgumentException("id must be lower-case letters, digits and hyphens, was " + id);
        }
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(composition, "composition");
        Objects.requireNonNull(melt, "melt");
        Objects.requireNonNull(cool, "cool");
        Objects.requireNonNull(work, "work");
        Objects.requireNonNull(meltOut, "meltOut");
        Require.within(scorchCelsius, -20, 150, "scorchCelsius");
        Require.within(rewarmBathCelsius, -20, 150, "rewarmBathCelsius");
        Objects.requireNonNull(basis, "basis");
        sources = List.copyOf(sources);
    }
}
