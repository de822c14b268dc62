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
import fifthform.monitor.store.Session;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.WatchText;
import java.time.Instant;
import java.util.ArrayList;
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

    private final Stepper stepper;

    /** What takes the session one input further: {@link Engine#step}, but in tests of what its faults do. */
    interface Stepper {
        Step step(Setup header, State before, Input input);
    }

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
        this(header, start, source, record, listeners, nanos, Engine::step);
    }

    /** A session whose engine can be made to stumble. */
    SessionLoop(
            Setup header,
            Instant start,
            InputSource source,
            SessionRecord record,
            List<SessionListener> listeners,
            LongSupplier nanos,
            Stepper stepper) {
        this.header = Objects.requireNonNull(header, "header");
        this.source = Objects.requireNonNull(source, "source");
        this.record = Objects.requireNonNull(record, "record");
        this.listeners = List.copyOf(listeners);
        this.nanos = Objects.requireNonNull(nanos, "nanos");
        this.stepper = Objects.requireNonNull(stepper, "stepper");
        this.state = Engine.start(header, start);
        this.tally = Tally.start(state);
        publish();
    }

    /**
     * Takes what was recorded before the program was cut off, so that the session goes on where it was. What it was
     * about to tell at that moment is recorded now.
     */
    public void catchUp(Session earlier) {
        List<Told> events = new ArrayList<>();
        earlier.inputs()
                .forEach(recorded -> take(recorded).forEach(event -> events.add(new Told(recorded.sequence(), event))));
        long recorded = earlier.told().count();
        events.stream().skip(recorded).forEach(told -> record.event(told.sequence(), told.event()));
        publish();
    }

    /** An event and the input that led to it. */
    private record Told(long sequence, Event event) {}

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
                tell(stored, events);
                next = source.next();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** A listener that stumbles must not end the recording. */
    private void tell(Recorded recorded, List<Event> events) {
        SessionSnapshot now = published.get();
        for (SessionListener listener : listeners) {
            try {
                listener.stepped(now, events);
            } catch (RuntimeException | LinkageError | StackOverflowError bug) {
                record.note(recorded.input().at(), "fault", "After input " + recorded.sequence() + ": " + bug);
            }
        }
    }

    private List<Event> take(Recorded recorded) {
        Input input = recorded.input();
        if (input instanceof Sample sample
                && sample.probe().equals(header.bowlProbe().id())) {
            rawCelsius = OptionalDouble.of(sample.tipCelsius());
        }
        State before = state;
        try {
            Step step = stepper.step(header, before, input);
            tally = tally.with(step.after().setupInForce(header).recipe(), before, step);
            state = step.after();
            fault = Optional.empty();
            follow(before, input, step);
            return step.events();
        } catch (RuntimeException bug) {
            // A monitor that admits a fault and goes on recording beats one that stops.
            note(recorded, bug.toString());
            return List.of();
        }
    }

    /** Once for each fault: one that comes with every reading would drown the session. */
    private void note(Recorded recorded, String bug) {
        if (!fault.equals(Optional.of(bug)))
            record.note(recorded.input().at(), "fault", "Input " + recorded.sequence() + ": " + bug);
        fault = Optional.of(bug);
    }

    private void follow(State before, Input input, Step step) {
        state.estimate()
                .filter(e ->
                        before.estimate().filter(b -> b.at().equals(e.at())).isEmpty())
                .ifPresent(e -> trace.add(e.at(), e.chocolateCelsius()));
        state.crystals().ifPresent(c -> trace.crystals(state.at(), c.watch().spoken()));
        for (Event event : step.events()) {
            if (event instanceof Event.PhaseChanged changed) trace.flag(changed.at(), InWords.of(changed.to()));
            if (event instanceof Event.SeedLost lost) trace.lost(lost);
        }
        if (input instanceof MakerAction.Noted noted)
            trace.flag(noted.at(), noted.text().isEmpty() ? WatchText.MARK.say() : noted.text());
        if (input instanceof MakerAction.SeedAdded seed) trace.flag(seed.at(), WatchText.SEED_ADDED.say());
    }

    private void publish() {
        published.set(new SessionSnapshot(
                state.setupInForce(header), state, tally, trace.view(), rawCelsius, fault, nanos.getAsLong()));
    }
}
