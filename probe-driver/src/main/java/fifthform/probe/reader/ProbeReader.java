package fifthform.probe.reader;

import fifthform.curves.input.Input;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Reads one adapter on a thread of its own until it is stopped or a recording ends. When the adapter goes, the session is
 * told and the reader looks for it again by itself, each time with a new link and a new decoder.
 */
public final class ProbeReader implements AutoCloseable {
    private static final Duration FIRST_BACK_OFF = Duration.ofMillis(500);
    private static final Duration LONGEST_BACK_OFF = Duration.ofSeconds(2);

    private final ProbeLine line;
    private final ReaderClock clock;
    private final SignalJudge judge;
    private final Runnable onEnd;
    private final Thread thread;
    private final PortHold hold = new PortHold();
    private volatile boolean stopped;
    private volatile Optional<ByteLink> current = Optional.empty();
    private volatile boolean reading;
    private volatile Optional<LinkException> trouble = Optional.empty();
    private Duration backOff = FIRST_BACK_OFF;

    /**
     * @param clock stamps what no arrival stamps (a port that is gone), and waits between attempts
     * @param sink gets inputs in the order of their times, from the reader's thread; must not block
     * @param onEnd called from the reader's thread, last of all, when a recording has ended
     */
    public ProbeReader(ProbeLine line, ReaderClock clock, Consumer<? super Input> sink, Runnable onEnd) {
        this.line = Objects.requireNonNull(line, "line");
        this.clock = Objects.requireNonNull(clock, "clock");
        this.judge = new SignalJudge(line.probes(), sink);
        this.onEnd = Objects.requireNonNull(onEnd, "onEnd");
        this.thread = new Thread(this::run, "probe-" + line.name());
    }

    /** Begins to read; once only. */
    public void start() {
        thread.start();
    }

    /**
     * Why the link is not open at present, or why an adapter that is asked gives no temperature; empty while it works. For
     * messages, at any time from any thread.
     */
    public Optional<LinkException> trouble() {
        return trouble;
    }

    /** Whether the link has been opened and has answered since, be it with silence. */
    public boolean isReading() {
        return reading;
    }

    /**
     * Gives the port up so that another program can use it, and keeps away from it until {@link #takeBack()}. The session
     * is told that the probe is unplugged; {@link #trouble()} says that it was on purpose. Returns when the port is free.
     */
    public void release() throws InterruptedException {
        hold.release();
        current.ifPresent(ByteLink::close);
        if (Thread.currentThread() != thread) hold.awaitFree();
    }

    /** Opens the port again, within half a second; without effect if it was not released. */
    public void takeBack() {
        hold.takeBack();
    }

    /** Whether the port has been given up on request. */
    public boolean isReleased() {
        return hold.isReleased();
    }

    /** Closes the link and waits until the thread has ended; nothing is handed on afterwards. */
    public void stop() {
        stopped = true;
        current.ifPresent(ByteLink::close);
        thread.interrupt();
        if (Thread.currentThread() == thread) return;
        boolean interrupted = false;
        while (thread.isAlive()) {
            try {
                thread.join();
            } catch (InterruptedException e) {
                interrupted = true; // the promise that nothing follows weighs more; the caller hears of it below
            }
        }
        if (interrupted) Thread.currentThread().interrupt();
    }

    @Override
    public void close() {
        stop();
    }

    private void run() {
        try {
            while (!stopped) {
                Optional<LinkException> loss = hold.take() ? held() : Optional.of(released());
                if (stopped) return;
                if (loss.isEmpty()) {
                    onEnd.run();
                    return;
                }
                lost(loss.get());
            }
        } catch (InterruptedException stopping) {
            // stop() interrupts a pause or a read; the thread ends here
        }
    }

    /** One link from opening to loss, of which the reason comes back; empty if a recording has ended. */
    private Optional<LinkException> held() throws InterruptedException {
        try {
            readToTheEnd();
            return Optional.empty();
        } catch (LinkException e) {
            return Optional.of(hold.isReleased() ? released() : e);
        } catch (RuntimeException bug) {
            // A bug in one protocol must not end the batch's readings: told like a loss, and the link tried again.
            String what = "Reading stumbled over a fault of the program (" + bug + ").";
            return Optional.of(
                    new LinkException(line.source().place(), what, "It is tried again by itself; please report it."));
        } finally {
            current = Optional.empty();
            reading = false;
            hold.letGo();
        }
    }

    private void readToTheEnd() throws LinkException, InterruptedException {
        try (ByteLink link = line.source().open()) {
            current = Optional.of(link);
            ProbeProtocol.Decoder decoder = line.protocol().newDecoder();
            judge.opened();
            while (!stopped) {
                if (hold.isReleased()) throw released(); // it may have been closed before we noticed that it was open
                Optional<Arrival> arrival = link.read();
                if (arrival.isEmpty()) return;
                works(decoder);
                take(arrival.get(), decoder);
                Optional<byte[]> question = decoder.ask(
                        arrival.get().at(), signal -> judge.signal(arrival.get().at(), signal));
                works(decoder); // what has just been heard or missed may have given it something to complain of
                if (question.isPresent() && !stopped) link.write(question.get());
            }
        }
    }

    private LinkException released() {
        return LinkException.released(line.source().place());
    }

    private void take(Arrival arrival, ProbeProtocol.Decoder decoder) {
        decoder.feed(arrival.bytes(), signal -> judge.signal(arrival.at(), signal));
        judge.passed(arrival.at());
    }

    /** Only a read proves it: a dead port can be opened and fails at the first read. */
    private void works(ProbeProtocol.Decoder decoder) {
        trouble = decoder.complaint()
                .map(problem -> new LinkException(line.source().place(), problem.what(), problem.whatToDo()));
        reading = true;
        backOff = FIRST_BACK_OFF;
    }

    private void lost(LinkException e) throws InterruptedException {
        trouble = Optional.of(e);
        judge.unplugged(clock.instant());
        if (hold.isReleased()) {
            clock.pause(FIRST_BACK_OFF); // to be there soon after it is taken back
            return;
        }
        clock.pause(backOff);
        Duration doubled = backOff.multipliedBy(2);
        backOff = doubled.compareTo(LONGEST_BACK_OFF) < 0 ? doubled : LONGEST_BACK_OFF;
    }
}
