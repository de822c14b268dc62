package fifthform.monitor.view;

import fifthform.monitor.chart.Typeface;
import fifthform.monitor.model.Key;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.texts.ViewText;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
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

    /** Largest words, what is left free at both their sides, and the key's own letters; units. */
    private static final double WORD = 20;

    private static final double PADDING = 6;
    private static final double CAP = 24;

    /** Least width of a key, units: 15 mm on a laptop of 15.6 inches. */
    private static final double FINGER = 70;

    private final Map<Key, KeyButton> buttons = new EnumMap<>(Key.class);

    KeyRow(Consumer<Key> pressed, KeyMap assigned) {
        for (Key key : Key.values()) {
            KeyButton button = new KeyButton(key, assigned.cap(key), pressed);
            buttons.put(key, button);
            getChildren().add(button);
        }
    }

    /** One size of words for all keys: each is as wide as its words need, and never less than a wet finger needs. */
    void lay(WatchPicture picture, Box box, double u) {
        List<KeyButton> shown = new ArrayList<>();
        for (KeyButton button : buttons.values()) {
            button.setVisible(picture.isInTheRow(button.key));
            if (button.isVisible()) shown.add(button);
        }
        double room = box.width() - GAP * u * (shown.size() - 1);
        double size = WORD * u;
        while (needs(shown, size, u) > room && size > u) size *= 0.98;
        double spare = (room - needs(shown, size, u)) / shown.size();
        double x = box.x();
        for (KeyButton button : shown) {
            double wide = button.needs(size, u) + spare;
            button.lay(new Box(x, box.y(), wide, box.height()), size, u);
            x += wide + GAP * u;
        }
    }

    private static double needs(List<KeyButton> shown, double size, double u) {
        return shown.stream().mapToDouble(button -> button.needs(size, u)).sum();
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

        double needs(double size, double u) {
            double inset = 3 + 2 * u;
            double wide = Math.max(
                    Words.widthOf(key.word(), Typeface.REGULAR, size), Words.widthOf(printed, Typeface.BOLD, CAP * u));
            return Math.max(FINGER * u, 1.02 * wide + 2 * (inset + PADDING * u));
        }

        void lay(Box box, double size, double u) {
            double inset = 3 + 2 * u;
            double wide = box.width() - 2 * inset;
            double high = box.height() - 2 * inset;
            face.setMinSize(wide, high);
            face.setPrefSize(wide, high);
            face.setMaxSize(wide, high);
            cap.place(printed, new Box(0, high * 0.06, wide, high * 0.42), CAP * u, 1, Words.Side.CENTRE);
            word.place(key.word(), new Box(0, high * 0.52, wide, high * 0.42), size, 1, Words.Side.CENTRE);
            resizeRelocate(box.x(), box.y(), box.width(), box.height());
        }
    }
}
