package fifthform.monitor.intake;

import fifthform.curves.input.Recorded;
import java.time.Instant;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** The inputs of a recorded session, at the pace of a clock or as fast as they are taken; ticks come from the recording. */
public final class TapeInputs implements InputSource {
    private final Iterator<Recorded> inputs;
    private final Instant showFrom;
    private final Optional<Instant> until;
    private final Optional<SessionClock> clock;
    private boolean begun;
    private volatile boolean stopped;

    /**
     * A tape.
     *
     * @param inputs in the order in which the engine took them
     * @param showFrom before this everything is taken at once
     * @param until after this nothing is taken
     * @param clock the pace; without it, as fast as they are taken
     */
    public TapeInputs(List<Recorded> inputs, Instant showFrom, Optional<Instant> until, Optional<SessionClock> clock) {
        this.inputs = inputs.iterator();
        this.showFrom = Objects.requireNonNull(showFrom, "showFrom");
        this.until = Objects.requireNonNull(until, "until");
        this.clock = Objects.requireNonNull(clock, "clock");
    }

    /** Ends the tape at the next input. */
    public void stop() {
        stopped = true;
    }

    @Override
    public Optional<Recorded> next() throws InterruptedException {
        if (stopped || !inputs.hasNext()) return Optional.empty();
        Recorded next = inputs.next();
        Instant at = next.input().at();
        if (until.filter(at::isAfter).isPresent()) return Optional.empty();
        if (clock.isPresent() && !at.isBefore(showFrom)) paced(at, clock.get());
        return stopped ? Optional.empty() : Optional.of(next);
    }

    private void paced(Instant at, SessionClock pace) throws InterruptedException {
        if (!begun) pace.set(at);
        begun = true;
        while (!stopped && pace.instant().isBefore(at)) Thread.sleep(2);
    }
}
