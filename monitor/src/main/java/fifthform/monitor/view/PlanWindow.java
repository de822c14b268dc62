package fifthform.monitor.view;

import fifthform.monitor.plan.PlanDesk;
import fifthform.monitor.texts.DeskText;
import fifthform.monitor.texts.PlanText;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.print.PrinterJob;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ChoiceBox;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import javafx.stage.Stage;

/** The window around the plan's screen, and its keys. */
public final class PlanWindow implements PlanScreen.Acts {
    private static final double SCROLL_SHARE = 0.15;

    private final PlanDesk desk;
    private final Function<PlanDesk, String> watchLine;
    private final Stage stage;
    private final PlanScreen screen;

    private PlanWindow(Stage stage, PlanDesk desk, Theme theme, Function<PlanDesk, String> watchLine) {
        this.stage = stage;
        this.desk = desk;
        this.watchLine = watchLine;
        screen = new PlanScreen(desk, this);
        screen.wear(theme);
    }

    /**
     * Shows the window until it is closed. Blocks. Can be called once in the life of a process, since JavaFX starts once.
     *
     * @param watchLine what to type for the watching of what is planned
     * @return why there is no window; empty where there was one
     */
    public static Optional<String> open(PlanDesk desk, Theme theme, Function<PlanDesk, String> watchLine) {
        return FxStart.open(stage -> in(stage, desk, theme, watchLine));
    }

    /** Fills and shows a window, also from within another one; the caller is on the FX thread. */
    static PlanWindow in(Stage stage, PlanDesk desk, Theme theme, Function<PlanDesk, String> watchLine) {
        PlanWindow window = new PlanWindow(stage, desk, theme, watchLine);
        window.fill();
        return window;
    }

    PlanScreen screen() {
        return screen;
    }

    private void fill() {
        Scene scene = DeskWindow.fill(stage, screen, DeskText.WINDOW_TITLE.say(PlanText.TITLE.say()));
        scene.addEventFilter(KeyEvent.KEY_PRESSED, event -> guarded(() -> pressed(event)));
        scene.addEventFilter(KeyEvent.KEY_TYPED, event -> guarded(() -> typed(event)));
        stage.show();
        screen.form().amount().requestFocus();
    }

    @Override
    public void why() {
        desk.toggleWhy();
        screen.show();
        screen.figures().requestFocus();
        if (desk.showsWhy()) screen.reachWhy();
    }

    @Override
    public void save() {
        desk.saveCard();
        screen.show();
    }

    @Override
    public void print() {
        desk.say(desk.card().map(card -> printed(card.lines())).orElseGet(PlanText.SAID_NO_PLAN::say));
        screen.show();
    }

    private String printed(List<String> lines) {
        PrinterJob job = PrinterJob.createPrinterJob();
        if (job == null) return PlanText.SAID_NO_PRINTER.say();
        if (!job.showPrintDialog(stage)) return "";
        Text words = new Text(String.join("\n", lines));
        words.setFont(Font.font(12));
        boolean done = job.printPage(new TextFlow(words)) && job.endJob();
        return done
                ? PlanText.SAID_PRINTED.say()
                : PlanText.SAID_FAULT.say(job.getJobStatus().toString());
    }

    @Override
    public void watch() {
        desk.say(
                desk.plan().isPresent() ? PlanText.SAID_WATCH.say(watchLine.apply(desk)) : PlanText.SAID_NO_PLAN.say());
        screen.show();
    }

    /** A fault in one act must not end the planning. */
    private void guarded(Runnable act) {
        try {
            act.run();
        } catch (RuntimeException fault) {
            desk.say(PlanText.SAID_FAULT.say(FxStart.reason(fault)));
            screen.show();
        }
    }

    private void pressed(KeyEvent event) {
        Node focused = stage.getScene().getFocusOwner();
        boolean choosing = focused instanceof ChoiceBox<?> box && box.isShowing();
        if (DeskWindow.takes(event, stage, screen)) return;
        if (DeskWindow.isWithControl(event)) {
            withControl(event);
        } else if (event.getCode() == KeyCode.ESCAPE && !choosing) {
            screen.reachPlan();
            event.consume();
        } else if (focused == screen.figures() && scrolled(event.getCode())) {
            event.consume();
        }
    }

    private boolean scrolled(KeyCode code) {
        double at = screen.figures().getVvalue();
        switch (code) {
            case DOWN -> screen.figures().setVvalue(Math.min(1, at + SCROLL_SHARE / 3));
            case UP -> screen.figures().setVvalue(Math.max(0, at - SCROLL_SHARE / 3));
            case PAGE_DOWN -> screen.figures().setVvalue(Math.min(1, at + SCROLL_SHARE));
            case PAGE_UP -> screen.figures().setVvalue(Math.max(0, at - SCROLL_SHARE));
            default -> {
                return false;
            }
        }
        return true;
    }

    private void withControl(KeyEvent event) {
        switch (event.getCode()) {
            case S -> save();
            case P -> print();
            default -> {
                return;
            }
        }
        event.consume();
    }

    private void typed(KeyEvent event) {
        if (DeskWindow.command(event, stage.getScene()).map(this::isTaken).orElse(false)) event.consume();
    }

    private boolean isTaken(char letter) {
        switch (letter) {
            case 'f' -> screen.form().amount().requestFocus();
            case 'w' -> why();
            case 's' -> save();
            case 'p' -> print();
            case 'g' -> watch();
            case 't' -> screen.wear(screen.theme().other());
            case 'q' -> stage.close();
            default -> {
                return false;
            }
        }
        return true;
    }
}
