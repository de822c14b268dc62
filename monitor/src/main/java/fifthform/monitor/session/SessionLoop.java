package fifthform.monitor.session;

import fifthform.curves.engine.Engine;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.Sample;
import fifthform.curves.review.Tally;
import fifthform.curves.setup.Setup;
import fifthform.monitor.intake.InputSource;
import fifthform.monitor.store.InputCodec;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.LongSupplier;

/**
 * One session's loop: next input → journal → step → journal what was told → publish. Live and replay differ only in the
 * source.
 */
public final class SessionLoop implements Runnable {
    private final Setup header;
    private final InputSource source;
    private final SessionRecord record;
    private final List<SessionListener> listeners;
    private final LongSupplier nanos;
    private final TraceLog trace = new TraceLog();
    private final AtomicReference<SessionSnapshot> published = new AtomicReference<>();

    private State state;
    private Tally tally;
    private OptionalDouble rawCelsius = OptionalDouble.empty();
    private Optional<String> fault = Optional.empty();

    /**
     * A session.
     *
     * @param header the set-up that stands in the journal's header
     * @param start when it began
     * @param nanos a monotonic clock, only to tell screens how old a snapshot is
     */
    public SessionLoop(
            Setup header,
            Instant start,
            InputSource source,
            SessionRecord record,
            List<SessionListener> listeners,
            LongSupplier nanos) {
        this.header = Objects.requireNonNull(header, "header");
        this.source = Objects.requireNonNull(source, "source");
        this.record = Objects.requireNonNull(record, "record");
        this.listeners = List.copyOf(listeners);
        this.nanos = Objects.requireNonNull(nanos, "nanos");
        this.state = Engine.start(header, start);
        this.tally = Tally.start(state);
        publish();
    }

    /** Takes inputs that were recorded before the program was cut off, so that the session goes on where it was. */
    public void catchUp(List<Recorded> earlier) {
        for (Recorded recorded : earlier) take(recorded);
        publish();
    }

    /** The latest snapshot; any thread. */
    public SessionSnapshot snapshot() {
        return published.get();
    }

    /** Runs until the source ends or the thread is interrupted. */
    @Override
    public void run() {
        try {
            Optional<Recorded> next = source.next();
            while (next.isPresent()) {
                Recorded stored = new Recorded(
                        next.get().sequence(), InputCodec.asStored(next.get().input()));
                record.input(stored);
                List<Event> events = take(stored);
                for (Event event : events) {
                    record.event(stored.sequence(), event);
                    if (event instanceof Event.PhaseChanged) record.force();
                }
                publish();
                for (SessionListener listener : listeners) listener.stepped(published.get(), events);
                next = source.next();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private List<Event> take(Recorded recorded) {
        Input input = recorded.input();
        if (input instanceof Sample sample
                && sample.probe().equals(header.bowlProbe().id())) {
            rawCelsius = OptionalDouble.of(sample.tipCelsius());
        }
        State before = state;
        Step step;
        try {
            step = Engine.step(header, before, input);
        } catch (RuntimeException bug) {
            // A monitor that admits a fault and goes on recording beats one that stops.
            fault = Optional.of(bug.toString());
            record.note(input.at(), "fault", "Input " + recorded.sequence() + ": " + bug);
            return List.of();
        }
        fault = Optional.empty();
        state = step.after();
        tally = tally.with(state.setupInForce(header).recipe(), before, step);
        follow(before, input, step);
        return step.events();
    }

    private void follow(State before, Input input, Step step) {
        state.estimate()
                .filter(e ->
                        before.estimate().filter(b -> b.at().equals(e.at())).isEmpty())
                .ifPresent(e -> trace.add(e.at(), e.chocolateCelsius()));
        for (Event event : step.events()) {
            if (event instanceof Event.PhaseChanged changed)
                trace.flag(changed.at(), changed.to().word());
        }
        if (input instanceof MakerAction.Noted noted)
            trace.flag(noted.at(), noted.text().isEmpty() ? "mark" : noted.text());
        if (input instanceof MakerAction.SeedAdded seed) trace.flag(seed.at(), "seed added");
    }

    private void publish() {
        published.set(new SessionSnapshot(
                state.setupInForce(header), state, tally, trace.view(), rawCelsius, fault, nanos.getAsLong()));
    }
}
