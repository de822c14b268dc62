package fifthform.curves.probecheck;

import fifthform.curves.probecheck.CheckInput.Enter;
import fifthform.curves.probecheck.CheckInput.NoReading;
import fifthform.curves.probecheck.CheckInput.Passed;
import fifthform.curves.probecheck.CheckInput.Reading;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** A check told reading by reading. */
final class Story {
    private static final double STEP_KELVIN = 0.01;

    final List<CheckEvent> events = new ArrayList<>();
    PointCheck check;
    private Instant now = Instant.parse("2026-01-01T09:00:00Z");
    private double seconds;

    Story(Target target) {
        check = PointCheck.of(target);
    }

    /** Four readings a second of what the probe shows {@code s} seconds after the story began. */
    Story reads(Duration lasting, DoubleUnaryOperator celsius) {
        for (long i = 0; i < 4 * lasting.toSeconds() && !check.isOver(); i++) {
            later(0.25);
            double shown = Math.round(celsius.applyAsDouble(seconds) / STEP_KELVIN) * STEP_KELVIN;
            put(new Reading(now, shown, STEP_KELVIN / Math.sqrt(12)));
        }
        return this;
    }

    Story silence(Duration lasting) {
        for (long i = 0; i < lasting.toSeconds() && !check.isOver(); i++) {
            later(1);
            put(new Passed(now));
        }
        return this;
    }

    Story broken(Duration lasting) {
        for (long i = 0; i < lasting.toSeconds() && !check.isOver(); i++) {
            later(1);
            put(new NoReading(now));
        }
        return this;
    }

    Story enter() {
        put(new Enter(now));
        return this;
    }

    Story ends() {
        add(check.ended(now));
        return this;
    }

    double seconds() {
        return seconds;
    }

    private void later(double more) {
        seconds += more;
        now = now.plusMillis(Math.round(1000 * more));
    }

    private void put(CheckInput input) {
        add(check.next(input));
    }

    private void add(PointCheck.Step step) {
        check = step.after();
        events.addAll(step.events());
    }
}
