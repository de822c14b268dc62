package fifthform.curves.contrast;

import fifthform.curves.check.Require;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What is known of a batch's traits; what nobody knows is missing.
 *
 * @param known in the units of {@link Trait}
 */
public record BatchTraits(Map<Trait, Double> known) {
    public static final BatchTraits NONE = new BatchTraits(new EnumMap<>(Trait.class));

    public BatchTraits {
        known.forEach((trait, value) -> Require.finite(value, trait.word()));
        Map<Trait, Double> own = new EnumMap<>(Trait.class);
        own.putAll(known);
        known = Collections.unmodifiableMap(own);
    }

    /** One trait, in its unit or as 0 and 1; empty where nobody knows. */
    public OptionalDouble of(Trait trait) {
        Double value = known.get(trait);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** The same, and this. */
    public BatchTraits with(Trait trait, double value) {
        Map<Trait, Double> more = new EnumMap<>(Trait.class);
        more.putAll(known);
        more.put(trait, value);
        return new BatchTraits(more);
    }

    /** The same, and this where it is known. */
    public BatchTraits with(Trait trait, OptionalDouble value) {
        return value.isPresent() ? with(trait, value.getAsDouble()) : this;
    }
}
