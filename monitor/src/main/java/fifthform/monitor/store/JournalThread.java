package fifthform.monitor.store;

import fifthform.curves.input.StoreTrouble.What;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * The body of the thread {@code journal}: takes lines from its queue and appends them, with a check line and a force
 * every half second. It never drops a line: what the disk refuses waits in memory and is tried again each second, from
 * the very byte at which the disk stopped.
 */
final class JournalThread implements Runnable {
    /** Below this much room a maker should look for more; the alarm's own figure (SPACE_LOW). */
    private static final long LOW_BYTES = 50_000_000;

    private static final long SPACE_EVERY_NANOS = TimeUnit.SECONDS.toNanos(10);
    private static final int MOST_ORDERS_AT_ONCE = 10_000;

    /** What the queue holds. */
    record Order(Kind kind, String line, long queuedNanos) {
        enum Kind {
            LINE,
            FORCE,
            END
        }
    }

    private final BlockingQueue<Order> orders = new LinkedBlockingQueue<>();
    private final Deque<ByteBuffer> unwritten = new ArrayDeque<>();
    private final JournalFile file;
    private final CheckedLines lines;
    private final InstantSource wall;
    private final StoreHealth health;
    private final Pace pace;

    private boolean ended;
    private boolean forceAsked;
    private boolean unforced;
    private boolean failing;
    private long retryNanos;
    private long checkedNanos = System.nanoTime();
    private long spaceNanos = System.nanoTime() - SPACE_EVERY_NANOS;
    /** When the oldest line that this thread holds was queued; 0 for none. */
    private volatile long oldestNanos;

    JournalThread(JournalFile file, CheckedLines lines, InstantSource wall, StoreHealth health, Pace pace) {
        this.file = file;
        this.lines = lines;
        this.wall = wall;
        this.health = health;
        this.pace = pace;
    }

    /** Called from other threads. */
    void give(Order.Kind kind, String line) {
        long now = System.nanoTime();
        orders.add(new Order(kind, line, now));
        if (now - oldestNanos(now) > pace.behind().toNanos()) health.begins(What.BEHIND);
    }

    private long oldestNanos(long now) {
        long held = oldestNanos;
        if (held != 0) return held;
        Order next = orders.peek();
        return next == null ? now : next.queuedNanos();
    }

    @Override
    public void run() {
        boolean interrupted = false;
        while (!ended) {
            try {
                takeOrders();
            } catch (InterruptedException e) {
                // Only closing ends this thread; whoever interrupts it must not make it lose a line.
                interrupted = true;
            }
            work();
        }
        finish();
        if (interrupted) Thread.currentThread().interrupt();
    }

    /** What could not be written before the end; to be asked when the thread has ended. */
    byte[] leftOver() {
        ByteArrayOutputStream left = new ByteArrayOutputStream();
        for (ByteBuffer bytes : unwritten) left.write(bytes.array(), bytes.position(), bytes.remaining());
        return left.toByteArray();
    }

    private void takeOrders() throws InterruptedException {
        long wait = pace.force().toNanos() - (System.nanoTime() - checkedNanos);
        Order first = orders.poll(Math.max(wait, 1), TimeUnit.NANOSECONDS);
        if (first == null) return;
        List<Order> batch = new ArrayList<>(List.of(first));
        orders.drainTo(batch, MOST_ORDERS_AT_ONCE);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (Order order : batch) {
            switch (order.kind()) {
                case LINE -> bytes.writeBytes(lines.line(order.line()));
                case FORCE -> forceAsked = true;
                case END -> ended = true;
            }
        }
        if (oldestNanos == 0) oldestNanos = first.queuedNanos();
        unwritten.add(ByteBuffer.wrap(bytes.toByteArray()));
    }

    private void work() {
        long now = System.nanoTime();
        if (now - checkedNanos >= pace.force().toNanos() || forceAsked || ended) {
            if (lines.unchecked() > 0) {
                unwritten.add(ByteBuffer.wrap(lines.check(wall.instant())));
                unforced = true;
            }
            checkedNanos = now;
            forceAsked = false;
        }
        if (!failing || now - retryNanos >= 0) writeAll(now);
        if (now - spaceNanos >= SPACE_EVERY_NANOS) lookAtSpace(now);
    }

    private void writeAll(long now) {
        try {
            while (!unwritten.isEmpty()) {
                ByteBuffer next = unwritten.getFirst();
                while (next.hasRemaining()) file.append(next);
                unwritten.removeFirst();
            }
            if (unforced) file.force();
            unforced = false;
            failing = false;
            oldestNanos = 0;
            health.ends(What.CANNOT_WRITE);
            health.ends(What.BEHIND);
        } catch (IOException e) {
            failing = true;
            retryNanos = now + pace.retry().toNanos();
            health.begins(What.CANNOT_WRITE);
        }
    }

    private void lookAtSpace(long now) {
        spaceNanos = now;
        try {
            if (file.usableBytes() < LOW_BYTES) health.begins(What.SPACE_LOW);
            else health.ends(What.SPACE_LOW);
        } catch (IOException e) {
            // A file system that does not tell its room is no trouble by itself; a failed write will be.
            health.ends(What.SPACE_LOW);
        }
    }

    private void finish() {
        long patientUntil = System.nanoTime() + pace.patience().toNanos();
        while (failing && System.nanoTime() - patientUntil < 0) {
            try {
                TimeUnit.NANOSECONDS.sleep(pace.retry().toNanos());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                patientUntil = System.nanoTime();
            }
            writeAll(System.nanoTime());
        }
        try {
            file.close();
        } catch (IOException e) {
            // Every byte was written and forced, or is left over and will be reported: nothing hangs on closing.
            failing = true;
        }
    }
}
