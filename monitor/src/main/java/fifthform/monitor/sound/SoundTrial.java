package fifthform.monitor.sound;

import fifthform.curves.alarm.Priority;
import fifthform.curves.alarm.Side;
import fifthform.monitor.settings.Volume;
import fifthform.monitor.texts.SoundText;
import java.util.Optional;

/** The urgent sound, to be listened for at the stove. */
public final class SoundTrial {
    /** To go to the stove, s. Own choice. */
    public static final int BEFORE_SECONDS = 10;

    /** Between two of them, s, as an urgent alarm repeats until it has been seen (design page). */
    public static final int EVERY_SECONDS = 3;

    /** So often that a fan, a tap and a pan have all been in between. Own choice. */
    public static final int TIMES = 10;

    /** For the line to open, and for a sound to end before the line is closed. */
    private static final int OPENING_MILLIS = 1500;

    private static final Call URGENT = Call.of(Priority.URGENT, Side.TOO_HOT);

    private SoundTrial() {}

    /** Waits; a test counts instead. */
    interface Pause {
        void millis(long millis) throws InterruptedException;
    }

    /**
     * Plays it once, at once, and returns when it is over.
     *
     * @return why nothing can be heard; empty where it was played
     */
    public static Optional<String> play(Volume volume) {
        return play(volume, 0, 1);
    }

    /**
     * Gives the maker time to go to the stove, and plays it again and again there. Returns when that is over, or when its
     * thread is interrupted.
     *
     * @return why nothing can be heard, told before anybody goes; empty where it was played
     */
    public static Optional<String> atTheStove(Volume volume) {
        return play(volume, BEFORE_SECONDS, TIMES);
    }

    private static Optional<String> play(Volume volume, int beforeSeconds, int times) {
        if (!volume.isHeard()) return Optional.of(SoundText.THE_VOLUME_IS_SCREEN_ONLY_SO.say());
        return play(Speaker.open(volume), beforeSeconds, times, Thread::sleep);
    }

    static Optional<String> play(Speaker speaker, int beforeSeconds, int times, Pause pause) {
        try (speaker) {
            pause.millis(OPENING_MILLIS);
            // Nobody goes to the stove for a sound that cannot come; the beep in its place is tried once.
            if (speaker.state() == Speaker.State.SOUND) pause.millis(1000L * beforeSeconds);
            speaker.play(URGENT);
            pause.millis(OPENING_MILLIS);
            for (int i = 1; i < times && speaker.state() == Speaker.State.SOUND; i++) {
                pause.millis(1000L * EVERY_SECONDS - OPENING_MILLIS);
                speaker.play(URGENT);
                pause.millis(OPENING_MILLIS);
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return speaker.state() == Speaker.State.NONE
                ? Optional.of(SoundText.THERE_IS.say(Speaker.State.NONE.words()))
                : Optional.empty();
    }
}
