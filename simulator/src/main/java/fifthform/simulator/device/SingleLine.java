package fifthform.simulator.device;

import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import java.util.Optional;
import java.util.function.Supplier;

/** An open line to an adapter that nobody else uses: each read lets a moment pass. For one thread. */
final class SingleLine implements ByteLink {
    private final Adapter adapter;
    private final Supplier<Arrival> tick;
    private boolean closed;

    /**
     * Where such an adapter is plugged in.
     *
     * @param tick lets a moment pass and gives what came in it
     */
    static LinkSource source(Adapter adapter, Supplier<Arrival> tick) {
        return new LinkSource() {
            @Override
            public String place() {
                return adapter.place();
            }

            @Override
            public ByteLink open() {
                adapter.listen();
                return new SingleLine(adapter, tick);
            }
        };
    }

    private SingleLine(Adapter adapter, Supplier<Arrival> tick) {
        this.adapter = adapter;
        this.tick = tick;
    }

    @Override
    public Optional<Arrival> read() throws LinkException {
        requireOpen();
        return Optional.of(tick.get());
    }

    @Override
    public void write(byte[] bytes) throws LinkException {
        requireOpen();
        adapter.hear(bytes);
    }

    @Override
    public void close() {
        closed = true;
    }

    private void requireOpen() throws LinkException {
        if (closed) throw new LinkException(adapter.place(), "This line has been closed.", "Open it again.");
    }
}
