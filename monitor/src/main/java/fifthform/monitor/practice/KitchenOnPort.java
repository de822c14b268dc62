package fifthform.monitor.practice;

import fifthform.monitor.intake.SessionClock;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.simulator.device.RunningKitchen;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/**
 * A simulated kitchen whose adapter hangs on a real port: what the adapter says goes out at its time, what the other end
 * says goes to the adapter. Where nobody takes the bytes away, what is said is lost, as with a real one.
 */
public final class KitchenOnPort implements AutoCloseable {
    /** A minute of readings; whoever begins to listen later than that hears the newest only. */
    private static final int WAITING_PIECES = 64;

    private static final Duration BETWEEN_TRIES = Duration.ofMillis(100);

    /** Why it ended. */
    public enum Ended {
        MAKER_DONE,
        STOPPED
    }

    private final RunningKitchen kitchen;
    private final ByteLink port;
    private final SessionClock clock;
    private final Consumer<String> remarks;
    private final BlockingQueue<byte[]> waiting = new ArrayBlockingQueue<>(WAITING_PIECES);
    private final AtomicReference<Optional<ByteLink>> adapter = new AtomicReference<>(Optional.empty());
    private final AtomicReference<Optional<LinkException>> gone = new AtomicReference<>(Optional.empty());
    private final AtomicLong sent = new AtomicLong();
    private volatile boolean stopped;

    /**
     * @param port open; closed by {@link #close}
     * @param clock when what is said goes out
     * @param remarks takes a line where the adapter is unplugged or back
     */
    public KitchenOnPort(RunningKitchen kitchen, ByteLink port, SessionClock clock, Consumer<String> remarks) {
        this.kitchen = Objects.requireNonNull(kitchen, "kitchen");
        this.port = Objects.requireNonNull(port, "port");
        this.clock = Objects.requireNonNull(clock, "clock");
        this.remarks = Objects.requireNonNull(remarks, "remarks");
    }

    /**
     * Serves until the maker is done or {@link #stop} is called.
     *
     * @throws LinkException the port is gone
     */
    public Ended serve() throws LinkException, InterruptedException {
        background("practice-out", this::sendOn);
        background("practice-in", this::listen);
        boolean lost = false;
        while (!stopped && !kitchen.done() && gone.get().isEmpty()) {
            Optional<ByteLink> line = plugged();
            if (line.isPresent() == lost) {
                remarks.accept(
                        lost ? "The adapter is plugged in again." : "The adapter is unplugged: nothing is sent.");
                lost = !lost;
            }
            if (line.isPresent()) speak(line.get());
            else clock.pause(BETWEEN_TRIES);
        }
        if (!stopped && gone.get().isPresent()) throw gone.get().get();
        return stopped ? Ended.STOPPED : Ended.MAKER_DONE;
    }

    /** How many pieces have gone out. */
    public long linesSent() {
        return sent.get();
    }

    /** Ends {@link #serve} soon; from any thread. */
    public void stop() {
        stopped = true;
    }

    /** While the adapter is unplugged its kitchen goes on all the same. */
    private Optional<ByteLink> plugged() {
        kitchen.advanceTo(clock.instant());
        try {
            return Optional.of(kitchen.bowlSource().open());
        } catch (LinkException stillUnplugged) {
            return Optional.empty();
        }
    }

    /** Until the adapter is unplugged, the batch is over or somebody stops it. */
    private void speak(ByteLink line) throws InterruptedException {
        adapter.set(Optional.of(line));
        try (line) {
            Optional<Arrival> arrival = line.read();
            while (arrival.isPresent() && !stopped && gone.get().isEmpty()) {
                clock.waitUntil(arrival.get().at());
                if (!arrival.get().isSilence()) offer(arrival.get().bytes());
                arrival = line.read();
            }
        } catch (LinkException unplugged) {
            // Said where the next opening fails.
        } finally {
            adapter.set(Optional.empty());
        }
    }

    private void offer(byte[] bytes) {
        while (!waiting.offer(bytes)) waiting.poll();
    }

    private void sendOn() throws LinkException, InterruptedException {
        while (!stopped) {
            port.write(waiting.take());
            sent.incrementAndGet();
        }
    }

    private void listen() throws LinkException, InterruptedException {
        while (!stopped) {
            Optional<Arrival> asked = port.read();
            if (asked.isEmpty()) return;
            if (!asked.get().isSilence()) ask(asked.get().bytes());
        }
    }

    private void ask(byte[] question) {
        Optional<ByteLink> line = adapter.get();
        if (line.isEmpty()) return;
        try {
            line.get().write(question);
        } catch (LinkException unplugged) {
            // A question to an adapter that is out of its socket is heard by nobody.
        }
    }

    private interface Work {
        void run() throws LinkException, InterruptedException;
    }

    /** A port whose other end takes nothing blocks its writer for good; it must not keep the program from ending. */
    private void background(String name, Work work) {
        Thread thread = new Thread(
                () -> {
                    try {
                        work.run();
                    } catch (LinkException e) {
                        gone.set(Optional.of(e));
                    } catch (InterruptedException e) {
                        Thread.currentThread().interrupt();
                    }
                },
                name);
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void close() {
        stop();
        port.close();
    }
}
