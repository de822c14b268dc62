package fifthform.monitor.sound;

import fifthform.monitor.settings.Volume;
import fifthform.monitor.texts.SoundText;
import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.awt.Toolkit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/**
 * Plays calls one after another on a thread of its own, through one line that stays open so that a sound starts
 * within its short buffer. Without a sound device it says so and tries the platform's beep.
 */
public final class Speaker implements AutoCloseable {
    /** At most 50 ms lie between a request and the ear. */
    private static final int BUFFER_BYTES = 2 * Tones.SAMPLES_PER_SECOND / 20;

    private static final AudioFormat FORMAT = new AudioFormat(Tones.SAMPLES_PER_SECOND, 16, 1, true, false);

    /** Whether anything can be heard. */
    public enum State {
        SOUND(SoundText.SOUND),
        SCREEN_ONLY(SoundText.SCREEN_ONLY_NO_SOUND),
        NONE(SoundText.NO_SOUND_ON_THIS_COMPUTER);

        private final SoundText words;

        State(SoundText words) {
            this.words = words;
        }

        /** For the mark on the screen. */
        public String words() {
            return words.say();
        }
    }

    /** Where a line comes from; a test gives its own. */
    interface Lines {
        /** @throws IllegalArgumentException where there is no sound device, as JDK 17 does */
        SourceDataLine open() throws LineUnavailableException;
    }

    private final BlockingQueue<Call> calls = new ArrayBlockingQueue<>(8);
    private final Map<Call, byte[]> samples = new LinkedHashMap<>();
    private final Lines lines;
    private final Runnable beep;
    private final Volume volume;
    private final Thread thread;
    private volatile State state;
    private volatile boolean closing;

    /**
     * Opens the computer's sound; returns at once, whatever it finds.
     *
     * @param volume where it is the screen only, no line is opened and nothing beeps
     */
    public static Speaker open(Volume volume) {
        return volume.isHeard()
                ? new Speaker(Speaker::line, Speaker::beepOnce, volume)
                : new Speaker(Speaker::line, () -> {}, volume);
    }

    Speaker(Lines lines, Runnable beep, Volume volume) {
        this.lines = lines;
        this.beep = beep;
        this.volume = volume;
        thread = new Thread(this::run, "sound");
        thread.setDaemon(true);
        state = volume.isHeard() ? State.SOUND : State.SCREEN_ONLY;
        if (volume.isHeard()) thread.start();
    }

    /** Asks for a sound. Never waits: where eight sounds wait already, one more would only be late. */
    public void play(Call call) {
        calls.offer(call);
    }

    /** Whether anything can be heard, as far as the computer tells. */
    public State state() {
        return state;
    }

    /** Ends after the sound that is being played. */
    @Override
    public void close() {
        closing = true;
        thread.interrupt();
        try {
            thread.join(2000);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private void run() {
        // Here and not where the program starts: a tenth of a second that nobody has to wait for.
        for (Call call : Tones.all()) samples.put(call, Tones.pcm(call, volume.decibels()));
        try (SourceDataLine line = lines.open()) {
            line.start();
            while (!closing) {
                byte[] bytes = samples.get(calls.take());
                line.write(bytes, 0, bytes.length);
                // A full buffer is played at once; what is left of a short one is pushed out here.
                line.drain();
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        } catch (LineUnavailableException | RuntimeException none) {
            // No device, or one that failed in the middle: the mark on the screen must not go on saying that there is
            // sound.
            state = State.NONE;
            beepInstead();
        }
    }

    private void beepInstead() {
        try {
            while (!closing) {
                calls.take();
                beep.run();
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private static SourceDataLine line() throws LineUnavailableException {
        SourceDataLine line = AudioSystem.getSourceDataLine(FORMAT);
        line.open(FORMAT, BUFFER_BYTES);
        return line;
    }

    private static void beepOnce() {
        if (GraphicsEnvironment.isHeadless()) return;
        try {
            Toolkit.getDefaultToolkit().beep();
        } catch (HeadlessException | AWTError mute) {
            // There is nothing left to try; the screen shows the alarm and says that there is no sound.
        }
    }
}
