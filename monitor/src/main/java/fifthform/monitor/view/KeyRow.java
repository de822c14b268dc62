package fifthform.monitor.view;

import fifthform.monitor.chart.Typeface;
import fifthform.monitor.model.Key;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.texts.ViewText;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.Group;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.layout.Pane;

/**
 * What the keys do, as a row of buttons that do it: the hint and the pointer's target are one thing, so they cannot
 * disagree.
 */
final class KeyRow extends Group {
    private static final double GAP = 8;

    private final Map<Key, KeyButton> buttons = new EnumMap<>(Key.class);

    KeyRow(Consumer<Key> pressed, KeyMap assigned) {
        for (Key key : Key.values()) {
            KeyButton button = new KeyButton(key, assigned.cap(key), pressed);
            buttons.put(key, button);
            getChildren().add(button);
        }
    }

    /** Keys of the maker's work are wider than those of the program. */
    private static double weight(Key key) {
        return switch (key) {
            case SEEN, STEP_DONE, BOWL_MOVED -> 1.45;
            case PROBE_OUT, CHOCOLATE, FULL_SCREEN, COLD_WATER -> 1.22;
            case MARK,
                    NOTE,
                    UNDO,
                    OTHER,
                    SET_ASIDE,
                    LET_GO,
                    IT_IS_THE_BOWL,
                    PROVED,
                    SLOWER,
                    FASTER,
                    THEME,
                    EARLIER,
                    LATER,
                    NOW,
                    WHY,
                    HELP,
                    QUIT,
                    STIR,
                    SEED,
                    DRY -> 1;
        };
    }

    void lay(WatchPicture picture, Box box, double u) {
        double weights = 0;
        int shown = 0;
        for (KeyButton button : buttons.values()) {
            button.setVisible(picture.isInTheRow(button.key));
            if (!button.isVisible()) continue;
            weights += weight(button.key);
            shown++;
        }
        double part = (box.width() - GAP * u * (shown - 1)) / weights;
        double x = box.x();
        for (KeyButton button : buttons.values()) {
            if (!button.isVisible()) continue;
            double wide = part * weight(button.key);
            button.lay(new Box(x, box.y(), wide, box.height()), u);
            x += wide + GAP * u;
        }
    }

    /** One key: its cap above, its word below. */
    private static final class KeyButton extends Button {
        private final Key key;
        private final String printed;
        private final Pane face = new Pane();
        private final Words cap = new Words(Typeface.BOLD);
        private final Words word = new Words(Typeface.REGULAR);

        KeyButton(Key key, String printed, Consumer<Key> pressed) {
            this.key = key;
            this.printed = printed;
            getStyleClass().setAll("key");
            setId("key-" + key.name().toLowerCase(Locale.ROOT));
            setManaged(false);
            setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
            face.getChildren().addAll(cap, word);
            setGraphic(face);
            setAccessibleText(ViewText.KEY_WITH_ITS_CAP.say(key.word(), printed));
            setOnAction(event -> pressed.accept(key));
        }

        void lay(Box box, double u) {
            double inset = 3 + 2 * u;
            double wide = box.width() - 2 * inset;
            double high = box.height() - 2 * inset;
            face.setMinSize(wide, high);
            face.setPrefSize(wide, high);
            face.setMaxSize(wide, high);
            cap.place(printed, new Box(0, high * 0.06, wide, high * 0.42), 24 * u, 1, Words.Side.CENTRE);
            word.place(key.word(), new Box(0, high * 0.52, wide, high * 0.42), 20 * u, 1, Words.Side.CENTRE);
            resizeRelocate(box.x(), box.y(), box.width(), box.height());
        }
    }
}
