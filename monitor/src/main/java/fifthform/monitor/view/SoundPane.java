package fifthform.monitor.view;

import fifthform.monitor.settings.Hearing;
import fifthform.monitor.settings.Volume;
import fifthform.monitor.setup.SettingTable;
import fifthform.monitor.setup.SettingWords;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.sound.SoundTrial;
import fifthform.monitor.texts.SetupText;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.stage.Window;

/** How loud, and whether it is heard where it counts. */
final class SoundPane extends SetupPane {
    private final SettingRow volume;
    private final Label screenOnly = DeskParts.words(SetupText.SOUND_SCREEN_ONLY.say());
    private final Label answer = DeskParts.words("");
    private final Button play;
    private Optional<Thread> player = Optional.empty();
    private boolean stopped;

    /** @param trial plays the urgent sound and says why it was not heard; called on a thread of its own, whose
     *     interruption ends it */
    SoundPane(SetupDesk desk, Runnable changed, Function<Volume, Optional<String>> trial) {
        super(desk, changed);
        volume = new SettingRow(desk, SettingTable.VOLUME, changed);
        play = DeskParts.button("sound-play", SetupText.SOUND_PLAY, () -> play(trial));
        answer.setId("sound-answer");
        Label question = DeskParts.words(SetupText.SOUND_QUESTION.say());
        question.getStyleClass().add("strong");
        getChildren().addAll(heading(SetupText.SOUND_TITLE), volume, screenOnly);
        getChildren()
                .addAll(
                        heading(SetupText.SOUND_TRIAL_TITLE),
                        DeskParts.words(SetupText.SOUND_TRIAL_WORDS.say(
                                SoundTrial.BEFORE_SECONDS, SoundTrial.EVERY_SECONDS, SoundTrial.TIMES)),
                        play,
                        question);
        getChildren()
                .addAll(
                        DeskParts.bar(
                                DeskParts.button("sound-yes", SetupText.SOUND_YES, () -> answered("yes")),
                                DeskParts.button("sound-no", SetupText.SOUND_NO, () -> answered("no"))),
                        answer);
        // Heard with the window gone, it would be taken for an alarm of the batch.
        sceneProperty()
                .flatMap(Scene::windowProperty)
                .flatMap(Window::showingProperty)
                .orElse(false)
                .addListener((property, was, is) -> {
                    if (!is) stop();
                });
        show();
    }

    private void stop() {
        stopped = true;
        player.ifPresent(Thread::interrupt);
    }

    private void answered(String word) {
        desk().set(SettingTable.HEARD, word);
        changed();
    }

    private void play(Function<Volume, Optional<String>> trial) {
        if (player.isPresent()) {
            stop();
            return;
        }
        stopped = false;
        Volume asked = desk().settings().volume();
        play.setText(SetupText.SOUND_STOP.say());
        say(SetupText.SOUND_PLAYING.say(SoundTrial.BEFORE_SECONDS));
        Thread going = new Thread(
                () -> {
                    Optional<String> unheard = trial.apply(asked);
                    Platform.runLater(() -> {
                        player = Optional.empty();
                        play.setText(SetupText.SOUND_PLAY.say());
                        say(unheard.orElseGet(
                                () -> (stopped ? SetupText.SOUND_STOPPED : SetupText.SOUND_PLAYED).say()));
                    });
                },
                "sound-trial");
        player = Optional.of(going);
        going.setDaemon(true);
        going.start();
    }

    @Override
    void show() {
        volume.show();
        shown(screenOnly, !desk().settings().volume().isHeard());
        answer.setText(desk().settings().hearing().map(this::words).orElseGet(SetupText.SOUND_NEVER::say));
    }

    private String words(Hearing hearing) {
        String day = hearing.at().atZone(ZoneId.systemDefault()).toLocalDate().toString();
        String loudness = SettingWords.of(hearing.volume().word());
        String said = (hearing.heard() ? SetupText.SOUND_HEARD : SetupText.SOUND_NOT_HEARD).say(day, loudness);
        return hearing.volume() == desk().settings().volume() ? said : said + " " + SetupText.SOUND_OTHER_VOLUME.say();
    }
}
