package fifthform.monitor.view;

import java.util.Optional;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** What the windows read at a desk have in common: the size they open with, and the keys that mean the same in each. */
final class DeskWindow {
    private static final int SIZE_STEP_PERCENT = 25;

    private DeskWindow() {}

    /** A screen whose letters can be made larger. */
    interface Sized {
        /** The letters in percent of their usual size. */
        int percent();

        /** Makes the letters so large, 100 to 300 % of their usual size; what is outside counts as the nearest. */
        void scale(int percent);
    }

    /** Puts a screen into its window, which then fits a small laptop and any display that is there. */
    static Scene fill(Stage stage, Parent screen, String title) {
        Rectangle2D room = Screen.getPrimary().getVisualBounds();
        Scene scene = new Scene(screen, Math.min(1366, room.getWidth()), Math.min(768, room.getHeight()));
        stage.setTitle(title);
        stage.setMinWidth(640);
        stage.setMinHeight(400);
        stage.setScene(scene);
        return scene;
    }

    /** Whether a key is pressed together with one that makes it a command of the window. */
    static boolean isWithControl(KeyEvent event) {
        return event.isControlDown() || event.isMetaDown();
    }

    /** Takes Control with +, - and 0 for the size of letters and with W for closing, and F11 for the full screen. */
    static boolean takes(KeyEvent event, Stage stage, Sized screen) {
        if (!(isWithControl(event) ? sized(event.getCode(), stage, screen) : filled(event.getCode(), stage)))
            return false;
        event.consume();
        return true;
    }

    private static boolean sized(KeyCode code, Stage stage, Sized screen) {
        switch (code) {
            case PLUS, EQUALS, ADD -> screen.scale(screen.percent() + SIZE_STEP_PERCENT);
            case MINUS, SUBTRACT -> screen.scale(screen.percent() - SIZE_STEP_PERCENT);
            case DIGIT0, NUMPAD0 -> screen.scale(100);
            case W -> stage.close();
            default -> {
                return false;
            }
        }
        return true;
    }

    private static boolean filled(KeyCode code, Stage stage) {
        if (code != KeyCode.F11) return false;
        stage.setFullScreen(!stage.isFullScreen());
        return true;
    }

    /** The letter that was typed as a command, in lower case: into no field, and not as the press of a button. */
    static Optional<Character> command(KeyEvent event, Scene scene) {
        boolean plain = !event.isControlDown() && !event.isAltDown() && !event.isMetaDown();
        Node focused = scene.getFocusOwner();
        boolean pressing = focused instanceof ButtonBase && " ".equals(event.getCharacter());
        boolean writing = focused instanceof TextInputControl;
        if (!plain || pressing || writing || event.getCharacter().length() != 1) return Optional.empty();
        return Optional.of(Character.toLowerCase(event.getCharacter().charAt(0)));
    }
}
