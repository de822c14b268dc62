package fifthform.monitor.view;

import fifthform.monitor.model.Help;
import fifthform.monitor.model.Key;
import fifthform.monitor.model.ScreenFeed;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.monitor.settings.Motion;
import fifthform.monitor.settings.ScreenSizes;
import fifthform.monitor.texts.ViewText;
import fifthform.monitor.view.WatchScreen.Light;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** The window around the Watch screen. It pulls a picture at each pulse; nothing is ever pushed into it. */
public final class WatchWindow {
    private static final long FIGURES = TimeUnit.MILLISECONDS.toNanos(100);

    /** A reading that comes a little after the last picture is not kept waiting for the next beat. */
    private static final long NEWS = TimeUnit.MILLISECONDS.toNanos(50);

    private static final long CHARTS = TimeUnit.MILLISECONDS.toNanos(500);
    private static final long HALF_BLINK = TimeUnit.MILLISECONDS.toNanos(500);

    private final ScreenFeed feed;
    private final Motion motion;
    private final Pace figures = new Pace(FIGURES, NEWS);
    private final Pace charts = new Pace(CHARTS);
    private final AtomicReference<String> trouble = new AtomicReference<>("");
    private final WatchScreen screen;
    private Help help = Help.CLOSED;
    private Optional<FarWindow> far = Optional.empty();
    private long drawn = Long.MIN_VALUE;

    /**
     * How many windows there are.
     *
     * @param far real sizes and distances for a further one, for a display across the kitchen
     */
    public record Windows(Optional<ScreenSizes> far) {
        public static final Windows ONE = new Windows(Optional.empty());

        public static Windows withFar(ScreenSizes sizes) {
            return new Windows(Optional.of(sizes));
        }
    }

    private WatchWindow(ScreenFeed feed, Theme theme, Motion motion) {
        this.feed = feed;
        this.motion = motion;
        screen = new WatchScreen(this::pressed, feed.assigned());
        screen.wear(theme);
    }

    /**
     * Shows the window until the session is over. Blocks. Can be called once in the life of a process, since JavaFX
     * starts once.
     *
     * @return why there is no window, or no more, though the session goes on: then the caller takes the terminal;
     *     empty where the window did its work
     */
    public static Optional<String> open(ScreenFeed feed, Theme theme, Motion motion, Windows windows) {
        AtomicReference<WatchWindow> shown = new AtomicReference<>();
        Optional<String> refused = FxStart.open(stage -> {
            WatchWindow window = in(stage, feed, theme, motion, windows);
            shown.set(window);
            // What fails in laying out or in a key's own work is thrown past our pulse.
            Thread.currentThread().setUncaughtExceptionHandler((thread, fault) -> window.end(fault));
        });
        if (refused.isPresent()) return refused;
        return Optional.ofNullable(shown.get())
                .map(window -> window.trouble.get())
                .filter(words -> !words.isEmpty());
    }

    /** Builds a window's inside in {@code stage}; the caller is on the FX thread. */
    static WatchWindow in(Stage stage, ScreenFeed feed, Theme theme, Motion motion, Windows windows) {
        WatchWindow window = new WatchWindow(feed, theme, motion);
        window.fill(stage);
        if (windows.far().isPresent()) {
            FarWindow far = FarWindow.show(theme, windows.far().get(), feed.pictureNow());
            // Whichever window has the focus: a key means what it always means.
            KeyPresses.listen(far.scene(), feed.letters(), feed.assigned(), window::pressed);
            window.far = Optional.of(far);
        }
        return window;
    }

    private void fill(Stage stage) {
        Rectangle2D desk = Screen.getPrimary().getVisualBounds();
        Scene scene = new Scene(screen, Math.min(1366, desk.getWidth()), Math.min(768, desk.getHeight()));
        KeyPresses.listen(scene, feed.letters(), feed.assigned(), this::pressed);
        stage.setTitle("Fifth Form");
        stage.setMinWidth(640);
        stage.setMinHeight(400);
        stage.setFullScreenExitHint("");
        stage.setScene(scene);
        stage.setOnCloseRequest(event -> {
            event.consume();
            feed.closeRequested().run();
        });
        screen.setFocusTraversable(true);
        screen.requestFocus();
        pulse();
        stage.show();
        new AnimationTimer() {
            @Override
            public void handle(long now) {
                try {
                    pulse();
                } catch (RuntimeException | LinkageError | StackOverflowError fault) {
                    stop();
                    end(fault);
                }
                if (feed.finished().getAsBoolean()) {
                    stop();
                    far.ifPresent(FarWindow::close);
                    stage.close();
                }
            }
        }.start();
    }

    /** A fault in drawing must not freeze the screen in front of the maker: the caller goes on in the terminal. */
    private void end(Throwable fault) {
        trouble.set(ViewText.THE_WINDOW_FAILED.say(FxStart.reason(fault)));
        Platform.exit();
    }

    private void pulse() {
        long now = feed.nanoClock().getAsLong();
        boolean lit = motion == Motion.STILL || Math.floorMod(now / HALF_BLINK, 2) == 0;
        long published = feed.publishedNanos().getAsLong();
        if (figures.due(now, published != drawn)) {
            drawn = published;
            WatchPicture picture = help.over(feed.pictureNow(), feed.assigned());
            screen.showWords(picture);
            if (charts.due(now)) screen.showCharts(picture);
            boolean blinking = picture.band().blinking();
            boolean edge = blinking
                    && picture.band().tone() == Tone.URGENT
                    && feed.silent().getAsBoolean();
            screen.lightSymbol(lit || !blinking ? Light.ON : Light.OFF);
            far.ifPresent(window -> window.picture(picture, lit || !blinking));
            screen.lightEdge(edge && lit ? Light.ON : Light.OFF);
        }
    }

    private void pressed(Key key) {
        switch (key) {
            case THEME -> {
                screen.wear(screen.theme().other());
                far.ifPresent(window -> window.wear(screen.theme()));
            }
            case FULL_SCREEN -> toggleFullScreen();
            case WHY, HELP -> help = help.after(key);
            case SEEN,
                    STEP_DONE,
                    BOWL_MOVED,
                    COLD_WATER,
                    STIR,
                    SEED,
                    DRY,
                    MARK,
                    NOTE,
                    UNDO,
                    PROBE_OUT,
                    OTHER,
                    SET_ASIDE,
                    CHOCOLATE,
                    LET_GO,
                    EARLIER,
                    LATER,
                    NOW,
                    SLOWER,
                    FASTER,
                    QUIT -> {}
        }
        feed.keys().accept(key);
    }

    private void toggleFullScreen() {
        if (screen.getScene().getWindow() instanceof Stage stage) stage.setFullScreen(!stage.isFullScreen());
    }
}
