package fifthform.probe.link;

import java.time.Duration;
import java.util.Objects;

/** Bytes that arrived together, and when, counted from the tape's beginning; negative times are refused by the parser. */
final class TapePiece {
    private final Duration after;
    private final byte[] bytes;

    /** Takes over {@code bytes}. */
    TapePiece(Duration after, byte[] bytes) {
        this.after = Objects.requireNonNull(after, "after");
        this.bytes = Objects.requireNonNull(bytes, "bytes");
    }

    Duration after() {
        return after;
    }

    /** A copy, so that each opening of the tape hands out its own. */
    byte[] bytes() {
        return bytes.clone();
    }
}
