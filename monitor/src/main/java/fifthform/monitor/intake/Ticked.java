package fifthform.monitor.intake;

import fifthform.curves.input.Input;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.Tick;
import java.time.Duration;
import java.time.Instant;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Inputs without ticks, in the order of time, with the ticks that a live session would have had between them. */
public final class Ticked implements InputSource {
    /** Longer pauses are ticked through only this far: nothing changes any more once every delay has passed. */
    private static final Duration LONGEST = Duration.ofMinutes(20);

    private final Iterator<Input> inputs;
    private Instant last;
    private Instant far;
    private Optional<Input> waiting = Optional.empty();
    private long sequence;

    public Ticked(List<Input> inputs, Instant start) {
        this.inputs = List.copyOf(inputs).iterator();
        this.last = Objects.requireNonNull(start, "start");
        this.far = start;
    }

    @Override
    public Optional<Recorded> next() {
        if (waiting.isEmpty()) {
            if (!inputs.hasNext()) return Optional.empty();
            waiting = Optional.of(inputs.next());
            far = last.plus(LONGEST);
        }
        Instant tick = last.plus(Ticks.EVERY);
        boolean ticks = tick.isBefore(waiting.get().at()) && tick.isBefore(far);
        Input next = ticks ? new Tick(tick) : waiting.get();
        if (!ticks) waiting = Optional.empty();
        last = next.at();
        return Optional.of(new Recorded(++sequence, next));
    }
}
