package fifthform.curves.phase;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Phase;
import java.time.Instant;
import java.util.Objects;

/**
 * Where the bowl stands.
 *
 * @param place where
 * @param since since when
 * @param evidence how it is known
 */
public record Contact(Place place, Instant since, Evidence evidence) {
    public Contact {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(since, "since");
        Objects.requireNonNull(evidence, "evidence");
    }

    /** A batch begins over the hot bath. */
    public static Contact atStart(Instant start) {
        return new Contact(Place.BATH, start, Evidence.ASSUMED);
    }

    /** Where the bowl stands in this phase unless something else shows. */
    public static Place usualPlace(Phase phase) {
        return switch (phase) {
            case MELT, REWARM -> Place.BATH;
            case COOL -> Place.COLD_WATER;
            case SEED, WORK, REST -> Place.TABLE;
        };
    }

    /** Where the bowl goes when it is moved without saying where to: into or out of the water of this phase. */
    public Place otherPlace(Phase phase) {
        if (place != Place.TABLE) return Place.TABLE;
        return phase == Phase.COOL ? Place.COLD_WATER : Place.BATH;
    }

    /** The same bowl at {@code to}; this contact unchanged if it stands there already and no better is known. */
    public Contact movedTo(Place to, Instant at, Evidence how) {
        return to == place && how.compareTo(evidence) <= 0 ? this : new Contact(to, to == place ? since : at, how);
    }
}
