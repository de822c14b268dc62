package fifthform.probe.link;

import java.util.Optional;

/**
 * An open line to an adapter: a serial port, recorded bytes, a simulated kitchen. Every arrival carries its own time,
 * so that recorded bytes and practice at thirty times the speed of life keep theirs.
 *
 * <p>One thread reads. {@link #close()} may come from any thread and makes a waiting {@link #read()} return or throw soon.
 */
public interface ByteLink extends AutoCloseable {
    /**
     * Waits for bytes, about 200 ms of the link's own time at most.
     *
     * @return what arrived, or a silence; empty when nothing will ever come again (a recording has ended)
     * @throws LinkException the line is gone; open a new one
     */
    Optional<Arrival> read() throws LinkException, InterruptedException;

    /**
     * Sends bytes to the adapter.
     *
     * @throws LinkException the line is gone
     */
    void write(byte[] bytes) throws LinkException;

    @Override
    void close();
}
