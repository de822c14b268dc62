package fifthform.probe.link;

import java.time.Instant;
import java.util.Objects;

/** Bytes and when the last of them arrived; no bytes means that the link was silent until then. */
public final class Arrival {
    private final Instant at;
    private final byte[] bytes;

    /** Takes over {@code bytes}: the caller must not touch them afterwards. */
    public Arrival(Instant at, byte[] bytes) {
        this.at = Objects.requireNonNull(at, "at");
        this.bytes = Objects.requireNonNull(bytes, "bytes");
    }

    /** Nothing came until {@code at}. */
    public static Arrival silence(Instant at) {
        return new Arrival(at, new byte[0]);
    }

    public Instant at() {
        return at;
    }

    /** The bytes themselves, not a copy. */
    public byte[] bytes() {
        return bytes;
    }

    public boolean isSilence() {
        return bytes.length == 0;
    }
}
