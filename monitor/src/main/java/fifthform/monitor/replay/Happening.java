package fifthform.monitor.replay;

import fifthform.curves.alarm.Priority;
import fifthform.curves.alarm.Side;
import java.util.Objects;
import java.util.Optional;

/**
 * Something on one of the three rows under the trace.
 *
 * @param nanos when, since the session's start
 * @param row which row
 * @param words what, for people
 * @param sign how its mark looks
 * @param stands until when it stood, ns since the start; empty where it was a moment
 */
public record Happening(long nanos, Row row, String words, Sign sign, Optional<Long> stands) {
    /** The three rows. */
    public enum Row {
        /** What the maker did, by key or as the curve shows. */
        DID,
        /** What the maker was told. */
        TOLD,
        /** What was wrong. */
        ALARM
    }

    /** Shape of a mark: what kind of thing it is can be seen without any colour. */
    public enum Sign {
        ACT,
        /** Not said by the maker: seen in the curve. */
        SEEN,
        CUE,
        WORD,
        ADVISE,
        PROMPT_HOT,
        PROMPT_COLD,
        PROMPT,
        URGENT;

        static Sign of(Priority priority, Side side) {
            return switch (priority) {
                case URGENT -> URGENT;
                case ADVISE -> ADVISE;
                case PROMPT ->
                    switch (side) {
                        case TOO_HOT -> PROMPT_HOT;
                        case TOO_COLD -> PROMPT_COLD;
                        case NEITHER -> PROMPT;
                    };
            };
        }
    }

    public Happening {
        Objects.requireNonNull(row, "row");
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(sign, "sign");
        Objects.requireNonNull(stands, "stands");
    }
}
