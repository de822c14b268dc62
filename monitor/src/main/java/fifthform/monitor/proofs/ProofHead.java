package fifthform.monitor.proofs;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * First line of a recorded proof.
 *
 * @param name its file's name without the ending
 * @param start when the recording began
 * @param kind what was tried
 * @param origin {@code real}, {@code simulated} or {@code recorded}: simulated ones must never pass for real
 * @param chocolate the recipe's id
 * @param fatFraction fat over chocolate
 * @param milkFatFraction milk fat over all fat
 * @param cup the cup's id; empty for a smear
 * @param session name of the session it belongs to
 */
public record ProofHead(
        String name,
        Instant start,
        Kind kind,
        String origin,
        String chocolate,
        double fatFraction,
        double milkFatFraction,
        Optional<String> cup,
        Optional<String> session) {
    /** What was tried. */
    public enum Kind {
        /** A sample from the bowl in ice water. */
        SAMPLE("sample"),
        /** Melted chocolate in the cup, to learn how it cools. */
        MELTED("melted"),
        /** A film on a knife. */
        SMEAR("smear");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word in files. */
        public String word() {
            return word;
        }
    }

    public ProofHead {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(origin, "origin");
        Objects.requireNonNull(chocolate, "chocolate");
        Objects.requireNonNull(cup, "cup");
        Objects.requireNonNull(session, "session");
    }
}
