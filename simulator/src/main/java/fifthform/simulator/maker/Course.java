package fifthform.simulator.maker;

import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * A batch in somebody's hands: which stage, and where the bowl stands.
 *
 * @param stage how far it is
 * @param stageSince since when; empty before anything was done
 * @param spot where the bowl stands
 * @param movedAt when it was last moved
 * @param backOnTableAt when a visit to some water or cloth ends
 */
record Course(
        Stage stage,
        Optional<Instant> stageSince,
        Spot spot,
        Optional<Instant> movedAt,
        Optional<Instant> backOnTableAt) {
    /** Nothing done yet; the bowl stands on the table. */
    static final Course BEFORE =
            new Course(Stage.MELTING, Optional.empty(), Spot.TABLE, Optional.empty(), Optional.empty());

    Course {
        Objects.requireNonNull(stage, "stage");
        Objects.requireNonNull(stageSince, "stageSince");
        Objects.requireNonNull(spot, "spot");
        Objects.requireNonNull(movedAt, "movedAt");
        Objects.requireNonNull(backOnTableAt, "backOnTableAt");
    }

    /** How long the present stage has lasted. */
    Duration inStageFor(Instant at) {
        return Duration.between(stageSince.orElse(at), at);
    }

    /** Begins this stage, or goes back to its beginning without a new patience: the bowl goes where it belongs. */
    Course begin(Instant at, Stage next) {
        Optional<Instant> since = stage == next && stageSince.isPresent() ? stageSince : Optional.of(at);
        return new Course(next, since, spot, movedAt, Optional.empty()).moved(at, next.spot());
    }

    /** Puts the bowl somewhere for a while; then it stands on the table again. The stage stays. */
    Course visit(Instant at, Spot visited, Duration time) {
        return new Course(stage, stageSince, spot, movedAt, Optional.of(at.plus(time))).moved(at, visited);
    }

    /** Ends a visit at once. */
    Course backOnTable(Instant at) {
        return new Course(stage, stageSince, spot, movedAt, Optional.empty()).moved(at, Spot.TABLE);
    }

    /** Ends a visit whose time is over. */
    Course visitOver(Instant at) {
        return backOnTableAt.isPresent() && !at.isBefore(backOnTableAt.get()) ? backOnTable(at) : this;
    }

    private Course moved(Instant at, Spot to) {
        return to == spot ? this : new Course(stage, stageSince, to, Optional.of(at), backOnTableAt);
    }
}
