package fifthform.monitor.store;

import fifthform.curves.input.Recorded;
import fifthform.monitor.json.JsonObject;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/** One thing that a session tells, in the order of its lines. */
public sealed interface Entry {
    /** The input, where this is one. */
    default Optional<Recorded> input() {
        return Optional.empty();
    }

    /** What the engine was given. */
    record Given(Recorded recorded) implements Entry {
        public Given {
            Objects.requireNonNull(recorded, "recorded");
        }

        @Override
        public Optional<Recorded> input() {
            return Optional.of(recorded);
        }
    }

    /**
     * What the maker was told then.
     *
     * @param sequence of the input that led to it
     * @param json the event's line, to be compared with what {@link EventCodec#write} says now
     */
    record Told(long sequence, String json) implements Entry {
        public Told {
            Objects.requireNonNull(json, "json");
        }
    }

    /** A remark of the program, for example that it was resumed. */
    record Note(Instant at, String about, String text) implements Entry {
        public Note {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(about, "about");
            Objects.requireNonNull(text, "text");
        }
    }

    /** The session was closed in an orderly way; what it summed up. */
    record Closing(JsonObject summary) implements Entry {
        public Closing {
            Objects.requireNonNull(summary, "summary");
        }
    }

    /** A line that only a newer program understands. */
    record Unknown(String kind, String json) implements Entry {
        public Unknown {
            Objects.requireNonNull(kind, "kind");
            Objects.requireNonNull(json, "json");
        }
    }
}
