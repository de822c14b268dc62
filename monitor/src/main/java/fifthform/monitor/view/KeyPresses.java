package fifthform.monitor.view;

import fifthform.monitor.model.Key;
import fifthform.monitor.model.ScreenFeed.CharTaker;
import java.util.EnumSet;
import java.util.Set;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * Turns what is typed into keys, wherever the focus is. Held keys count once. Space always means <em>seen</em>, also
 * on a button reached with Tab; Enter presses such a button, and means <em>step done</em> everywhere else.
 */
final class KeyPresses {
    private final Scene scene;
    private final CharTaker letters;
    private final Consumer<Key> keys;
    private final Set<KeyCode> down = EnumSet.noneOf(KeyCode.class);
    private boolean repeated;

    private KeyPresses(Scene scene, CharTaker letters, Consumer<Key> keys) {
        this.scene = scene;
        this.letters = letters;
        this.keys = keys;
    }

    static void listen(Scene scene, CharTaker letters, Consumer<Key> keys) {
        KeyPresses presses = new KeyPresses(scene, letters, keys);
        scene.addEventFilter(KeyEvent.KEY_PRESSED, presses::pressed);
        scene.addEventFilter(KeyEvent.KEY_RELEASED, presses::released);
        scene.addEventFilter(KeyEvent.KEY_TYPED, presses::typed);
        // A key let go while another window has the focus is never reported as released.
        scene.windowProperty().addListener((property, before, window) -> {
            if (window != null) window.focusedProperty().addListener((focus, had, has) -> presses.down.clear());
        });
    }

    private void pressed(KeyEvent event) {
        repeated = !down.add(event.getCode()) && event.getCode() != KeyCode.UNDEFINED;
        if (event.getCode() == KeyCode.SPACE || event.getCode() == KeyCode.ENTER) event.consume();
    }

    private void released(KeyEvent event) {
        down.remove(event.getCode());
        if (event.getCode() == KeyCode.SPACE || event.getCode() == KeyCode.ENTER) event.consume();
    }

    private void typed(KeyEvent event) {
        boolean plain = !event.isControlDown() && !event.isAltDown() && !event.isMetaDown();
        if (!plain || event.getCharacter().length() != 1) return;
        event.consume();
        if (repeated) return;
        if (letters.takes(event.getCharacter().charAt(0))) return;
        Key.typed(event.getCharacter().charAt(0)).ifPresent(this::take);
    }

    private void take(Key key) {
        Node focused = scene.getFocusOwner();
        if (key == Key.STEP_DONE && focused instanceof Button button && button.isFocusVisible()) button.fire();
        else keys.accept(key);
    }
}
