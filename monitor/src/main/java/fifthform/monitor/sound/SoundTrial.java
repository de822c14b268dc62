package fifthform.monitor.sound;

import fifthform.curves.alarm.Priority;
import fifthform.curves.alarm.Side;
import fifthform.monitor.settings.Volume;
import fifthform.monitor.texts.SoundText;
import java.util.Optional;

/** The urgent sound, once, to be listened for at the stove. */
public final class SoundTrial {
    private SoundTrial() {}

    /**
     * Plays it and returns once it is over.
     *
     * @return why nothing can be heard; empty where it was played
     */
    public static Optional<String> play(Volume volume) {
        if (!volume.isHeard()) return Optional.of(SoundText.THE_VOLUME_IS_SCREEN_ONLY_SO.say());
        Speaker speaker = Speaker.open(volume);
        try (speaker) {
            speaker.play(Call.of(Priority.URGENT, Side.TOO_HOT));
            // The line needs a moment to open, and closing would cut the sound short.
            Thread.sleep(1500);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return speaker.state() == Speaker.State.NONE
                ? Optional.of(SoundText.THERE_IS.say(Speaker.State.NONE.words()))
                : Optional.empty();
    }
}
