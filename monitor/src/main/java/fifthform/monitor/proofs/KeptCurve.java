package fifthform.monitor.proofs;

import fifthform.curves.proof.Bend;
import fifthform.curves.proof.TemperClass;
import java.time.Instant;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * One sample that was judged.
 *
 * @param at when
 * @param proof name of the recording
 * @param session name of the session it belongs to
 * @param told what the maker was told
 * @param bend where it bent
 * @param mark what the bars were like afterwards
 */
public record KeptCurve(
        Instant at, String proof, Optional<String> session, TemperClass told, Optional<Bend> bend, Mark mark) {
    /** How the bars of that batch turned out, a day and a week later. */
    public enum Mark {
        NONE,
        GOOD,
        BAD;

        /** The word in files and answers. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public KeptCurve {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(proof, "proof");
        Objects.requireNonNull(session, "session");
        Objects.requireNonNull(told, "told");
        Objects.requireNonNull(bend, "bend");
        Objects.requireNonNull(mark, "mark");
    }

    KeptCurve marked(Mark other) {
        return new KeptCurve(at, proof, session, told, bend, other);
    }
}
