package fifthform.monitor.store;

import fifthform.curves.engine.Event;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.StoreTrouble;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.store.JournalThread.Order;
import fifthform.monitor.texts.FileText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Writes a session while it happens. Every method returns at once: the lines go to the thread {@code journal}, which
 * appends them in this order and has the disk take them every half second.
 */
public final class JournalWriter implements AutoCloseable {
    private final Path path;
    private final InputCodec inputs;
    private final EventCodec events;
    private final SessionTime time;
    private final InstantSource wall;
    private final JournalThread body;
    private final Thread thread;
    private final SessionLock lock;
    private final Pace pace;

    private JsonLine summary = new JsonLine();
    private boolean closed;

    JournalWriter(
            Path path,
            JournalFile file,
            SessionLock lock,
            Instant start,
            CheckedLines lines,
            InstantSource wall,
            Consumer<StoreTrouble.What> trouble,
            Pace pace) {
        this.path = path;
        this.lock = lock;
        this.inputs = new InputCodec(start);
        this.events = new EventCodec(start);
        this.time = new SessionTime(start);
        this.wall = Objects.requireNonNull(wall, "wall");
        this.pace = pace;
        this.body = new JournalThread(file, lines, wall, new StoreHealth(trouble), pace);
        this.thread = new Thread(body, "journal");
        // The session closes the journal before it ends; a fault elsewhere must not keep the program alive for ever.
        thread.setDaemon(true);
        thread.start();
    }

    /**
     * Begins a session in a file that is empty or not there yet.
     *
     * @param file as {@link SessionFiles#reserve} gave it
     * @param header the first line
     * @param wall time of day, for check lines
     * @param trouble told how the journal fares, from any thread; must only put it in a queue
     * @throws StoreException the file cannot be written, is not empty or is held by another program
     */
    public static JournalWriter create(
            Path file, SessionHeader header, InstantSource wall, Consumer<StoreTrouble.What> trouble)
            throws StoreException {
        SessionLock lock = SessionLock.take(file);
        try {
            if (Files.exists(file) && Files.size(file) > 0) {
                lock.giveUp();
                throw new StoreException(
                        file.toString(), FileText.THERE_IS_A_SESSION_ALREADY.say(), FileText.START_AGAIN.say());
            }
            JournalWriter writer = new JournalWriter(
                    file, JournalFile.open(file), lock, header.start(), new CheckedLines(), wall, trouble, Pace.USUAL);
            writer.begin(header);
            return writer;
        } catch (IOException e) {
            lock.giveUp();
            throw StoreException.cannotOpen(file, e);
        }
    }

    /**
     * Goes on with a session that was cut off. What stands in the file stays as it is; a torn last line is ended first,
     * and a note marks the gap.
     *
     * @throws StoreException the file cannot be written or is held by another program
     */
    public static JournalWriter resume(Session session, InstantSource wall, Consumer<StoreTrouble.What> trouble)
            throws StoreException {
        SessionLock lock = SessionLock.take(session.file());
        try {
            JournalTail tail = JournalTail.of(session.file());
            JournalFile file = JournalFile.open(session.file());
            tail.mend(file);
            JournalWriter writer = new JournalWriter(
                    session.file(), file, lock, session.header().start(), tail.lines(), wall, trouble, Pace.USUAL);
            Instant now = wall.instant();
            Duration gap = Duration.between(session.lastAt(), now);
            writer.note(now, "resumed", FileText.NOTHING_WAS_RECORDED_FOR_S.say(SessionTime.text(gap)));
            return writer;
        } catch (IOException e) {
            lock.giveUp();
            throw StoreException.cannotOpen(session.file(), e);
        }
    }

    void begin(SessionHeader header) {
        line(header.line());
        force();
    }

    /** Where the session is kept. */
    public Path file() {
        return path;
    }

    /** Records an input; to be called before the engine takes it. */
    public void input(Recorded recorded) {
        line(inputs.write(recorded));
    }

    /**
     * Records what the maker is told.
     *
     * @param sequence of the input that led to it
     */
    public void event(long sequence, Event event) {
        line(events.write(sequence, event));
    }

    /**
     * Records a remark of the program.
     *
     * @param about one word, for example {@code clock}
     * @param text the remark
     */
    public void note(Instant at, String about, String text) {
        line(new JsonLine()
                .text(LineKind.KEY, LineKind.NOTE.letter)
                .raw(SessionTime.KEY, time.text(at))
                .text("about", about)
                .text("text", text)
                .end());
    }

    /** Has the disk take everything now and not at the next half second; returns at once all the same. */
    public void force() {
        body.give(Order.Kind.FORCE, "");
    }

    /** What the closing line will tell, as names with texts and numbers. */
    public void summary(JsonLine figures) {
        this.summary = Objects.requireNonNull(figures, "figures");
    }

    /**
     * Writes the closing line, waits until the disk has everything, and ends the thread. Does nothing the second time.
     *
     * @throws StoreException some lines could not be written; says where they are kept instead
     */
    @Override
    public void close() throws StoreException {
        if (closed) return;
        closed = true;
        line(new JsonLine()
                .text(LineKind.KEY, LineKind.CLOSING.letter)
                .text("wall", wall.instant().toString())
                .object("summary", summary)
                .end());
        try {
            end();
        } finally {
            unlock();
        }
    }

    private void unlock() throws StoreException {
        try {
            lock.close();
        } catch (IOException e) {
            throw StoreException.cannotOpen(path, e);
        }
    }

    private void line(String text) {
        body.give(Order.Kind.LINE, text);
    }

    private void end() throws StoreException {
        body.give(Order.Kind.END, "");
        boolean interrupted = false;
        // A retry may just have begun when patience ends, so some more than that is waited for.
        long until = System.nanoTime()
                + pace.patience().plus(pace.retry()).multipliedBy(2).toNanos();
        while (thread.isAlive() && System.nanoTime() - until < 0) {
            try {
                TimeUnit.NANOSECONDS.timedJoin(thread, Math.max(1, until - System.nanoTime()));
            } catch (InterruptedException e) {
                // Losing the end of a session is worse than being late: wait on, and tell the caller afterwards.
                interrupted = true;
            }
        }
        if (interrupted) Thread.currentThread().interrupt();
        if (thread.isAlive()) {
            throw new StoreException(
                    path.toString(), FileText.THE_DISK_DOES_NOT_ANSWER.say(), FileText.CHECK_THE_DISK.say());
        }
        rescue(body.leftOver());
    }

    private void rescue(byte[] leftOver) throws StoreException {
        if (leftOver.length == 0) return;
        String name = SessionFiles.name(path) + "-rest-";
        try {
            Path rest = Files.write(Files.createTempFile(name, ".jsonl"), leftOver);
            throw new StoreException(
                    path.toString(),
                    FileText.THE_END_IS_KEPT_ELSEWHERE.say(leftOver.length, rest),
                    FileText.APPEND_THAT_FILE.say());
        } catch (IOException e) {
            throw new StoreException(
                    path.toString(),
                    FileText.THE_END_WAS_REFUSED_TWICE.say(leftOver.length),
                    FileText.FREE_SPACE_WHAT_IS_WRITTEN_IS_WHOLE.say());
        }
    }
}
