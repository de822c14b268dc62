package fifthform.monitor.view;

import fifthform.monitor.notebook.BatchRow;
import fifthform.monitor.notebook.Finding;
import fifthform.monitor.notebook.Notebook;
import fifthform.monitor.notebook.NotebookDesk;
import fifthform.monitor.notebook.SmallCurve;
import fifthform.monitor.texts.DeskText;
import fifthform.monitor.texts.NotebookText;
import fifthform.monitor.view.NotebookScreen.Side;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ListView;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;

/** The window around the Notebook screen: its keys, and the one thread that reads behind it. */
public final class NotebookWindow implements NotebookScreen.Acts {
    /** So many rows are shown at once while thousands are read: each showing goes through all of them. */
    private static final int TAKEN_AT_ONCE = 40;

    private final NotebookDesk desk;
    private final Optional<Consumer<Path>> replay;
    private final Stage stage;
    private final NotebookScreen screen;
    private final AtomicBoolean closed = new AtomicBoolean();
    private final ExecutorService reader = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "notebook");
        thread.setDaemon(true);
        return thread;
    });

    private NotebookWindow(Stage stage, NotebookDesk desk, Theme theme, Optional<Consumer<Path>> replay) {
        this.stage = stage;
        this.desk = desk;
        this.replay = replay;
        screen = new NotebookScreen(desk, this, replay.isPresent());
        screen.wear(theme);
    }

    /**
     * Shows the window until it is closed. Blocks. Can be called once in the life of a process, since JavaFX starts once.
     *
     * @param replay opens a batch's replay, called on the FX thread; where there is none the command is shown
     * @return why there is no window; empty where there was one
     */
    public static Optional<String> open(NotebookDesk desk, Theme theme, Optional<Consumer<Path>> replay) {
        return FxStart.open(stage -> in(stage, desk, theme, replay));
    }

    /** Fills and shows a window; the caller is on the FX thread. */
    static NotebookWindow in(Stage stage, NotebookDesk desk, Theme theme, Optional<Consumer<Path>> replay) {
        NotebookWindow window = new NotebookWindow(stage, desk, theme, replay);
        window.fill();
        return window;
    }

    NotebookScreen screen() {
        return screen;
    }

    private void fill() {
        Scene scene = DeskWindow.fill(stage, screen, DeskText.WINDOW_TITLE.say(DeskText.NOTEBOOK.say()));
        scene.addEventFilter(KeyEvent.KEY_PRESSED, event -> guarded(() -> pressed(event)));
        scene.addEventFilter(KeyEvent.KEY_TYPED, event -> guarded(() -> typed(event)));
        stage.setOnHidden(event -> {
            closed.set(true);
            reader.shutdown();
        });
        // Batches are recorded and looked at by other programs too.
        stage.focusedProperty().addListener((property, was, is) -> {
            if (is) list();
        });
        screen.table().node().getSelectionModel().selectedItemProperty().addListener((property, was, is) -> finer(is));
        list();
        stage.show();
        screen.focusRows();
    }

    /** Lists the folder, shows what is known, and reads the rest behind. */
    private void list() {
        desk.open();
        screen.show();
        if (desk.unread() > 0 && !closed.get()) reader.execute(this::readOn);
        else find();
    }

    /** Behind the rows, since a session is gone through for it the first time. */
    private void find() {
        if (closed.get()) return;
        desk.findingsWanted()
                .ifPresent(kind -> reader.execute(() -> {
                    List<Finding> read = desk.readFindings(kind);
                    onScreen(() -> desk.takeFindings(kind, read));
                }));
    }

    private void readOn() {
        List<BatchRow> made = new ArrayList<>();
        Optional<String> trouble;
        try {
            trouble = desk.readOn(
                    row -> {
                        made.add(row);
                        if (made.size() >= TAKEN_AT_ONCE) hand(made);
                    },
                    closed::get);
        } catch (RuntimeException fault) {
            trouble = Optional.of(FxStart.reason(fault));
        }
        hand(made);
        onScreen(this::find);
        trouble.ifPresent(why -> onScreen(() -> desk.say(NotebookText.SAID_INDEX.say(why))));
    }

    private void hand(List<BatchRow> made) {
        List<BatchRow> rows = List.copyOf(made);
        made.clear();
        onScreen(() -> desk.take(rows));
    }

    private void onScreen(Runnable act) {
        Platform.runLater(() -> {
            if (closed.get()) return;
            act.run();
            screen.show();
        });
    }

    /** Reads a batch's curve as fine as a large drawing wants it. */
    private void finer(BatchRow row) {
        if (row == null || closed.get() || !desk.wantsLarge(row)) return;
        reader.execute(() -> {
            SmallCurve curve = Notebook.curve(row);
            onScreen(() -> desk.takeLarge(row, curve));
        });
    }

    @Override
    public void replay() {
        screen.table()
                .chosen()
                .ifPresent(row -> replay.ifPresentOrElse(open -> open.accept(row.file()), () -> {
                    screen.open(Side.BATCH);
                    screen.lookup("#replay-command").requestFocus();
                }));
    }

    @Override
    public void compare() {
        screen.table().chosen().ifPresent(desk::compare);
        screen.open(Side.COMPARED);
    }

    @Override
    public void look() {
        if (screen.table().chosen().filter(BatchRow::counts).isPresent()) screen.open(Side.LOOK);
    }

    @Override
    public void why() {
        Optional<BatchRow> chosen = screen.table().chosen().filter(BatchRow::counts);
        if (chosen.isEmpty()) return;
        BatchRow row = chosen.get();
        screen.why().begin(row);
        screen.open(Side.WHY);
        reader.execute(() -> {
            List<String> lines = desk.why(row);
            onScreen(() -> {
                if (screen.side() == Side.WHY) screen.why().tell(lines);
            });
        });
    }

    @Override
    public void page() {
        Optional<BatchRow> chosen = screen.table().chosen().filter(BatchRow::counts);
        if (chosen.isEmpty()) return;
        desk.say(NotebookText.SAID_PAGE_BEGUN.say(chosen.get().name()));
        screen.show();
        reader.execute(() -> {
            String said = BatchPage.write(chosen.get().file(), desk.units());
            onScreen(() -> desk.say(said));
        });
    }

    @Override
    public void putAway() {
        screen.table().chosen().ifPresent(desk::putAway);
        screen.show();
        screen.focusRows();
    }

    @Override
    public void bin() {
        screen.open(screen.side() == Side.BIN ? Side.BATCH : Side.BIN);
    }

    @Override
    public void filtered() {
        screen.show();
        find();
    }

    /** A fault in one act must not end the looking. */
    private void guarded(Runnable act) {
        try {
            act.run();
        } catch (RuntimeException fault) {
            desk.say(NotebookText.SAID_FAULT.say(FxStart.reason(fault)));
            screen.show();
        }
    }

    private void pressed(KeyEvent event) {
        Node focused = stage.getScene().getFocusOwner();
        if (DeskWindow.takes(event, stage, screen)) return;
        if (DeskWindow.isWithControl(event)) {
            if (event.getCode() != KeyCode.F) return;
            screen.filter().search().requestFocus();
            event.consume();
            return;
        }
        if (event.getCode() == KeyCode.F5) {
            list();
            event.consume();
            return;
        }
        if (event.getCode() == KeyCode.ESCAPE && !(focused instanceof ChoiceBox<?> box && box.isShowing())) {
            escape(focused);
            event.consume();
            return;
        }
        if (focused instanceof TextInputControl
                && event.getCode() == KeyCode.DOWN
                && focused == screen.filter().search()) {
            screen.focusRows();
            event.consume();
            return;
        }
        if (focused instanceof ListView<?> && event.getCode() == KeyCode.ENTER) {
            screen.restoreBinned();
            event.consume();
            return;
        }
        if (!(focused instanceof TableView<?>)) return;
        switch (event.getCode()) {
            case SPACE -> compare();
            case ENTER -> replay();
            case DELETE -> putAway();
            case LEFT -> screen.table().sideways(-1);
            case RIGHT -> screen.table().sideways(1);
            default -> {
                return;
            }
        }
        event.consume();
    }

    /** Out of a field or the side to the rows; from the rows to all of them. */
    private void escape(Node focused) {
        desk.say("");
        if (focused instanceof TableView<?> && screen.side() == Side.BATCH)
            screen.filter().showAll();
        else screen.open(Side.BATCH);
        screen.focusRows();
    }

    private void typed(KeyEvent event) {
        if (DeskWindow.command(event, stage.getScene()).map(this::isTaken).orElse(false)) event.consume();
    }

    private boolean isTaken(char letter) {
        switch (letter) {
            case 'f', '/' -> screen.filter().search().requestFocus();
            case 'c' -> screen.open(screen.side() == Side.COMPARED ? Side.BATCH : Side.COMPARED);
            case 'l' -> look();
            case 'b' -> bin();
            case 'w' -> why();
            case 'p' -> page();
            case 'u' -> {
                desk.undo();
                screen.show();
            }
            case 't' -> screen.wear(screen.theme().other());
            case 'q' -> stage.close();
            default -> {
                int place = letter - '1';
                if (place < 0 || place > 7) return false;
                screen.table().sortBy(place);
            }
        }
        return true;
    }
}
