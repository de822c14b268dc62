package fifthform.simulator.device;

import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;

/**
 * Lets the adapter in the pretend bowl speak into a line at whose other end somebody else listens, and hears what is asked
 * there. The kitchen's time passes as the pace lets it.
 *
 * <p>Where nobody listens a port may take no more and keep who writes waiting; as with a real adapter what is said
 * meanwhile is lost, and the kitchen goes on.
 *
 * <p>A port cannot be pulled out from within: while the adapter is unplugged nothing comes and no question is answered.
 */
public final class KitchenVoice implements AutoCloseable {
    /** What holds the kitchen back to a speed at which somebody can listen. */
    @FunctionalInterface
    public interface Pace {
        /** Waits until it is this late in the kitchen; returns at once if it is later. */
        void until(Instant kitchenTime) throws InterruptedException;
    }

    private final RunningKitchen kitchen;
    private final LinkSource port;
    private final Pace pace;
    private volatile Optional<ByteLink> adapter = Optional.empty();
    private volatile Optional<LinkException> portLost = Optional.empty();
    private volatile boolean closed;

    /** What is still to be said; where it is full nobody listens, and the oldest is lost. */
    private final BlockingQueue<byte[]> unsaid = new ArrayBlockingQueue<>(64);

    /** Stands behind the last words; told from all others by being this very one. */
    private static final byte[] END = {};

    /** How long the last words may take once the batch is over. Own choice. */
    private static final long LAST_WORDS_MILLIS = 2000;

    /** @param port where the other end is, for example a serial port */
    public KitchenVoice(RunningKitchen kitchen, LinkSource port, Pace pace) {
        this.kitchen = Objects.requireNonNull(kitchen, "kitchen");
        this.port = Objects.requireNonNull(port, "port");
        this.pace = Objects.requireNonNull(pace, "pace");
    }

    /**
     * Speaks until the batch is over, or until {@link #close()}; then the port is closed. Once only.
     *
     * @throws LinkException the port cannot be opened, or has gone
     */
    public void speak() throws LinkException, InterruptedException {
        ByteLink line = port.open();
        Thread hearing = new Thread(() -> hear(line), "practice-hears");
        Thread speaking = new Thread(() -> sayAll(line), "practice-speaks");
        // A write that waits for ever must not keep the program from ending.
        speaking.setDaemon(true);
        hearing.start();
        speaking.start();
        try {
            while (!over()) adapterUntilGone();
            put(END);
            speaking.join(LAST_WORDS_MILLIS);
        } finally {
            closed = true;
            speaking.interrupt();
            line.close();
            hearing.interrupt();
            hearing.join();
            speaking.join(LAST_WORDS_MILLIS);
        }
        if (portLost.isPresent()) throw portLost.get();
    }

    private boolean over() {
        return closed || portLost.isPresent() || kitchen.done();
    }

    /** Until the adapter is unplugged or the batch is over. */
    private void adapterUntilGone() throws InterruptedException {
        try (ByteLink link = kitchen.bowlSource().open()) {
            adapter = Optional.of(link);
            Optional<Arrival> arrival = link.read();
            while (arrival.isPresent() && !over()) {
                pace.until(arrival.get().at());
                say(arrival.get());
                arrival = link.read();
            }
        } catch (LinkException unplugged) {
            pace.until(kitchen.now()); // trying in vain let time pass there
        } finally {
            adapter = Optional.empty();
        }
    }

    private void say(Arrival arrival) {
        if (arrival.isSilence() || over()) return;
        put(arrival.bytes());
    }

    private void put(byte[] bytes) {
        while (!unsaid.offer(bytes)) unsaid.poll();
    }

    /** On a thread of its own: writing to a port may wait. */
    private void sayAll(ByteLink line) {
        try {
            for (byte[] bytes = unsaid.take(); bytes != END; bytes = unsaid.take()) line.write(bytes);
        } catch (LinkException e) {
            lost(e);
        } catch (InterruptedException stopping) {
            // speak() is done and ends this thread
        }
    }

    /** On a thread of its own: reading a port waits. */
    private void hear(ByteLink line) {
        try {
            Optional<Arrival> question = line.read();
            while (question.isPresent() && !over()) {
                if (!question.get().isSilence()) handOn(question.get().bytes());
                question = line.read();
            }
        } catch (LinkException e) {
            lost(e);
        } catch (InterruptedException stopping) {
            // speak() is done and ends this thread
        }
    }

    private void handOn(byte[] question) {
        try {
            Optional<ByteLink> link = adapter;
            if (link.isPresent()) link.get().write(question);
        } catch (LinkException unplugged) {
            // whoever asks an adapter that is out of its socket hears nothing
        }
    }

    /** A line that we have closed ourselves is no loss. */
    private void lost(LinkException e) {
        if (!closed) portLost = Optional.of(e);
    }

    /** Ends {@link #speak()} soon; from any thread. */
    @Override
    public void close() {
        closed = true;
    }
}
