package fifthform.curves.cue;

import fifthform.curves.check.Require;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The short dips of a batch.
 *
 * @param dip the one that is asked for, going on or looked at
 * @param response what the others showed
 * @param lateSeconds what this bowl still rises after a dip for a unit of pace, s; empty before a peak was seen
 * @param begunAt when the way up to the working range was first asked for; empty before
 */
public record Dips(Optional<Dip> dip, DipResponse response, OptionalDouble lateSeconds, Optional<Instant> begunAt) {
    /** Before the first. */
    static final Dips NONE = new Dips(Optional.empty(), DipResponse.NONE, OptionalDouble.empty(), Optional.empty());

    public Dips {
        Objects.requireNonNull(dip, "dip");
        Objects.requireNonNull(response, "response");
        Require.within(lateSeconds, 0, 1e4, "lateSeconds");
        Objects.requireNonNull(begunAt, "begunAt");
    }

    Dips with(Dip other) {
        return new Dips(Optional.of(other), response, lateSeconds, Optional.of(begunAt.orElse(other.askedAt())));
    }

    /** The dip is over; where it showed something, the response after it. */
    Dips after(DipResponse learned) {
        return new Dips(Optional.empty(), learned, lateSeconds, begunAt);
    }

    Dips late(double seconds) {
        double before = lateSeconds.orElse(seconds);
        return new Dips(dip, response, OptionalDouble.of((before + seconds) / 2), begunAt);
    }

    boolean is(Dip.Stage stage) {
        return dip.filter(d -> d.is(stage)).isPresent();
    }

    boolean is(Dip.Stage stage, Dip.Purpose purpose) {
        return dip.filter(d -> d.is(stage) && d.purpose() == purpose).isPresent();
    }
}
