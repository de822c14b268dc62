package fifthform.monitor.view;

import fifthform.monitor.settings.Stroke;
import fifthform.monitor.settings.Volume;
import fifthform.monitor.setup.SettingTable;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.texts.DeskText;
import fifthform.monitor.texts.SetupText;
import fifthform.monitor.view.SetupScreen.Section;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** The window around the Setup screen, and its keys. */
public final class SetupWindow {
    private final SetupDesk desk;
    private final Stage stage;
    private final SetupScreen screen;

    /** Whether the press that began the waiting for a key is over. */
    private boolean pressedAnew;

    private SetupWindow(Stage stage, SetupDesk desk, Function<Volume, Optional<String>> trial) {
        this.stage = stage;
        this.desk = desk;
        screen = new SetupScreen(desk, this::itsScreen, trial);
    }

    /**
     * Shows the window until it is closed. Blocks. Can be called once in the life of a process, since JavaFX starts once.
     *
     * @param trial plays the urgent sound and says why it was not heard; called on a thread of its own
     * @return why there is no window; empty where there was one
     */
    public static Optional<String> open(SetupDesk desk, Function<Volume, Optional<String>> trial) {
        return FxStart.open(stage -> in(stage, desk, trial));
    }

    /** Fills and shows a window; the caller is on the FX thread. */
    static SetupWindow in(Stage stage, SetupDesk desk, Function<Volume, Optional<String>> trial) {
        SetupWindow window = new SetupWindow(stage, desk, trial);
        window.fill();
        return window;
    }

    SetupScreen screen() {
        return screen;
    }

    private Screen itsScreen() {
        return Screen.getScreensForRectangle(stage.getX(), stage.getY(), 1, 1).stream()
                .findFirst()
                .orElse(Screen.getPrimary());
    }

    private void fill() {
        Scene scene = DeskWindow.fill(stage, screen, DeskText.WINDOW_TITLE.say(DeskText.SETUP.say()));
        scene.addEventFilter(KeyEvent.KEY_PRESSED, event -> guarded(() -> pressed(event)));
        scene.addEventFilter(KeyEvent.KEY_TYPED, event -> guarded(() -> typed(event)));
        // Settings are changed by other windows and commands too.
        stage.focusedProperty().addListener((property, was, is) -> {
            if (is) refresh();
        });
        stage.show();
        screen.open(Section.SCREEN);
    }

    private void refresh() {
        desk.refresh();
        screen.show();
    }

    /** A fault in one act must not end the window. */
    private void guarded(Runnable act) {
        try {
            act.run();
        } catch (RuntimeException fault) {
            desk.say(SetupText.SAID_FAULT.say(FxStart.reason(fault)));
            screen.show();
        }
    }

    private void pressed(KeyEvent event) {
        if (screen.keys().isWaiting()) {
            waited(event);
            return;
        }
        pressedAnew = false;
        if (DeskWindow.takes(event, stage, screen) || DeskWindow.isWithControl(event)) return;
        Node focused = stage.getScene().getFocusOwner();
        switch (event.getCode()) {
            case F5 -> refresh();
            case ESCAPE -> screen.sections().requestFocus();
            case ENTER -> {
                if (!(focused instanceof ButtonBase button)) return;
                button.fire();
            }
            default -> {
                return;
            }
        }
        event.consume();
    }

    /** The next press is a key for an act, whatever it means elsewhere. */
    private void waited(KeyEvent event) {
        pressedAnew = true;
        if (event.getCode() == KeyCode.ESCAPE) {
            screen.keys().leave();
            event.consume();
        } else if (!event.getCode().isModifierKey()) {
            KeyPresses.stroke(event.getCode()).ifPresent(screen.keys()::take);
            event.consume();
        }
    }

    private void typed(KeyEvent event) {
        if (event.getCharacter().length() != 1) return;
        char letter = event.getCharacter().charAt(0);
        if (screen.keys().isWaiting()) {
            if (pressedAnew) Stroke.typed(letter).ifPresent(screen.keys()::take);
            event.consume();
            return;
        }
        if (DeskWindow.command(event, stage.getScene()).map(this::isTaken).orElse(false)) event.consume();
    }

    private boolean isTaken(char letter) {
        switch (letter) {
            case 'u' -> desk.undo();
            case 'r' -> usual();
            case 't' ->
                desk.set(SettingTable.THEME, desk.value(SettingTable.THEME).equals("dark") ? "bright" : "dark");
            case 'q' -> {
                stage.close();
                return true;
            }
            default -> {
                int place = letter - '1';
                if (place < 0 || place >= Section.values().length) return false;
                screen.open(Section.values()[place]);
            }
        }
        screen.show();
        return true;
    }

    /** What has the focus gets its usual value back. */
    private void usual() {
        Node focused = stage.getScene().getFocusOwner();
        String id = focused == null || focused.getId() == null ? "" : focused.getId();
        if (id.startsWith("set-")) desk.setUsual(id.substring("set-".length()));
    }
}
