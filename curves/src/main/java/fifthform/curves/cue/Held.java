package fifthform.curves.cue;

import fifthform.curves.check.Require;
import fifthform.curves.recipe.Phase;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * The planned hold in the working range so far.
 *
 * @param since when it began, as the range was said to be reached; empty before
 * @param readAt the last reading that was counted
 * @param watched time that was seen since
 * @param inside time in the working range of it
 * @param box the warm box, as its drift shows it
 * @param fluidAskedAt when it was last asked to be kept fluid
 */
public record Held(
        Optional<Instant> since,
        Optional<Instant> readAt,
        Duration watched,
        Duration inside,
        BoxDrift box,
        Optional<Instant> fluidAskedAt) {
    /** Nothing is held. */
    static final Held NOT_YET = new Held(
            Optional.empty(), Optional.empty(), Duration.ZERO, Duration.ZERO, BoxDrift.NOT_YET, Optional.empty());

    /** Between two readings no more counts as spent like the second of them. */
    private static final Duration LONGEST_STEP = Duration.ofSeconds(5);

    public Held {
        Objects.requireNonNull(since, "since");
        Objects.requireNonNull(readAt, "readAt");
        Require.notNegative(watched, "watched");
        Require.notNegative(inside, "inside");
        Objects.requireNonNull(box, "box");
        Objects.requireNonNull(fluidAskedAt, "fluidAskedAt");
    }

    /** How long it has been held. */
    public Duration time(Instant now) {
        return since.map(from -> Duration.between(from, now)).orElse(Duration.ZERO);
    }

    /** Share of the time that was seen in which it was in the working range, 0 to 1; 1 before anything was seen. */
    public double insideFraction() {
        return watched.isZero() ? 1 : (double) inside.toMillis() / watched.toMillis();
    }

    /**
     * After a look.
     *
     * @param reachedAt when the range was said to be reached, where it was
     */
    Held after(Look look, Optional<Instant> reachedAt) {
        if (look.situation().setup().holding().isEmpty() || reachedAt.isEmpty()) return NOT_YET;
        if (since.isEmpty()) {
            return new Held(reachedAt, Optional.of(look.readingAt()), watched, inside, box.seen(look), fluidAskedAt);
        }
        boolean asks = look.due().containsKey(CueId.KEEP_FLUID)
                && look.before().openSince(CueId.KEEP_FLUID).isEmpty();
        Optional<Instant> asked = asks ? Optional.of(look.situation().now()) : fluidAskedAt;
        if (look.readingAt().equals(readAt.orElseThrow())) {
            return asked == fluidAskedAt ? this : new Held(since, readAt, watched, inside, box, asked);
        }
        Duration passed = Duration.between(readAt.orElseThrow(), look.readingAt());
        Duration counted = passed.compareTo(LONGEST_STEP) > 0 ? LONGEST_STEP : passed;
        boolean in = look.situation().recipe().work().range().contains(look.celsius());
        BoxDrift drift = look.phase() == Phase.WORK ? box.seen(look) : box;
        return new Held(
                since,
                Optional.of(look.readingAt()),
                watched.plus(counted),
                in ? inside.plus(counted) : inside,
                drift,
                asked);
    }
}
