package fifthform.monitor.looks;

import fifthform.curves.learning.BarLook;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A look as it is kept.
 *
 * @param number its number in its file, from 1; never given twice
 * @param at time of day when it was written down
 * @param look what was seen
 * @param photos paths of pictures, as the maker named them; the pictures stay where they are
 * @param note the maker's own words
 */
public record KeptLook(int number, Instant at, BarLook look, List<String> photos, Optional<String> note) {
    public KeptLook {
        if (number < 1) throw new IllegalArgumentException("number must be 1 or more, was " + number);
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(look, "look");
        photos = List.copyOf(photos);
        Objects.requireNonNull(note, "note");
    }
}
