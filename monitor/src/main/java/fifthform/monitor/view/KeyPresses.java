package fifthform.monitor.view;

import fifthform.monitor.model.Key;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.model.ScreenFeed.CharTaker;
import fifthform.monitor.settings.Stroke;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * Turns what is typed into keys, wherever the focus is. Held keys count once. Space means its act also on
 * a button reached with Tab; Enter presses such a button, and means its act everywhere else.
 */
final class KeyPresses {
    private final Scene scene;
    private final CharTaker letters;
    private final KeyMap assigned;
    private final Consumer<Key> keys;
    private final Set<KeyCode> down = EnumSet.noneOf(KeyCode.class);
    private boolean repeated;

    private KeyPresses(Scene scene, CharTaker letters, KeyMap assigned, Consumer<Key> keys) {
        this.scene = scene;
        this.letters = letters;
        this.assigned = assigned;
        this.keys = keys;
    }

    static void listen(Scene scene, CharTaker letters, KeyMap assigned, Consumer<Key> keys) {
        KeyPresses presses = new KeyPresses(scene, letters, assigned, keys);
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
        else untyped(event);
    }

    /** Keys that type no character mean something only where the maker gave them an act; else they move the focus. */
    private void untyped(KeyEvent event) {
        if (!isPlain(event)) return;
        Optional<Key> key = stroke(event.getCode()).flatMap(assigned::typed);
        if (key.isEmpty()) return;
        event.consume();
        if (!repeated) keys.accept(key.get());
    }

    /** The key by its name, where it is one of those that type no character. */
    static Optional<Stroke> stroke(KeyCode code) {
        return Stroke.named(code.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .filter(stroke -> !stroke.isTyped());
    }

    private static boolean isPlain(KeyEvent event) {
        return !event.isControlDown() && !event.isAltDown() && !event.isMetaDown();
    }

    private void released(KeyEvent event) {
        down.remove(event.getCode());
        if (event.getCode() == KeyCode.SPACE || event.getCode() == KeyCode.ENTER) event.consume();
    }

    private void typed(KeyEvent event) {
        if (!isPlain(event) || event.getCharacter().length() != 1) return;
        event.consume();
        if (repeated) return;
        if (letters.takes(event.getCharacter().charAt(0))) return;
        Stroke.typed(event.getCharacter().charAt(0)).ifPresent(this::take);
    }

    private void take(Stroke stroke) {
        Node focused = scene.getFocusOwner();
        if (stroke.equals(Stroke.ENTER) && focused instanceof Button button && button.isFocusVisible()) button.fire();
        else assigned.typed(stroke).ifPresent(keys);
    }
}
