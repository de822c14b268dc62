package fifthform.probe.reader;

import fifthform.curves.input.Input;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.setup.ProbeId;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Lets one probe say {@value #READINGS_PER_SECOND} things a second, and that many at once after a pause. Of what comes
 * faster only the newest of each arrival gets through, and the session is told that it is flooded. Chocolate changes over
 * seconds, so nothing is lost that could matter.
 */
final class FloodGate {
    static final int READINGS_PER_SECOND = 20;
    static final Duration TOLD_EVERY = Duration.ofSeconds(5);

    private final ProbeId probe;
    private final Consumer<? super Input> sink;
    private double allowance = READINGS_PER_SECOND;
    private Optional<Instant> counted = Optional.empty();
    private Optional<Input> newest = Optional.empty();
    private Optional<Instant> lastTold = Optional.empty();
    /** Too much came in the last arrival: of the next one only the newest counts. */
    private boolean flooded;

    private boolean dropped;

    FloodGate(ProbeId probe, Consumer<? super Input> sink) {
        this.probe = probe;
        this.sink = sink;
    }

    void offer(Input input) {
        count(input.at());
        if (!flooded && allowance >= 1) {
            pass(input);
            return;
        }
        flooded = true;
        dropped |= newest.isPresent();
        newest = Optional.of(input);
    }

    /** The arrival that ended at {@code at} has been read to its end. What did not get through now never will. */
    void passed(Instant at) {
        count(at);
        if (newest.isPresent() && allowance >= 1) pass(newest.get());
        else dropped |= newest.isPresent();
        if (dropped && !toldLately(at)) {
            lastTold = Optional.of(at);
            sink.accept(new ProbeFault(at, probe, Cause.FLOODED));
        }
        flooded = dropped;
        dropped = false;
        newest = Optional.empty();
    }

    private boolean toldLately(Instant at) {
        return lastTold.filter(told -> Duration.between(told, at).compareTo(TOLD_EVERY) < 0)
                .isPresent();
    }

    private void pass(Input input) {
        allowance--;
        sink.accept(input);
    }

    private void count(Instant at) {
        double seconds =
                counted.map(last -> Duration.between(last, at).toNanos() / 1e9).orElse(0.0);
        allowance = Math.min(READINGS_PER_SECOND, allowance + seconds * READINGS_PER_SECOND);
        counted = Optional.of(at);
    }
}
