package fifthform.curves.whatif;

import fifthform.curves.crystal.SeedWord;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/** What is said of the seed from a moment on; nothing where it is empty. */
record Word(Instant at, Optional<SeedWord> word) {
    Word {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(word, "word");
    }
}
