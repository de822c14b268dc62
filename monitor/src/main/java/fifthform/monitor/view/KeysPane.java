package fifthform.monitor.view;

import fifthform.monitor.model.Key;
import fifthform.monitor.settings.Stroke;
import fifthform.monitor.setup.SettingTable;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.texts.SetupText;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;

/** The keys of Watch, each of which may be another one. */
final class KeysPane extends SetupPane {
    private final Map<Key, Button> keys = new EnumMap<>(Key.class);
    private final Map<Key, Button> usual = new EnumMap<>(Key.class);
    private Optional<Key> waiting = Optional.empty();

    KeysPane(SetupDesk desk, Runnable changed) {
        super(desk, changed);
        FlowPane grid = new FlowPane();
        grid.getStyleClass().add("keys-of");
        for (Key key : Key.values()) {
            Label word = new Label(key.word());
            word.getStyleClass().add("act");
            Button cap = DeskParts.button("set-" + SettingTable.KEY + key.id(), "", () -> begin(key));
            cap.getStyleClass().add("key");
            Button back = DeskParts.button("usual-" + SettingTable.KEY + key.id(), SetupText.USUAL, () -> {
                desk.setUsual(SettingTable.KEY + key.id());
                changed();
                keys.get(key).requestFocus();
            });
            keys.put(key, cap);
            usual.put(key, back);
            HBox one = new HBox(word, cap, back);
            one.getStyleClass().addAll("row", "key-of");
            grid.getChildren().add(one);
        }
        getChildren().addAll(heading(SetupText.KEYS_TITLE), DeskParts.words(SetupText.KEYS_WORDS.say()), grid);
        show();
    }

    private void begin(Key key) {
        waiting = Optional.of(key);
        show();
    }

    /** Whether the next key is meant for an act. */
    boolean isWaiting() {
        return waiting.isPresent();
    }

    /** Leaves all as it is. */
    void leave() {
        waiting = Optional.empty();
        show();
    }

    /** Takes the key that was pressed. */
    void take(Stroke stroke) {
        Key key = waiting.orElseThrow();
        waiting = Optional.empty();
        desk().set(SettingTable.KEY + key.id(), stroke.word());
        changed();
        keys.get(key).requestFocus();
    }

    @Override
    void show() {
        keys.forEach((key, button) -> {
            boolean waits = waiting.filter(key::equals).isPresent();
            String cap = waits ? SetupText.KEYS_PRESS.say() : desk().keys().cap(key);
            button.setText(cap);
            button.getStyleClass().remove("waiting");
            if (waits) button.getStyleClass().add("waiting");
            button.setAccessibleText(SetupText.ROW_SPOKEN.say(SetupText.WHAT_KEY.say(key.word()), cap));
            shown(usual.get(key), !desk().isUsual(SettingTable.KEY + key.id()));
            usual.get(key)
                    .setAccessibleText(SetupText.USUAL_SPOKEN.say(
                            SetupText.WHAT_KEY.say(key.word()), key.usual().cap()));
        });
    }
}
