package fifthform.simulator.device;

import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import java.util.Optional;

/** An open line to an adapter of the pretend kitchen; its arrivals carry the kitchen's time. */
final class KitchenLink implements ByteLink {
    /** How this line is read: with time passing, or following. */
    interface Reading {
        Optional<Arrival> read(KitchenLink link) throws LinkException, InterruptedException;
    }

    private final RunningKitchen kitchen;
    private final Adapter adapter;
    private final Reading reading;
    private final int pluggedInAs;
    private volatile boolean closed;

    /** Called with the kitchen's lock held. */
    KitchenLink(RunningKitchen kitchen, Adapter adapter, Reading reading) {
        this.kitchen = kitchen;
        this.adapter = adapter;
        this.reading = reading;
        pluggedInAs = adapter.timesUnplugged();
    }

    @Override
    public Optional<Arrival> read() throws LinkException, InterruptedException {
        return reading.read(this);
    }

    /** An adapter that is asked answers within a tick of the kitchen's time; one that talks unasked takes no notice. */
    @Override
    public void write(byte[] bytes) throws LinkException {
        synchronized (kitchen) {
            requireAlive();
            adapter.hear(bytes);
        }
    }

    @Override
    public void close() {
        closed = true;
        kitchen.wake();
    }

    /** Called with the kitchen's lock held. */
    void requireAlive() throws LinkException {
        if (closed) {
            throw new LinkException(adapter.place(), "This line has been closed.", "Open the practice kitchen again.");
        }
        if (adapter.timesUnplugged() != pluggedInAs) throw unplugged(adapter);
    }

    static LinkException unplugged(Adapter adapter) {
        return new LinkException(
                adapter.place(),
                "The adapter is unplugged.",
                "Plug it in again; in this practice it comes back by itself.");
    }
}
