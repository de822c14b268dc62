package fifthform.monitor.view;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.logging.Logger;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;

/** Starts JavaFX with one first window. Further windows are opened from within that one. */
public final class FxStart {
    /** Held for good: the log manager keeps loggers only weakly, and the filter would go with this one. */
    private static final Logger JAVAFX = Logger.getLogger("javafx");

    /** What a window is made of, in the order in which it is needed. */
    private static final List<String> SOON = List.of(
            "com.sun.javafx.tk.quantum.QuantumToolkit",
            "javafx.scene.Scene",
            "javafx.stage.Stage",
            "javafx.scene.control.Button",
            "javafx.scene.canvas.Canvas",
            "javafx.scene.text.Text",
            "com.sun.javafx.text.PrismTextLayout",
            "javafx.scene.shape.SVGPath",
            "javafx.css.CssParser",
            "com.sun.javafx.css.StyleManager",
            "com.sun.javafx.scene.control.skin.Utils",
            "javafx.scene.control.skin.ButtonSkin",
            "eu.hansolo.tilesfx.TileBuilder",
            "eu.hansolo.tilesfx.skins.NumberTileSkin");

    private FxStart() {}

    /**
     * Begins to load what a window is made of while the caller does something else; returns at once. Nothing is started, and
     * what is missing shows when the window is opened.
     */
    public static void warmUp() {
        Thread warm = new Thread(FxStart::load, "warm-up");
        warm.setDaemon(true);
        warm.start();
    }

    private static void load() {
        for (String name : SOON) {
            try {
                Class.forName(name, false, FxStart.class.getClassLoader()).getMethods();
            } catch (ClassNotFoundException | LinkageError missing) {
                return;
            }
        }
    }

    /** JavaFX at work, with its first window; empty until something was asked in it. */
    private static final AtomicReference<Optional<Running>> RUNNING = new AtomicReference<>(Optional.empty());

    /** @param over completed when the last window is closed, with why there was none */
    private record Running(Stage stage, CompletableFuture<Optional<String>> over) {}

    /**
     * What came of asking.
     *
     * @param refused why there is no window
     * @param answer empty where the window was closed instead
     */
    public record Asked<T>(Optional<String> refused, Optional<T> answer) {
        public Asked {
            Objects.requireNonNull(refused, "refused");
            Objects.requireNonNull(answer, "answer");
        }
    }

    /**
     * Has {@code fill} build the first window, and shows it until the last window is closed. Blocks. Can be called once
     * in the life of a process, since JavaFX starts once; after {@link #ask} it fills the window that stands already.
     *
     * @param fill fills and shows the stage, on the FX thread
     * @return why there is no window; empty where there was one
     */
    public static Optional<String> open(Consumer<Stage> fill) {
        Optional<Running> running = RUNNING.get();
        if (running.isEmpty()) return launch(fill);
        Running asked = running.get();
        Platform.runLater(() -> {
            try {
                fill.accept(asked.stage());
            } catch (RuntimeException | LinkageError fault) {
                asked.over().complete(Optional.of(reason(fault)));
                asked.stage().close();
            }
        });
        return asked.over().join();
    }

    /**
     * Asks in the first window and leaves it standing for {@link #open}. Blocks until there is an answer or no window. May be
     * called again.
     *
     * @param fill fills and shows the stage, on the FX thread, and hands over the answer
     */
    public static <T> Asked<T> ask(BiConsumer<Stage, Consumer<T>> fill) {
        CompletableFuture<Asked<T>> asked = new CompletableFuture<>();
        Consumer<Stage> filled = stage ->
                fill.accept(stage, answer -> asked.complete(new Asked<>(Optional.empty(), Optional.of(answer))));
        Optional<Running> running = RUNNING.get();
        CompletableFuture<Optional<String>> over = running.map(Running::over).orElseGet(CompletableFuture::new);
        over.thenAccept(why -> asked.complete(new Asked<>(why, Optional.empty())));
        if (running.isPresent()) {
            Platform.runLater(() -> filled.accept(running.get().stage()));
        } else {
            Consumer<Stage> first = stage -> {
                RUNNING.set(Optional.of(new Running(stage, over)));
                filled.accept(stage);
            };
            // Not a daemon: whoever asked waits for its end.
            new Thread(() -> over.complete(launch(first)), "window").start();
        }
        return asked.join();
    }

    /** Closes the window that stands for {@link #open}, where it will not be opened. */
    public static void leave() {
        RUNNING.get().ifPresent(running -> {
            if (!running.over().isDone()) Platform.runLater(running.stage()::close);
        });
    }

    /** A window of somebody else's, where JavaFX runs already: what is asked and opened stands in it until it is closed. */
    static void lend(Stage stage) {
        CompletableFuture<Optional<String>> over = new CompletableFuture<>();
        stage.showingProperty().addListener((property, was, is) -> {
            if (was) over.complete(Optional.empty());
        });
        RUNNING.set(Optional.of(new Running(stage, over)));
    }

    /** Back to where JavaFX has not been started by us. */
    static void takeBack() {
        RUNNING.set(Optional.empty());
    }

    private static Optional<String> launch(Consumer<Stage> fill) {
        quietOneWarning();
        Starter.FILL.set(fill);
        try {
            Application.launch(Starter.class);
        } catch (Throwable refused) {
            return Optional.of(reason(refused));
        }
        return Optional.empty();
    }

    /** Whether the first window has been opened. May be asked on any thread. */
    public static boolean opened() {
        return Starter.opened;
    }

    /** JavaFX warns that it was loaded from the class path, which is what we mean to do. Only that line is held back. */
    private static void quietOneWarning() {
        JAVAFX.setFilter(entry -> !String.valueOf(entry.getMessage()).startsWith("Unsupported JavaFX configuration"));
    }

    /** The deepest cause says most: no display, no GTK, no fonts. */
    static String reason(Throwable refused) {
        Throwable deepest = refused;
        while (deepest.getCause() != null && deepest.getCause() != deepest) deepest = deepest.getCause();
        String words = deepest.getMessage();
        return words == null || words.isBlank()
                ? deepest.getClass().getSimpleName()
                : words.lines().findFirst().orElse(words);
    }

    /** Public only because JavaFX makes it by reflection. */
    public static final class Starter extends Application {
        private static final AtomicReference<Consumer<Stage>> FILL = new AtomicReference<>();

        private static volatile boolean opened;

        /** Called by JavaFX. */
        public Starter() {
            super();
        }

        @Override
        public void start(Stage stage) {
            FILL.get().accept(stage);
            opened = true;
        }
    }
}
