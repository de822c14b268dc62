package fifthform.curves.probecheck;

import fifthform.curves.probecheck.CheckEvent.GivenUp;
import fifthform.curves.probecheck.CheckEvent.Objected;
import fifthform.curves.probecheck.CheckEvent.StageReached;
import fifthform.curves.probecheck.CheckEvent.Taken;
import fifthform.curves.probecheck.CheckInput.Enter;
import fifthform.curves.probecheck.CheckInput.NoReading;
import fifthform.curves.probecheck.CheckInput.Passed;
import fifthform.curves.probecheck.CheckInput.Reading;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One point of a check, from the instructions to the value: a pure function of state and input. It begins by itself when
 * the reading comes near, and takes the point by itself when it is steady, so that wet hands need touch nothing.
 *
 * @param target what is to be reached
 * @param stage how far it is
 * @param begun time of the first input
 * @param stageSince since when it is in this stage
 * @param heard when the last reading came
 * @param window the newest readings; while {@link Stage#STEADY}, all since then
 * @param way how far the reading has been seen to travel near the point
 * @param objection what keeps it from being taken
 * @param objectionSince since when
 * @param point the value, once taken
 */
public record PointCheck(
        Target target,
        Stage stage,
        Optional<Instant> begun,
        Instant stageSince,
        Optional<Instant> heard,
        Steadiness window,
        Travel way,
        Optional<Objection> objection,
        Instant objectionSince,
        Optional<Point> point) {
    /** How far a point is. */
    public enum Stage {
        /** The maker makes ready. */
        PREPARE,
        /** The tip takes on the temperature of the water. */
        SETTLE,
        /** It is steady and is averaged. */
        STEADY,
        TAKEN,
        GIVEN_UP
    }

    /** What came of one input. */
    public record Step(PointCheck after, List<CheckEvent> events) {
        public Step {
            Objects.requireNonNull(after, "after");
            events = List.copyOf(events);
        }
    }

    /** Nearer than this the tip is on its way into the water; own choice. */
    static final double NEAR_KELVIN = 15;
    /** Further than this is no point of water, and more than any working probe is off; own choice. */
    static final double FAR_KELVIN = 5;

    /** Longer than three time constants of a tip in water, so that a slope shows; own choice. */
    private static final Duration LOOK = Duration.ofSeconds(15);

    private static final Duration AVERAGE = Duration.ofSeconds(20);
    private static final Duration AVERAGE_AT_ENTER = Duration.ofSeconds(10);
    private static final int FEWEST = 10;
    private static final Duration SILENCE = Duration.ofSeconds(8);
    private static final Duration PATIENCE = Duration.ofMinutes(3);
    private static final Duration LONGEST = Duration.ofMinutes(30);

    public PointCheck {
        Objects.requireNonNull(target, "target");
        Objects.requireNonNull(stage, "stage");
        Objects.requireNonNull(begun, "begun");
        Objects.requireNonNull(stageSince, "stageSince");
        Objects.requireNonNull(heard, "heard");
        Objects.requireNonNull(window, "window");
        Objects.requireNonNull(way, "way");
        Objects.requireNonNull(objection, "objection");
        Objects.requireNonNull(objectionSince, "objectionSince");
        Objects.requireNonNull(point, "point");
    }

    /** A check of this point before anything has happened. */
    public static PointCheck of(Target target) {
        return new PointCheck(
                target,
                Stage.PREPARE,
                Optional.empty(),
                Instant.MIN,
                Optional.empty(),
                Steadiness.NOTHING,
                Travel.NONE,
                Optional.empty(),
                Instant.MIN,
                Optional.empty());
    }

    /** Whether it is taken or given up. */
    public boolean isOver() {
        return stage == Stage.TAKEN || stage == Stage.GIVEN_UP;
    }

    /** The check after {@code input}; nothing happens any more once it is over. */
    public Step next(CheckInput input) {
        if (isOver()) return new Step(this, List.of());
        Instant at = input.at();
        PointCheck told = begun.isPresent()
                ? this
                : draft().begun(at).stage(Stage.PREPARE, at).done();
        PointCheck after = input.fold(told.cases()).judged(at);
        return new Step(after, told.changes(after, at));
    }

    /** The readings have ended, so the point cannot be taken any more. */
    public Step ended(Instant at) {
        if (isOver()) return new Step(this, List.of());
        Objection why = objection.orElse(heard.isEmpty() ? Objection.NO_READING : Objection.NOT_IN);
        PointCheck after = draft().objection(Optional.of(why), at)
                .stage(Stage.GIVEN_UP, at)
                .done();
        return new Step(after, changes(after, at));
    }

    private CheckInput.Cases<PointCheck> cases() {
        return new CheckInput.Cases<>() {
            @Override
            public PointCheck reading(Reading reading) {
                return heard(reading);
            }

            @Override
            public PointCheck noReading(NoReading noReading) {
                return PointCheck.this;
            }

            @Override
            public PointCheck passed(Passed passed) {
                return PointCheck.this;
            }

            @Override
            public PointCheck enter(Enter enter) {
                return entered(enter.at());
            }
        };
    }

    private PointCheck heard(Reading reading) {
        Travel seen = way.with(reading.celsius() - target.trueCelsius());
        Steadiness more = window.with(reading);
        if (stage != Stage.STEADY) more = more.newest(LOOK, FEWEST);
        PointCheck with = draft().heard(reading.at()).window(more).way(seen).done();
        boolean near = Math.abs(reading.celsius() - target.trueCelsius()) <= NEAR_KELVIN;
        return stage == Stage.PREPARE && near ? with.settling(reading.at()) : with;
    }

    private PointCheck entered(Instant at) {
        if (stage == Stage.PREPARE) return settling(at);
        boolean enough = window.size() >= FEWEST && window.span().compareTo(AVERAGE_AT_ENTER) >= 0;
        return stage == Stage.STEADY && enough && objection.isEmpty() ? taken(at) : this;
    }

    private PointCheck settling(Instant at) {
        return draft().stage(Stage.SETTLE, at).objection(Optional.empty(), at).done();
    }

    private PointCheck taken(Instant at) {
        Point value = new Point(at, target, window.meanCelsius(), window.meanSigmaKelvin(), window.size());
        return draft().point(value).stage(Stage.TAKEN, at).done();
    }

    /** What the readings up to now mean for the stage. */
    private PointCheck judged(Instant at) {
        if (isOver()) return this;
        Optional<Objection> now = objectionAt(at);
        PointCheck with =
                now.equals(objection) ? this : draft().objection(now, at).done();
        if (with.isTooLate(at)) return with.draft().stage(Stage.GIVEN_UP, at).done();
        if (stage == Stage.SETTLE && now.isEmpty() && hasLooked())
            return with.draft()
                    .stage(Stage.STEADY, at)
                    .window(Steadiness.NOTHING)
                    .done();
        if (stage != Stage.STEADY) return with;
        if (now.isPresent()) return with.draft().stage(Stage.SETTLE, at).done();
        boolean enough = window.size() >= FEWEST && window.span().compareTo(AVERAGE) >= 0;
        return enough ? with.taken(at) : with;
    }

    private boolean hasLooked() {
        return window.size() >= FEWEST && window.span().compareTo(LOOK.minusSeconds(1)) >= 0;
    }

    /** Water takes its time to boil and ice to be fetched; what is plainly wrong is not waited for that long. */
    private boolean isTooLate(Instant at) {
        boolean tooLong = Duration.between(begun.orElse(at), at).compareTo(LONGEST) > 0 && objection.isPresent();
        if (stage == Stage.PREPARE || objection.isEmpty()) return tooLong;
        boolean waits = objection.get() == Objection.STILL_FALLING || objection.get() == Objection.STILL_RISING;
        return tooLong || !waits && Duration.between(objectionSince, at).compareTo(PATIENCE) > 0;
    }

    private Optional<Objection> objectionAt(Instant at) {
        Instant last = heard.orElse(begun.orElse(at));
        if (Duration.between(last, at).compareTo(SILENCE) > 0) return Optional.of(Objection.NO_READING);
        if (stage == Stage.PREPARE) return Optional.of(Objection.NOT_IN);
        // Too few to say more: what stood before stands on, so that it does not flicker.
        if (window.size() < FEWEST) return objection.filter(o -> o != Objection.NO_READING && o != Objection.NOT_IN);
        double slope = window.slopeKelvinPerMinute();
        // Noise looks like a slope now and then; once it is known to be noise, that takes more.
        double sigmas = objection.equals(Optional.of(Objection.RESTLESS)) ? 5 : 2;
        double limit = target.kind().steadyKelvinPerMinute() + sigmas * window.slopeSigmaKelvinPerMinute();
        if (Math.abs(slope) > limit) return Optional.of(slope < 0 ? Objection.STILL_FALLING : Objection.STILL_RISING);
        if (window.scatterKelvin() > target.kind().calmKelvin() + 2 * window.stepSigmaKelvin())
            return Optional.of(Objection.RESTLESS);
        if (window.isFrozen() && !way.isAlive()) return Optional.of(Objection.STUCK);
        boolean far = Math.abs(window.meanCelsius() - target.trueCelsius()) > FAR_KELVIN;
        return far ? Optional.of(Objection.TOO_FAR) : Optional.empty();
    }

    /** Events are the difference between two states, found here and nowhere else. */
    private List<CheckEvent> changes(PointCheck after, Instant at) {
        List<CheckEvent> events = new ArrayList<>();
        if (after.stage == Stage.GIVEN_UP) events.add(new GivenUp(at, after.objection.orElseThrow()));
        else if (after.stage == Stage.TAKEN) events.add(new Taken(after.point.orElseThrow()));
        else if (after.stage != stage) events.add(new StageReached(at, after.stage));
        boolean objects = after.objection.isPresent() && !after.objection.equals(objection);
        if (objects && !after.isOver() && after.stage != Stage.PREPARE)
            events.add(new Objected(at, after.objection.get()));
        return events;
    }

    private PointDraft draft() {
        return new PointDraft(this);
    }
}
