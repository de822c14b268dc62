package fifthform.monitor.replay;

import fifthform.curves.engine.State;
import java.io.IOException;
import java.util.Objects;
import java.util.Optional;

/**
 * Works out the state at the moment that is looked at, on a thread of its own, so that no screen waits for it. Only the
 * newest wish counts.
 */
final class Moments implements Runnable {
    /**
     * What is known of a moment.
     *
     * @param nanos the moment, since the session's start
     * @param state what the engine knows then; empty where the second pass has not come so far
     * @param trouble why the file could not be read; empty where it could
     */
    record Answer(long nanos, Optional<State> state, String trouble) {
        Answer {
            Objects.requireNonNull(state, "state");
            Objects.requireNonNull(trouble, "trouble");
        }

        boolean isComputed() {
            return state.isPresent();
        }
    }

    private final Seeker seeker;
    private long wished = -1;
    private boolean isNew;
    private boolean stopped;
    private boolean inline;
    private volatile Answer answer = new Answer(-1, Optional.empty(), "");

    Moments(Seeker seeker) {
        this.seeker = seeker;
    }

    /** Asks for this moment; returns at once. */
    synchronized void wish(long nanos) {
        if (nanos == wished && answer.nanos() == nanos && answer.isComputed()) return;
        wished = nanos;
        if (inline) {
            answer = look(nanos);
            return;
        }
        isNew = true;
        notifyAll();
    }

    /** From now on each moment is worked out by whoever asks for it. */
    synchronized void inline() {
        inline = true;
        answer = look(Math.max(0, wished));
    }

    /** The newest answer there is. */
    Answer answer() {
        return answer;
    }

    synchronized void stop() {
        stopped = true;
        notifyAll();
    }

    @Override
    public void run() {
        try {
            long next = take();
            while (next >= 0) {
                answer = look(next);
                next = take();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private synchronized long take() throws InterruptedException {
        while (!isNew && !stopped) wait();
        isNew = false;
        return stopped ? -1 : wished;
    }

    private Answer look(long nanos) {
        try {
            return new Answer(nanos, seeker.at(nanos), "");
        } catch (IOException e) {
            return new Answer(nanos, Optional.empty(), String.valueOf(e.getMessage()));
        }
    }
}
