package fifthform.monitor.practice;

import fifthform.monitor.model.KeyMap;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Band;
import fifthform.monitor.model.WatchPicture.Direction;
import fifthform.monitor.model.WatchPicture.Kitchen;
import fifthform.monitor.model.WatchPicture.Notice;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.monitor.texts.PracticeText;
import java.util.List;
import java.util.Optional;

/** The Watch screen while somebody trains: the same picture, with the keys of training, and the debrief at its end. */
public final class TrainingPicture {
    private TrainingPicture() {}

    /** While the batch goes on. */
    public static WatchPicture during(WatchPicture picture) {
        return picture.with(
                Kitchen.TRAINING, picture.band(), picture.alarms(), picture.undo(), picture.banner(), Notice.STANDING);
    }

    /** Once it is over: where it ended in the band, the facts in the place of the notice. */
    public static WatchPicture after(WatchPicture picture, DebriefText debrief, KeyMap keys) {
        Band band = new Band(
                Tone.CUE, Direction.NONE, debrief.ended(), PracticeText.NEXT_TIME.say(debrief.advice()), false);
        String facts = String.join(" ", debrief.facts());
        return picture.with(
                Kitchen.TRAINING,
                band,
                List.of(),
                Optional.of(keys.fill(PracticeText.QUIT_CLOSES.say())),
                Optional.of(facts),
                Notice.STANDING);
    }
}
