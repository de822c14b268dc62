package fifthform.curves.cue;

import fifthform.curves.situation.Reason;
import java.time.Instant;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A step that is due.
 *
 * @param since since when
 * @param figure the number in its words, as it stands now: seconds for {@code get-ready}, {@code put-back},
 *     {@code touch-of-warmth}, {@code thickens-soon} and, where a short dip is asked for, {@code crystals-enough};
 *     minutes for {@code stir-on}; K for {@code weak-bath} (by the last dips, or in a minute of a stay); g for {@code seed-now}; °C for the others
 * @param reason why, in figures, as it stands now
 */
public record OpenCue(Instant since, OptionalDouble figure, Reason reason) {
    public OpenCue {
        Objects.requireNonNull(since, "since");
        Objects.requireNonNull(figure, "figure");
        Objects.requireNonNull(reason, "reason");
    }
}
