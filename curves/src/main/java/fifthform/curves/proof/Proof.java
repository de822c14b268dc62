package fifthform.curves.proof;

import fifthform.curves.check.Require;
import fifthform.curves.probecheck.CheckInput;
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
 * A sample that is being proved: a pure function of state and input. It begins by itself when the reading falls as in ice,
 * and ends by itself when the sample is cold, so that wet hands need touch nothing.
 *
 * @param bathCelsius the bath it is held against, °C
 * @param stage how far it is
 * @param begun time of the first input
 * @param readings all of them since then, as they came
 * @param course the curve as it is read now; empty before the dip
 */
public record Proof(
        double bathCelsius, Stage stage, Optional<Instant> begun, List<CurvePoint> readings, Optional<Course> course) {
    /** How far a proof is. */
    public enum Stage {
        /** The sample is taken and waits for the ice. */
        BEFORE_ICE,
        /** It falls. */
        FALLING,
        /** A bend has been passed; it cools on. */
        BEND_PASSED,
        ENDED
    }

    /** What came of one input. */
    public record Step(Proof after, List<ProofEvent> events) {
        public Step {
            Objects.requireNonNull(after, "after");
            events = List.copyOf(events);
        }
    }

    private static final Duration LONGEST_WAIT = Duration.ofMinutes(15);
    /** Twice the longest of our simulated cups. */
    private static final Duration LONGEST_FALL = Duration.ofMinutes(30);
    /** The curve is read again so often; a bend takes minutes. */
    private static final double EVERY_SECONDS = 2;
    /** What lies further back before the dip says nothing. */
    private static final double KEPT_BEFORE_SECONDS = 120;
    /** So long after the window the curve still serves the fits at its end, s. */
    private static final double TAIL_SECONDS = 16;

    public Proof {
        Require.within(bathCelsius, -20, 150, "bathCelsius");
        Objects.requireNonNull(stage, "stage");
        Objects.requireNonNull(begun, "begun");
        readings = List.copyOf(readings);
        Objects.requireNonNull(course, "course");
    }

    /** Before anything has happened. */
    public static Proof in(double bathCelsius) {
        return new Proof(bathCelsius, Stage.BEFORE_ICE, Optional.empty(), List.of(), Optional.empty());
    }

    public boolean isOver() {
        return stage == Stage.ENDED;
    }

    /** The readings as a curve. */
    public CoolingCurve curve() {
        return CoolingCurve.of(readings, Fitness.stepKelvin(readings));
    }

    /** The proof after {@code input}; nothing happens any more once it is over. */
    public Step next(CheckInput input) {
        if (isOver()) return new Step(this, List.of());
        Instant at = input.at();
        Proof begun = this.begun.isPresent() ? this : new Proof(bathCelsius, stage, Optional.of(at), readings, course);
        Proof after = input.fold(begun.cases());
        if (!after.isOver() && after.isTooLate(at)) after = after.with(Stage.ENDED);
        return new Step(after, changes(after, at));
    }

    /** The readings have ended. */
    public Step ended(Instant at) {
        if (isOver()) return new Step(this, List.of());
        Proof after = reread().with(Stage.ENDED);
        return new Step(after, changes(after, at));
    }

    private CheckInput.Cases<Proof> cases() {
        return new CheckInput.Cases<>() {
            @Override
            public Proof reading(Reading reading) {
                return heard(reading);
            }

            @Override
            public Proof noReading(NoReading noReading) {
                return Proof.this;
            }

            @Override
            public Proof passed(Passed passed) {
                return Proof.this;
            }

            @Override
            public Proof enter(Enter enter) {
                return stage == Stage.BEFORE_ICE ? Proof.this : reread().with(Stage.ENDED);
            }
        };
    }

    private Proof heard(Reading reading) {
        double seconds = Duration.between(begun.orElseThrow(), reading.at()).toNanos() / 1e9;
        double last = readings.isEmpty()
                ? Double.NEGATIVE_INFINITY
                : readings.get(readings.size() - 1).seconds();
        if (seconds < last) return this;
        List<CurvePoint> more = new ArrayList<>(readings);
        more.add(new CurvePoint(seconds, reading.celsius()));
        if (stage == Stage.BEFORE_ICE) more.removeIf(p -> p.seconds() < seconds - KEPT_BEFORE_SECONDS);
        Proof with = new Proof(bathCelsius, stage, begun, more, course);
        boolean due = Math.floor(seconds / EVERY_SECONDS) > Math.floor(last / EVERY_SECONDS);
        return due ? with.reread().staged() : with;
    }

    private Proof reread() {
        return new Proof(bathCelsius, stage, begun, readings, Course.of(curve(), bathCelsius));
    }

    private Proof staged() {
        if (course.isEmpty()) return this;
        if (course.get().isWhole() && secondsBelow() >= TAIL_SECONDS) return with(Stage.ENDED);
        return with(course.get().isPassed() ? Stage.BEND_PASSED : Stage.FALLING);
    }

    /** How long it has been out of the window. */
    private double secondsBelow() {
        double last = readings.get(readings.size() - 1).seconds();
        double from = last;
        for (int i = readings.size() - 1; i >= 0 && readings.get(i).celsius() < bathCelsius + Course.MARGIN_KELVIN; i--)
            from = readings.get(i).seconds();
        return last - from;
    }

    private boolean isTooLate(Instant at) {
        Duration since = Duration.between(begun.orElse(at), at);
        if (course.isEmpty()) return since.compareTo(LONGEST_WAIT) > 0;
        double fallen = since.toMillis() / 1000.0 - course.get().dipSeconds();
        return fallen > LONGEST_FALL.toSeconds();
    }

    private Proof with(Stage next) {
        return new Proof(bathCelsius, next, begun, readings, course);
    }

    /** Events are the difference between two states, found here and nowhere else. */
    private List<ProofEvent> changes(Proof after, Instant at) {
        List<ProofEvent> events = new ArrayList<>();
        if (course.isEmpty() && after.course.isPresent())
            events.add(new ProofEvent.Dipped(at, after.course.get().startCelsius()));
        if (stage != Stage.BEND_PASSED && after.stage == Stage.BEND_PASSED)
            events.add(new ProofEvent.BendPassed(
                    at, after.course.flatMap(Course::bend).orElseThrow()));
        if (after.stage == Stage.ENDED) events.add(new ProofEvent.Ended(at));
        return events;
    }
}
