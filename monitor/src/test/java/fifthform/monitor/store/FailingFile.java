package fifthform.monitor.store;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/** A disk in memory that fills up, stalls and gives way as a test tells it. */
final class FailingFile implements JournalFile {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private long room = Long.MAX_VALUE;
    private long usable = Long.MAX_VALUE;
    private boolean stalled;
    private int forces;

    /** From now on that many more bytes fit. */
    synchronized void room(long roomBytes) {
        room = roomBytes;
    }

    synchronized void usable(long usableBytes) {
        usable = usableBytes;
    }

    synchronized void stall() {
        stalled = true;
    }

    synchronized void goOn() {
        stalled = false;
        notifyAll();
    }

    synchronized String text() {
        return bytes.toString(StandardCharsets.UTF_8);
    }

    synchronized int forces() {
        return forces;
    }

    @Override
    public synchronized void append(ByteBuffer from) throws IOException {
        while (stalled) {
            try {
                wait();
            } catch (InterruptedException e) {
                throw new IOException(e);
            }
        }
        if (room == 0) throw new IOException("No space left on device");
        int taken = (int) Math.min(room, from.remaining());
        byte[] some = new byte[taken];
        from.get(some);
        bytes.writeBytes(some);
        room -= taken;
    }

    @Override
    public synchronized void force() {
        forces++;
    }

    @Override
    public synchronized long usableBytes() {
        return usable;
    }

    @Override
    public void close() {}
}
