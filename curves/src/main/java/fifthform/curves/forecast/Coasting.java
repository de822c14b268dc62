package fifthform.curves.forecast;

import fifthform.curves.bowlcheck.BowlWatch;
import fifthform.curves.check.Require;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Contact;
import fifthform.curves.phase.Evidence;
import fifthform.curves.setup.LearnedCoast;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Window;
import fifthform.curves.signal.Window.Point;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Learning the bowl while the batch runs: every lift whose turning point is seen says how far this bowl coasts.
 *
 * @param coast what is known of the bowl
 * @param lift a lift whose turning point is awaited
 * @param lastTurn the latest turning point
 * @param lossShare loss to the room as this kitchen shows it, by that of a usual one; seen while the bowl rests
 * @param bowl whether it is the bowl it is said to be
 */
public record Coasting(Coast coast, Optional<Lift> lift, Optional<Turn> lastTurn, double lossShare, BowlWatch bowl) {
    /** Before a rest has shown it: on the small side, since a loss that does not come lets the peak run over. */
    private static final double USUAL_LOSS_SHARE = 0.7;

    private static final double LEAST_LOSS_SHARE = 0.2;
    private static final double MOST_LOSS_SHARE = 2;

    /** A resting bowl's rate is loss and nothing else only some time after the coast. */
    private static final Duration RESTING = Duration.ofSeconds(60);

    /** How fast the loss is learned: two thirds of what is to learn in this time of rest. */
    private static final double LEARN_SECONDS = 90;

    private static final Duration LONGEST = Duration.ofMinutes(5);
    private static final Duration LOOK_BACK = Duration.ofSeconds(30);

    /** A rate the other way round at the moment a lift is seen: something else holds the bowl. */
    private static final double CHANGED_HANDS_KELVIN_PER_MINUTE = 0.2;

    /** What turns sooner was not a lift but a pause in stirring. */
    private static final Duration TEACHING_COAST = Duration.ofSeconds(15);

    /** A mean over these seconds of the curve is hardly moved by noise, and no coast turns within them. */
    private static final Duration STEADY = Duration.ofSeconds(8);

    public Coasting {
        Objects.requireNonNull(coast, "coast");
        Objects.requireNonNull(lift, "lift");
        Objects.requireNonNull(lastTurn, "lastTurn");
        Require.within(lossShare, LEAST_LOSS_SHARE, MOST_LOSS_SHARE, "lossShare");
        Objects.requireNonNull(bowl, "bowl");
    }

    /** What is known before the batch begins. */
    public static Coasting atStart(Setup setup) {
        return new Coasting(
                Coast.before(setup), Optional.empty(), Optional.empty(), USUAL_LOSS_SHARE, BowlWatch.BEGINNING);
    }

    /**
     * The knowledge once the bowl has gone from {@code before} to {@code after} and stands at {@code estimate}.
     *
     * @param bathCelsius what a probe in the water reads
     * @param passed time since the reading before; zero where there is no new reading
     */
    public Coasting followed(
            Setup setup,
            Contact before,
            Contact after,
            Estimate estimate,
            Window window,
            OptionalDouble bathCelsius,
            Instant now,
            Duration passed) {
        BowlWatch seen = bowl.followed(setup.bowl().answers(), before, after, estimate, window, bathCelsius, now);
        return knowing(seen).moved(setup, before, after, estimate, window, now, passed);
    }

    /** What was taught by another bowl is hardly more than a guess for this one. */
    private Coasting knowing(BowlWatch seen) {
        boolean strange = seen.doubt().isPresent() && bowl.doubt().isEmpty();
        return new Coasting(strange ? coast.ofAnotherBowl() : coast, lift, lastTurn, lossShare, seen);
    }

    private Coasting moved(
            Setup setup,
            Contact before,
            Contact after,
            Estimate estimate,
            Window window,
            Instant now,
            Duration passed) {
        // A bowl that has stood on the table for longer than in the water has not left it: that move was taken back.
        boolean left = before.place() != Place.TABLE
                && after.place() == Place.TABLE
                && !after.since().isBefore(before.since());
        if (left) return new Coasting(coast, begun(before, after, estimate, window), lastTurn, lossShare, bowl);
        if (after.place() != Place.TABLE) return new Coasting(coast, Optional.empty(), lastTurn, lossShare, bowl);
        return lift.map(l -> awaited(
                        l.reaching(estimate.chocolateCelsius(), steady(window, l, estimate)), setup, estimate, now))
                .orElseGet(() -> rested(setup, after, estimate, now, passed));
    }

    /** The rate of a bowl that rests is its loss to the room (and what little heat crystals give). */
    private Coasting rested(Setup setup, Contact contact, Estimate estimate, Instant now, Duration passed) {
        boolean resting = Duration.between(contact.since(), now).compareTo(RESTING) >= 0;
        double usual = RoomLoss.kelvinPerSecond(setup, estimate.chocolateCelsius());
        // Near the temperature of the room there is nothing to see.
        if (!resting || usual < 0.05 / 60) return this;
        double seen = -estimate.rateKelvinPerMinute() / 60 / usual;
        double bounded = Math.min(MOST_LOSS_SHARE, Math.max(LEAST_LOSS_SHARE, seen));
        double seconds = passed.toMillis() / 1000.0;
        double share = -StrictMath.expm1(-seconds / LEARN_SECONDS);
        return new Coasting(coast, lift, lastTurn, lossShare + share * (bounded - lossShare), bowl);
    }

    /** Loss to the room at this temperature, K/s, as this kitchen shows it. */
    public double lossKelvinPerSecond(Setup setup, double chocolateCelsius) {
        return lossShare * RoomLoss.kelvinPerSecond(setup, chocolateCelsius);
    }

    /**
     * What this batch leaves to the next one in the same bowl: what was known before it and every lift since, together.
     * Empty where neither an earlier batch nor this one has seen the bowl coast.
     */
    public Optional<LearnedCoast> learned() {
        return coast.learned();
    }

    /** The maker says that it is the bowl it is said to be. */
    public Coasting confirmed() {
        return new Coasting(coast, lift, lastTurn, lossShare, bowl.confirmed());
    }

    /** What was learned stays; the turning point that was awaited then is awaited again. */
    public Coasting awaitingAs(Coasting earlier) {
        return new Coasting(coast, earlier.lift(), lastTurn, lossShare, bowl);
    }

    private Optional<Lift> begun(Contact before, Contact after, Estimate estimate, Window window) {
        Duration stay = Duration.between(before.since(), after.since());
        Lift lift;
        if (after.evidence() == Evidence.TOLD) {
            lift = new Lift(
                    after.since(),
                    estimate.chocolateCelsius(),
                    estimate.rateKelvinPerMinute(),
                    estimate.rateSigmaKelvinPerMinute(),
                    stay,
                    Evidence.TOLD,
                    estimate.chocolateCelsius(),
                    Stretch.to(after.since(), window),
                    estimate.chocolateCelsius());
        } else {
            Instant from = after.since().minus(LOOK_BACK);
            Optional<Point> fastest =
                    before.place() == Place.BATH ? window.fastestRiseSince(from) : window.fastestFallSince(from);
            if (fastest.isEmpty()) return Optional.empty();
            Point p = window.lastDriven(fastest.get(), from);
            lift = new Lift(
                    p.at(),
                    p.celsius(),
                    p.kelvinPerMinute(),
                    estimate.rateSigmaKelvinPerMinute(),
                    stay,
                    Evidence.INFERRED,
                    p.celsius(),
                    Stretch.to(p.at(), window),
                    p.celsius());
        }
        // A bowl that goes from the bath straight into cold water passes the table unseen and does not coast.
        double rate = estimate.rateKelvinPerMinute();
        boolean coasts = before.place() == Place.BATH
                ? lift.kelvinPerMinute() > 0 && rate > -CHANGED_HANDS_KELVIN_PER_MINUTE
                : lift.kelvinPerMinute() < 0 && rate < CHANGED_HANDS_KELVIN_PER_MINUTE;
        return coasts ? Optional.of(lift) : Optional.empty();
    }

    private Coasting awaited(Lift l, Setup setup, Estimate estimate, Instant now) {
        if (Duration.between(l.at(), now).compareTo(LONGEST) > 0)
            return new Coasting(coast, Optional.empty(), lastTurn, lossShare, bowl);
        double loss = lossKelvinPerSecond(setup, l.celsius());
        double rate = estimate.rateKelvinPerMinute();
        // After heat the room pulls it back over a peak; after cold it may only fade into the slow loss to the room.
        boolean turned = l.isRising() ? rate <= 0 : rate >= -(60 * Math.max(0, loss) + 0.1);
        if (!turned) return new Coasting(coast, Optional.of(l), lastTurn, lossShare, bowl);
        boolean tooSoon = Duration.between(l.at(), now).compareTo(TEACHING_COAST) < 0;
        return new Coasting(
                tooSoon ? coast : taught(l, loss),
                Optional.empty(),
                Optional.of(new Turn(now, l.extremeCelsius(), l)),
                lossShare,
                bowl);
    }

    private Coast taught(Lift l, double loss) {
        return Lesson.of(l, loss)
                .map(lesson -> coast.learned(lesson.coastSeconds(), lesson.logSpread()))
                .orElse(coast);
    }

    /** The mean of the last seconds, of those after the lift. */
    private static double steady(Window window, Lift lift, Estimate estimate) {
        Instant from = estimate.at().minus(STEADY);
        return window.points().stream()
                .filter(p -> !p.at().isBefore(from) && p.at().isAfter(lift.at()))
                .mapToDouble(Point::celsius)
                .average()
                .orElse(estimate.chocolateCelsius());
    }
}
