package fifthform.monitor.view;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.logging.Logger;
import javafx.application.Application;
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

    /**
     * Has {@code fill} build the first window, and shows it until the last window is closed. Blocks. Can be called once
     * in the life of a process, since JavaFX starts once.
     *
     * @param fill fills and shows the stage, on the FX thread
     * @return why there is no window; empty where there was one
     */
    public static Optional<String> open(Consumer<Stage> fill) {
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
