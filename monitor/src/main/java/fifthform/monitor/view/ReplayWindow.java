package fifthform.monitor.view;

import fifthform.monitor.chart.Paper;
import fifthform.monitor.chart.ReplayFiles;
import fifthform.monitor.chart.ReportPdf;
import fifthform.monitor.replay.ReplayDesk;
import fifthform.monitor.replay.ReplayDesk.Step;
import fifthform.monitor.replay.ReplayPicture;
import fifthform.monitor.report.Report;
import fifthform.monitor.texts.DeskText;
import fifthform.monitor.texts.ReplayText;
import fifthform.monitor.view.ListsPane.Tab;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import javafx.animation.AnimationTimer;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ListView;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;

/** The window around the Replay screen: its keys, its pulse, and the files it writes. */
public final class ReplayWindow {
    private static final long FRAME = TimeUnit.MILLISECONDS.toNanos(33);

    /** What goes on behind the scenes is looked at so often while nothing moves. */
    private static final long IDLE = TimeUnit.MILLISECONDS.toNanos(250);

    private static final Set<KeyCode> OF_A_LIST = Set.of(
            KeyCode.UP,
            KeyCode.DOWN,
            KeyCode.ENTER,
            KeyCode.HOME,
            KeyCode.END,
            KeyCode.PAGE_UP,
            KeyCode.PAGE_DOWN,
            KeyCode.DELETE,
            KeyCode.F2);

    private final ReplayDesk desk;
    private final ReplayScreen screen;
    private final Stage stage;
    private boolean acted = true;
    private long lastFrame;
    private long lastDrawn;

    private ReplayWindow(Stage stage, ReplayFeed feed, Theme theme) {
        this.stage = stage;
        desk = feed.desk();
        screen = new ReplayScreen(feed);
        screen.wear(theme);
    }

    /**
     * Shows the window until it is closed. Blocks. Can be called once in the life of a process, since JavaFX starts once.
     *
     * @return why there is no window; empty where there was one
     */
    public static Optional<String> open(ReplayFeed feed, Theme theme) {
        return FxStart.open(stage -> in(stage, feed, theme));
    }

    /** Opens a further window beside those that are open; the caller is on the FX thread. */
    public static void openFurther(ReplayFeed feed, Theme theme) {
        in(new Stage(), feed, theme);
    }

    /** Fills and shows a window; the caller is on the FX thread. */
    static ReplayWindow in(Stage stage, ReplayFeed feed, Theme theme) {
        ReplayWindow window = new ReplayWindow(stage, feed, theme);
        window.fill();
        return window;
    }

    private void fill() {
        Scene scene = DeskWindow.fill(stage, screen, DeskText.WINDOW_TITLE.say(DeskText.REPLAY.say()));
        scene.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        scene.addEventFilter(KeyEvent.KEY_TYPED, this::typed);
        stage.setOnHidden(event -> desk.close());
        pulse(System.nanoTime());
        stage.show();
        screen.focusTime();
        AnimationTimer timer = new AnimationTimer() {
            @Override
            public void handle(long now) {
                try {
                    pulse(System.nanoTime());
                } catch (RuntimeException fault) {
                    // The screen goes on; a fault of one picture must not end the looking.
                    desk.say(ReplayText.SAID_FAULT.say(FxStart.reason(fault)));
                }
            }
        };
        timer.start();
        stage.showingProperty().addListener((property, was, is) -> {
            if (!is) timer.stop();
        });
    }

    ReplayScreen screen() {
        return screen;
    }

    private void pulse(long now) {
        if (lastFrame != 0 && now - lastFrame < FRAME) return;
        boolean moves = desk.pulse(lastFrame == 0 ? 0 : now - lastFrame);
        lastFrame = now;
        if (!moves && !acted && now - lastDrawn < IDLE) return;
        acted = false;
        lastDrawn = now;
        screen.show(desk.picture(screen.columns()));
    }

    private void pressed(KeyEvent event) {
        Node focused = stage.getScene().getFocusOwner();
        acted = true;
        if (DeskWindow.takes(event, stage, screen)) return;
        if (DeskWindow.isWithControl(event) || focused instanceof TextInputControl) return;
        if (event.getCode() == KeyCode.ESCAPE) {
            screen.focusTime();
            return;
        }
        if (focused instanceof ButtonBase && event.getCode() == KeyCode.SPACE) return;
        if (focused instanceof ListView<?> && OF_A_LIST.contains(event.getCode())) return;
        if (isTaken(event)) event.consume();
    }

    private boolean isTaken(KeyEvent event) {
        Step step = event.isShiftDown() ? Step.LONG : Step.SHORT;
        switch (event.getCode()) {
            case SPACE -> desk.playOrPause();
            case LEFT -> desk.back(step);
            case RIGHT -> desk.ahead(step);
            case PAGE_UP -> desk.previousEvent();
            case PAGE_DOWN -> desk.nextEvent();
            case HOME -> desk.toStart();
            case END -> desk.toEnd();
            case UP -> desk.zoomIn();
            case DOWN -> desk.zoomOut();
            default -> {
                return false;
            }
        }
        return true;
    }

    private void typed(KeyEvent event) {
        Optional<Character> letter = DeskWindow.command(event, stage.getScene());
        if (letter.isEmpty()) return;
        acted = true;
        if (isTaken(letter.get())) event.consume();
    }

    private boolean isTaken(char letter) {
        switch (letter) {
            case '+' -> desk.faster();
            case '-', '–' -> desk.slower();
            case '0' -> desk.showWhole();
            case 'y' -> desk.fitHeight();
            case 'a' -> desk.setA();
            case 'b' -> desk.setB();
            case 'x' -> desk.dropCursors();
            case 'm' -> desk.mark();
            case 'n' -> screen.lists().write();
            case 'l' -> screen.enter(Tab.BESIDE);
            case 'j' -> desk.matchOtherwise();
            case 'k' -> desk.takeAway();
            case 'e' -> writeTable();
            case 'd' -> writeDrawing();
            case 'p' -> writeReport();
            case 't' -> screen.wear(screen.theme().other());
            case 'q' -> stage.close();
            default -> {
                int place = letter - '1';
                if (place < 0 || place >= Tab.values().length) return false;
                screen.enter(Tab.values()[place]);
            }
        }
        return true;
    }

    private void writeTable() {
        Path file = free(".csv");
        try (Writer to = Files.newBufferedWriter(file, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW)) {
            desk.writeTable(to);
            desk.say(ReplayText.SAID_WRITTEN.say(file.toString()));
        } catch (IOException e) {
            desk.say(ReplayText.SAID_NOT_WRITTEN.say(file.toString(), String.valueOf(e.getMessage())));
        }
    }

    private void writeDrawing() {
        Path file = free(".svg");
        try {
            ReplayPicture picture = desk.picture(1600);
            Files.writeString(file, ReplayFiles.svg(picture), StandardOpenOption.CREATE_NEW);
            desk.say(ReplayText.SAID_WRITTEN.say(file.toString()));
        } catch (IOException e) {
            desk.say(ReplayText.SAID_NOT_WRITTEN.say(file.toString(), String.valueOf(e.getMessage())));
        }
    }

    private void writeReport() {
        Path file = free(".pdf");
        try (OutputStream to = Files.newOutputStream(file, StandardOpenOption.CREATE_NEW)) {
            ReportPdf.write(new Report(desk).sheet(), Paper.A4, to);
            desk.say(ReplayText.SAID_PAGE_WRITTEN.say(file.toString()));
        } catch (IOException e) {
            desk.say(ReplayText.SAID_NOT_WRITTEN.say(file.toString(), String.valueOf(e.getMessage())));
        }
    }

    /** A name beside the session that nothing has yet. */
    private Path free(String ending) {
        Path file = desk.recording().file().resolveSibling(desk.exportName() + ending);
        for (int number = 2; Files.exists(file); number++)
            file = desk.recording().file().resolveSibling(desk.exportName() + "-" + number + ending);
        return file;
    }
}
