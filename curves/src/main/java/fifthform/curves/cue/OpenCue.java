package fifthform.curves.cue;

import java.time.Instant;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A step that is due.
 *
 * @param since since when
 * @param figure the number in its words, as it stands now: seconds for {@code get-ready} and {@code put-back}, minutes
 *     for {@code stir-on}, °C for the others
 */
public record OpenCue(Instant since, OptionalDouble figure) {
    public OpenCue {
        Objects.requireNonNull(since, "since");
        Objects.requireNonNull(figure, "figure");
    }
}
