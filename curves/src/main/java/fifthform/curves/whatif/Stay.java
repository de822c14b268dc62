package fifthform.curves.whatif;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Evidence;
import fifthform.curves.recipe.Phase;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

/**
 * The bowl in one place.
 *
 * @param place where
 * @param from since when
 * @param to when it left; the last that is known where it has not
 * @param evidence how it is known that it came there
 * @param phase the phase when it left
 * @param celsius the chocolate when it left, °C
 * @param crystals the crystals when it came, and every few seconds before it left, oldest first; none while it melts
 */
record Stay(
        Place place, Instant from, Instant to, Evidence evidence, Phase phase, double celsius, List<Kept> crystals) {
    Stay {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(evidence, "evidence");
        Objects.requireNonNull(phase, "phase");
        crystals = List.copyOf(crystals);
    }
}
