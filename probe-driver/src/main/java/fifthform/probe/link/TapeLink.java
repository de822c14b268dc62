package fifthform.probe.link;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Hands on recorded bytes without waiting; pacing them is somebody else's task. */
final class TapeLink implements ByteLink {
    /** What is known about the time between two pieces. */
    enum Between {
        /** Nothing came: handed on as silences, so that a recorded gap is noticed as it was then. */
        SILENT,
        /** The times were made up from an interval, so that nothing can be said. */
        UNKNOWN
    }

    /** As the serial port's read timeout. */
    private static final Duration SILENCE = Duration.ofMillis(200);

    private final String place;
    private final Instant start;
    private final List<TapePiece> pieces;
    private final Between between;
    private int next;
    private Instant now;
    private volatile boolean closed;

    TapeLink(String place, Instant start, List<TapePiece> pieces, Between between) {
        this.place = place;
        this.start = start;
        this.pieces = pieces;
        this.between = between;
        this.now = start;
    }

    @Override
    public Optional<Arrival> read() throws LinkException {
        if (closed) throw PortTrouble.closed(place);
        if (next == pieces.size()) return Optional.empty();
        TapePiece piece = pieces.get(next);
        Instant due = start.plus(piece.after());
        Instant silentUntil = now.plus(SILENCE);
        if (between == Between.SILENT && silentUntil.isBefore(due)) {
            now = silentUntil;
            return Optional.of(Arrival.silence(now));
        }
        next++;
        now = due;
        return Optional.of(new Arrival(due, piece.bytes()));
    }

    /** A recording cannot be asked: what was sent then has already been answered. */
    @Override
    public void write(byte[] bytes) throws LinkException {
        if (closed) throw PortTrouble.closed(place);
    }

    @Override
    public void close() {
        closed = true;
    }
}
