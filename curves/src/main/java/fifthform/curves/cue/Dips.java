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
 * @param air what touches of warm air showed
 * @param lateSeconds what this bowl still rises after a dip for a unit of pace, s; empty before a peak was seen
 * @param heldSince since when crystals form, whatever the phase was called since; empty before
 * @param begunAt when the way up to the working range was first asked for; empty before
 * @param lookedAt until when the last one was looked at: what a key or the curve said of the bowl before that is known
 */
public record Dips(
        Optional<Dip> dip,
        DipResponse response,
        DipResponse air,
        OptionalDouble lateSeconds,
        Optional<Instant> heldSince,
        Optional<Instant> begunAt,
        Optional<Instant> lookedAt) {
    /** Before the first. */
    static final Dips NONE = new Dips(
            Optional.empty(),
            DipResponse.NONE,
            DipResponse.NONE,
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    public Dips {
        Objects.requireNonNull(dip, "dip");
        Objects.requireNonNull(response, "response");
        Objects.requireNonNull(air, "air");
        Require.within(lateSeconds, 0, 1e4, "lateSeconds");
        Objects.requireNonNull(heldSince, "heldSince");
        Objects.requireNonNull(begunAt, "begunAt");
        Objects.requireNonNull(lookedAt, "lookedAt");
    }

    Dips held(Instant now) {
        return new Dips(dip, response, air, lateSeconds, Optional.of(heldSince.orElse(now)), begunAt, lookedAt);
    }

    Dips with(Dip other) {
        Instant begun = begunAt.orElse(other.askedAt());
        return new Dips(Optional.of(other), response, air, lateSeconds, heldSince, Optional.of(begun), lookedAt);
    }

    /** The dip is over; where it showed something, the response after it. */
    Dips after(DipResponse learned) {
        return new Dips(Optional.empty(), learned, air, lateSeconds, heldSince, begunAt, lookedAt);
    }

    /** A touch of warm air is over; where it showed something, the response after it. */
    Dips afterAir(DipResponse learned) {
        return new Dips(Optional.empty(), response, learned, lateSeconds, heldSince, begunAt, lookedAt);
    }

    /** The same, the last dip looked at until now. */
    Dips looked(Instant now) {
        return new Dips(dip, response, air, lateSeconds, heldSince, begunAt, Optional.of(now));
    }

    /** What was taken for a dip was none: where it was the first, the way up has not begun. */
    Dips without(Dip none) {
        boolean first = begunAt.filter(none.askedAt()::equals).isPresent();
        return new Dips(
                Optional.empty(), response, air, lateSeconds, heldSince, first ? Optional.empty() : begunAt, lookedAt);
    }

    Dips late(double seconds) {
        double before = lateSeconds.orElse(seconds);
        return new Dips(dip, response, air, OptionalDouble.of((before + seconds) / 2), heldSince, begunAt, lookedAt);
    }

    boolean is(Dip.Stage stage) {
        return dip.filter(d -> d.is(stage)).isPresent();
    }

    boolean is(Dip.Stage stage, Dip.Purpose purpose) {
        return dip.filter(d -> d.is(stage) && d.purpose() == purpose).isPresent();
    }
}
