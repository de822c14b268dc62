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
 * @param airUntil until when warm air is blown; empty before any was
 * @param boxTurnedKelvin how far the warm box has been turned up, K
 * @param bathWarmedKelvin how much warmer the water of the rewarm has been made in all, K
 */
record Course(
        Stage stage,
        Optional<Instant> stageSince,
        Spot spot,
        Optional<Instant> movedAt,
        Optional<Instant> backOnTableAt,
        Optional<Instant> airUntil,
        double boxTurnedKelvin,
        double bathWarmedKelvin) {
    /** Nothing done yet; the bowl stands on the table. */
    static final Course BEFORE = new Course(
            Stage.MELTING, Optional.empty(), Spot.TABLE, Optional.empty(), Optional.empty(), Optional.empty(), 0, 0);

    Course {
        Objects.requireNonNull(stage, "stage");
        Objects.requireNonNull(stageSince, "stageSince");
        Objects.requireNonNull(spot, "spot");
        Objects.requireNonNull(movedAt, "movedAt");
        Objects.requireNonNull(backOnTableAt, "backOnTableAt");
        Objects.requireNonNull(airUntil, "airUntil");
    }

    /** The same with warm air until then. */
    Course blowing(Instant until) {
        return new Course(
                stage, stageSince, spot, movedAt, backOnTableAt, Optional.of(until), boxTurnedKelvin, bathWarmedKelvin);
    }

    boolean isBlowing(Instant at) {
        return airUntil.filter(at::isBefore).isPresent();
    }

    /** The same with the box warmer by so much, K. */
    Course boxTurned(double kelvin) {
        return new Course(
                stage, stageSince, spot, movedAt, backOnTableAt, airUntil, boxTurnedKelvin + kelvin, bathWarmedKelvin);
    }

    /** The same with warmer water for the rewarm, K, and the patience of somebody who has just seen to it. */
    Course bathWarmed(Instant at, double kelvin) {
        return new Course(
                stage,
                Optional.of(at),
                spot,
                movedAt,
                backOnTableAt,
                airUntil,
                boxTurnedKelvin,
                bathWarmedKelvin + kelvin);
    }

    /** How long the present stage has lasted. */
    Duration inStageFor(Instant at) {
        return Duration.between(stageSince.orElse(at), at);
    }

    /** Begins this stage, or goes back to its beginning without a new patience: the bowl goes where it belongs. */
    Course begin(Instant at, Stage next) {
        Optional<Instant> since = stage == next && stageSince.isPresent() ? stageSince : Optional.of(at);
        return new Course(next, since, spot, movedAt, Optional.empty(), airUntil, boxTurnedKelvin, bathWarmedKelvin)
                .moved(at, next.spot());
    }

    /** Puts the bowl somewhere for a while; then it stands on the table again. The stage stays. */
    Course visit(Instant at, Spot visited, Duration time) {
        return new Course(
                        stage,
                        stageSince,
                        spot,
                        movedAt,
                        Optional.of(at.plus(time)),
                        airUntil,
                        boxTurnedKelvin,
                        bathWarmedKelvin)
                .moved(at, visited);
    }

    /** Ends a visit at once. */
    Course backOnTable(Instant at) {
        return new Course(
                        stage, stageSince, spot, movedAt, Optional.empty(), airUntil, boxTurnedKelvin, bathWarmedKelvin)
                .moved(at, Spot.TABLE);
    }

    /** Ends a visit whose time is over. */
    Course visitOver(Instant at) {
        return backOnTableAt.isPresent() && !at.isBefore(backOnTableAt.get()) ? backOnTable(at) : this;
    }

    /** The same where the bowl stands elsewhere, and has since it was moved. */
    Course standingAt(Spot other) {
        return new Course(
                stage, stageSince, other, movedAt, backOnTableAt, airUntil, boxTurnedKelvin, bathWarmedKelvin);
    }

    private Course moved(Instant at, Spot to) {
        return to == spot
                ? this
                : new Course(
                        stage,
                        stageSince,
                        to,
                        Optional.of(at),
                        backOnTableAt,
                        airUntil,
                        boxTurnedKelvin,
                        bathWarmedKelvin);
    }
}
