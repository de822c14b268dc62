package fifthform.monitor.app;

import fifthform.curves.alarm.Priority;
import fifthform.curves.alarm.Side;
import fifthform.monitor.settings.Volume;
import fifthform.monitor.sound.Call;
import fifthform.monitor.sound.Speaker;
import java.util.Optional;

/** A sound beside a line, where there is one; for practice in a hurry and for scripts there is none. */
final class WarnSound implements AutoCloseable {
    private final Optional<Speaker> speaker;

    private WarnSound(Optional<Speaker> speaker) {
        this.speaker = speaker;
    }

    static WarnSound of(boolean wanted, Volume volume) {
        return new WarnSound(wanted ? Optional.of(Speaker.open(volume)) : Optional.empty());
    }

    /** Something is to be done. */
    void cue() {
        speaker.ifPresent(s -> s.play(Call.CUE));
    }

    /** Something is wrong. */
    void warn() {
        speaker.ifPresent(s -> s.play(Call.of(Priority.PROMPT, Side.NEITHER)));
    }

    @Override
    public void close() {
        speaker.ifPresent(Speaker::close);
    }
}
