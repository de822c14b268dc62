package fifthform.monitor.view;

import fifthform.monitor.model.KeyMap;
import fifthform.monitor.model.WatchPicture;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Scene;
import org.testfx.util.WaitForAsyncUtils;

/**
 * What stands on a screen, asked on the FX thread: read by another, a list of nodes changes while it is walked through,
 * and the test fails now and then for nothing that the program did.
 */
public final class OnScreen {
    /** Above what a busy computer needs; only a test that fails waits for it. */
    private static final Duration LONGEST = Duration.ofSeconds(60);

    private OnScreen() {}

    /** What {@code question} answers on the FX thread. */
    public static <R> R read(Supplier<R> question) {
        if (Platform.isFxApplicationThread()) return question.get();
        return CompletableFuture.supplyAsync(question, Platform::runLater)
                .orTimeout(LONGEST.toSeconds(), TimeUnit.SECONDS)
                .join();
    }

    /** Asks again and again until it is so, then lets what is waiting for the FX thread be done. */
    public static void until(BooleanSupplier isSo) {
        long latest = System.nanoTime() + LONGEST.toNanos();
        while (!read(isSo::getAsBoolean)) {
            if (System.nanoTime() > latest) throw new AssertionError("not so within " + LONGEST.toSeconds() + " s");
            WaitForAsyncUtils.sleep(20, TimeUnit.MILLISECONDS);
        }
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Words as they are compared: on one line, without the dots whose place a break may take. */
    static String plain(String words) {
        return words.replace('\n', ' ').replace(" ·", "");
    }

    /** A Watch screen in a scene of a given size, used on the FX thread. */
    static <R> R at(int width, int height, Theme theme, WatchPicture picture, Function<WatchScreen, R> use) {
        return read(() -> {
            WatchScreen screen = new WatchScreen(key -> {}, KeyMap.USUAL);
            screen.wear(theme);
            new Scene(screen, width, height);
            screen.show(picture);
            screen.applyCss();
            screen.layout();
            return use.apply(screen);
        });
    }
}
