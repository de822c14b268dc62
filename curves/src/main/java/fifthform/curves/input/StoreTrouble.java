package fifthform.curves.input;

import java.time.Instant;
import java.util.Locale;
import java.util.Objects;

/** How the journal fares, told to the engine so that {@code not-recording} is an alarm like any other. */
public record StoreTrouble(Instant at, What what) implements Input {
    /** What is the matter with the journal. */
    public enum What {
        /** A write failed; readings are kept in memory. */
        CANNOT_WRITE,
        /** Writing is more than five seconds late. */
        BEHIND,
        /** Less than 50 MB are left where the journal is. */
        SPACE_LOW,
        /** All that was kept has been written. */
        WRITES_AGAIN;

        /** The word in files: {@code cannot-write}, … */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    public StoreTrouble {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(what, "what");
    }

    @Override
    public <R> R fold(Cases<R> cases) {
        return cases.storeTrouble(this);
    }
}
