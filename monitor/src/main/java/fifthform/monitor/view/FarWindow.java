package fifthform.monitor.view;

import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.settings.ScreenSizes;
import fifthform.monitor.texts.LiveText;
import java.util.List;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** A further window for a display across the kitchen, full screen on a second screen where there is one. */
final class FarWindow {
    private final Stage stage = new Stage();
    private final FarScreen screen;

    private FarWindow(Theme theme, Screen on, ScreenSizes sizes) {
        screen = new FarScreen(theme, ScreenGuess.scale(on, sizes), sizes);
    }

    /** Shows it; closing it ends nothing but itself. */
    static FarWindow show(Theme theme, ScreenSizes sizes, WatchPicture picture) {
        List<Screen> screens = Screen.getScreens();
        Screen primary = Screen.getPrimary();
        Screen on = screens.stream()
                .filter(other -> !other.equals(primary))
                .findFirst()
                .orElse(primary);
        Rectangle2D desk = on.getVisualBounds();
        FarWindow window = new FarWindow(theme, on, sizes);
        Stage stage = window.stage;
        stage.setScene(new Scene(window.screen, desk.getWidth(), desk.getHeight()));
        stage.setTitle(LiveText.FAR_TITLE.say());
        stage.setX(desk.getMinX());
        stage.setY(desk.getMinY());
        stage.setFullScreenExitHint("");
        window.screen.show(picture);
        stage.show();
        // On the only screen there is it would cover the window with the keys.
        if (screens.size() > 1) stage.setFullScreen(true);
        else stage.toBack();
        return window;
    }

    void picture(WatchPicture picture, boolean lit) {
        if (!stage.isShowing()) return;
        screen.show(picture);
        screen.lightSymbol(lit);
    }

    void wear(Theme theme) {
        screen.wear(theme);
    }

    /** Where keys are pressed while it has the focus. */
    Scene scene() {
        return stage.getScene();
    }

    boolean isShowing() {
        return stage.isShowing();
    }

    void close() {
        stage.close();
    }
}
