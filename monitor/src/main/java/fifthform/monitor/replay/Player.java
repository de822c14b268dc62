package fifthform.monitor.replay;

import java.util.OptionalDouble;

/** Where in the batch we are, and how fast that goes on. No clock: the time that passed is handed in. */
public final class Player {
    /** Seconds of the batch in a second of ours; the last stands for as fast as the computer can. */
    private static final int[] SPEEDS = {1, 2, 5, 10, 20, 50, 100};

    private static final int USUAL = 3;

    private final long endNanos;
    private long nanos;
    private int speed = USUAL;
    private boolean playing;

    Player(long endNanos) {
        this.endNanos = endNanos;
    }

    /** Now, ns since the session's start. */
    public long nanos() {
        return nanos;
    }

    public boolean isPlaying() {
        return playing;
    }

    /** Whether it goes as fast as the computer can. */
    public boolean isUnpaced() {
        return speed == SPEEDS.length;
    }

    /** How many times life; of no meaning where {@link #isUnpaced}. */
    public int speed() {
        return isUnpaced() ? SPEEDS[SPEEDS.length - 1] : SPEEDS[speed];
    }

    void seek(long to) {
        nanos = Math.max(0, Math.min(endNanos, to));
    }

    /** Goes on, or stops; at the end it begins anew. */
    void toggle() {
        playing = !playing;
        if (playing && nanos >= endNanos) nanos = 0;
    }

    void pause() {
        playing = false;
    }

    void faster() {
        speed = Math.min(SPEEDS.length, speed + 1);
    }

    /** The nearest pace that is not faster; empty for as fast as it can. */
    void pace(OptionalDouble timesLife) {
        speed = timesLife.isEmpty() ? SPEEDS.length : 0;
        while (speed + 1 < SPEEDS.length && SPEEDS[speed + 1] <= timesLife.orElse(0)) speed++;
    }

    void slower() {
        speed = Math.max(0, speed - 1);
    }

    /**
     * So much time has passed.
     *
     * @param passedNanos ns of ours
     * @param unpacedNanos how far to go where it goes as fast as it can, ns of the batch
     */
    void pass(long passedNanos, long unpacedNanos) {
        if (!playing) return;
        seek(nanos + (isUnpaced() ? unpacedNanos : Math.max(0, passedNanos) * speed()));
        if (nanos >= endNanos) playing = false;
    }
}
