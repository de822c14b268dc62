package fifthform.probe.link;

import com.fazecast.jSerialComm.SerialPort;
import fifthform.probe.LineSettings;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;

/**
 * One opened serial port.
 *
 * <p>The library says −1 at once and for ever when the device has gone, while {@code isOpen()} stays true; −1 also answers
 * a read during our own {@link #close()}. No disconnect listener is used: it is called without pause once the device has
 * gone.
 *
 * <p>A line of text trickles in byte by byte. Whoever wakes for each byte wakes a hundred times a second; so after the first
 * byte a read waits a moment for the rest, which makes two wakes a reading; and of an adapter that keeps time every second
 * line is fetched when it is whole ({@link Rhythm}), which makes one. One that has to be asked is waited for, since it keeps
 * our time.
 */
final class SerialLink implements TunableLink {
    /** Takes a megabyte a second with {@link #FIRST_WAIT_MILLIS} between reads. */
    private static final int LARGEST_READ = 16 * 1024;

    /** A dozen characters at 9600 bit/s. */
    private static final int FIRST_WAIT_MILLIS = 12;
    /** Keeps a reading younger than 50 ms when it is handed on. */
    private static final int LONGEST_WAIT_MILLIS = 36;

    private static final int WAIT_STEP_MILLIS = 6;
    /** Bytes that come this soon after a read belong to what it has cut in two. */
    private static final long SAME_BURST_NANOS = 5_000_000;

    private final String place;
    private final SerialPort port;
    private final InstantSource clock;
    private final byte[] buffer = new byte[LARGEST_READ];
    private final Rhythm rhythm = new Rhythm();
    private boolean isAsked;
    private int waitMillis = FIRST_WAIT_MILLIS;
    private long lastReadNanos = System.nanoTime() - SAME_BURST_NANOS;
    private volatile boolean closed;

    SerialLink(String place, SerialPort port, InstantSource clock) {
        this.place = place;
        this.port = port;
        this.clock = clock;
        ProcessEnd.watch();
    }

    @Override
    public Optional<Arrival> read() throws LinkException, InterruptedException {
        int count = foretold();
        if (count == 0) count = waitedFor();
        return Optional.of(new Arrival(clock.instant(), Arrays.copyOf(buffer, count)));
    }

    /** Sleeps until a line that keeps time is whole; how many bytes, 0 where it has to be waited for after all. */
    private int foretold() throws InterruptedException {
        OptionalLong next = rhythm.next();
        if (isAsked || closed || next.isEmpty()) return 0;
        long nanos = next.getAsLong() + TimeUnit.MILLISECONDS.toNanos(waitMillis) - System.nanoTime();
        if (nanos > 0) TimeUnit.NANOSECONDS.sleep(nanos);
        int count = ready(0);
        if (count > 0) rhythm.came();
        return count;
    }

    private int waitedFor() throws LinkException, InterruptedException {
        int count = closed ? -1 : port.readBytes(buffer, buffer.length);
        if (count < 0) awaitCloseAtTheEnd();
        if (count < 0) throw gone();
        if (count == 0) {
            rhythm.silence();
            return 0;
        }
        long begun = System.nanoTime();
        boolean cutInTwo = begun - lastReadNanos < SAME_BURST_NANOS;
        if (cutInTwo) waitMillis = Math.min(waitMillis + WAIT_STEP_MILLIS, LONGEST_WAIT_MILLIS);
        else rhythm.begun(begun);
        Thread.sleep(waitMillis);
        return count + ready(count);
    }

    /** Takes what is there without waiting; how many bytes. A port that has gone says so at the next read. */
    private int ready(int start) {
        int ready = closed ? 0 : Math.min(port.bytesAvailable(), buffer.length - start);
        int count = ready > 0 ? port.readBytes(buffer, ready, start) : 0;
        lastReadNanos = System.nanoTime();
        return Math.max(count, 0);
    }

    @Override
    public void write(byte[] bytes) throws LinkException {
        isAsked = true;
        boolean written = !closed && port.writeBytes(bytes, bytes.length) >= 0;
        if (!written && !ProcessEnd.isNear()) throw gone();
    }

    @Override
    public void tune(LineSettings line) throws LinkException {
        if (closed) throw gone();
        // Only the next read tells whether the port still works: a pseudo-terminal refuses some settings and works.
        SerialSource.set(port, line);
        port.flushIOBuffers();
    }

    /** The library has closed the port under a session that is still being ended: no news, and nothing to tell of. */
    private void awaitCloseAtTheEnd() throws InterruptedException {
        while (ProcessEnd.isNear() && !closed) Thread.sleep(WAIT_STEP_MILLIS);
    }

    private LinkException gone() {
        if (closed) return PortTrouble.closed(place);
        close();
        return PortTrouble.gone(place);
    }

    @Override
    public void close() {
        closed = true;
        port.closePort();
    }
}
