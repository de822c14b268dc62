package fifthform.monitor.view;

import fifthform.monitor.model.KeyMap;
import fifthform.monitor.model.WatchPicture;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.scene.Scene;

/** A Watch screen in a scene of a given size, used on the FX thread. */
final class OnScreen {
    private OnScreen() {}

    static <R> R at(int width, int height, Theme theme, WatchPicture picture, Function<WatchScreen, R> use)
            throws Exception {
        CompletableFuture<R> answer = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                WatchScreen screen = new WatchScreen(key -> {}, KeyMap.USUAL);
                screen.wear(theme);
                new Scene(screen, width, height);
                screen.show(picture);
                screen.applyCss();
                screen.layout();
                answer.complete(use.apply(screen));
            } catch (Throwable failed) {
                answer.completeExceptionally(failed);
            }
        });
        return answer.get(60, TimeUnit.SECONDS);
    }
}
