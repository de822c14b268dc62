package fifthform.monitor.view;

import fifthform.monitor.model.Key;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.plan.PlanDesk;
import fifthform.monitor.settings.Stroke;
import fifthform.monitor.settings.Volume;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.start.SeenProbe;
import fifthform.monitor.start.StartChoice;
import fifthform.monitor.start.StartDesk;
import fifthform.monitor.texts.StartText;
import fifthform.monitor.view.FxStart.Asked;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;

/** The start page in the window that Watch opens in afterwards, and its keys. */
public final class StartWindow implements StartScreen.Acts {
    private static final long LOOK_EVERY_MILLIS = 2000;

    private final Stage stage;
    private final StartDesk desk;
    private final KeyMap assigned;
    private final Around around;
    private final Consumer<StartChoice> chosen;
    private final StartScreen screen;
    private final AtomicBoolean looking = new AtomicBoolean(true);

    /**
     * What the page needs from outside.
     *
     * @param probes looks what is plugged in; called again and again on a thread of its own
     * @param plan the form of a plan, for a window of its own
     * @param watchLine what to type for the watching of what is planned
     * @param setup the maker's settings, for a window of their own
     * @param trial plays the urgent sound
     */
    public record Around(
            Supplier<List<SeenProbe>> probes,
            Supplier<PlanDesk> plan,
            Function<PlanDesk, String> watchLine,
            Supplier<SetupDesk> setup,
            Function<Volume, Optional<String>> trial) {}

    private StartWindow(
            Stage stage, StartDesk desk, Theme theme, KeyMap assigned, Around around, Consumer<StartChoice> chosen) {
        this.stage = stage;
        this.desk = desk;
        this.assigned = assigned;
        this.around = around;
        this.chosen = chosen;
        screen = new StartScreen(desk, this);
        screen.wear(theme);
    }

    /**
     * Shows the page until something is chosen, or the window closed. Blocks. The window stays open then, and Watch opens in
     * it; after a start that did not come about this can be called again.
     */
    public static Asked<StartChoice> ask(StartDesk desk, Theme theme, KeyMap assigned, Around around) {
        return FxStart.ask((stage, chosen) -> in(stage, desk, theme, assigned, around, chosen));
    }

    /** Fills and shows a window; the caller is on the FX thread. */
    static StartWindow in(
            Stage stage, StartDesk desk, Theme theme, KeyMap assigned, Around around, Consumer<StartChoice> chosen) {
        StartWindow window = new StartWindow(stage, desk, theme, assigned, around, chosen);
        window.fill();
        return window;
    }

    StartScreen screen() {
        return screen;
    }

    private void fill() {
        Scene scene = DeskWindow.fill(stage, screen, "Fifth Form");
        scene.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        scene.addEventFilter(KeyEvent.KEY_TYPED, this::typed);
        // While the probe is being opened there is nobody yet who could end a session.
        stage.setOnCloseRequest(event -> {
            if (desk.isWaiting()) event.consume();
            else looking.set(false);
        });
        screen.setFocusTraversable(true);
        screen.requestFocus();
        stage.show();
        Thread looker = new Thread(this::look, "looks-for-probes");
        looker.setDaemon(true);
        looker.start();
    }

    /** An adapter that is plugged in while the page stands shows by itself. */
    private void look() {
        while (looking.get()) {
            List<SeenProbe> seen = around.probes().get();
            Platform.runLater(() -> {
                desk.saw(seen);
                screen.show();
            });
            try {
                Thread.sleep(LOOK_EVERY_MILLIS);
            } catch (InterruptedException over) {
                return;
            }
        }
    }

    @Override
    public void pressed(StartKey key) {
        if (desk.isWaiting()) return;
        try {
            act(key);
        } catch (RuntimeException fault) {
            desk.refuse(StartText.FAULT.say(FxStart.reason(fault)));
        }
        screen.show();
    }

    private void act(StartKey key) {
        switch (key) {
            case TAKE -> desk.take().ifPresent(this::off);
            case BACK -> desk.back();
            case AS_LAST -> desk.asLast().ifPresent(this::off);
            case GO_ON -> desk.goOn().ifPresent(this::off);
            case PRACTISE -> off(desk.practise());
            case PLAN -> PlanWindow.in(new Stage(), around.plan().get(), screen.theme(), around.watchLine());
            case SETUP -> SetupWindow.in(new Stage(), around.setup().get(), around.trial());
            case THEME -> screen.wear(screen.theme().other());
            case CLOSE -> {
                looking.set(false);
                stage.close();
            }
        }
    }

    private void off(StartChoice choice) {
        looking.set(false);
        chosen.accept(choice);
    }

    private void pressed(KeyEvent event) {
        if (event.isControlDown() || event.isAltDown() || event.isMetaDown()) return;
        Optional<Key> own = KeyPresses.stroke(event.getCode()).flatMap(assigned::typed);
        switch (event.getCode()) {
            case UP -> desk.up();
            case DOWN -> desk.down();
            case LEFT -> desk.grams(-1);
            case RIGHT -> desk.grams(1);
            case ESCAPE, BACK_SPACE -> pressed(StartKey.BACK);
            case F11 -> stage.setFullScreen(!stage.isFullScreen());
            // They come once more as typed characters.
            case ENTER, SPACE -> {}
            default -> {
                if (own.filter(Key.STEP_DONE::equals).isPresent()) pressed(StartKey.TAKE);
                else if (own.filter(Key.SEEN::equals).isPresent()) desk.down();
                else return;
            }
        }
        event.consume();
        screen.show();
    }

    private void typed(KeyEvent event) {
        if (event.isControlDown() || event.isAltDown() || event.isMetaDown() || desk.isWaiting()) return;
        if (event.getCharacter().length() != 1) return;
        event.consume();
        char letter = event.getCharacter().charAt(0) == '\r'
                ? '\n'
                : event.getCharacter().charAt(0);
        int digit = letter - '1';
        Optional<Key> own = Stroke.typed(letter).flatMap(assigned::typed);
        if (digit >= 0 && digit < 9) {
            if (digit < desk.rows().size()) desk.select(digit);
        } else if (letter == ' ' || own.filter(Key.SEEN::equals).isPresent()) {
            desk.down();
        } else if (own.filter(Key.STEP_DONE::equals).isPresent()) {
            pressed(StartKey.TAKE);
        } else {
            if (letter != '\u001b') StartKey.typed(letter).ifPresent(this::pressed);
        }
        screen.show();
    }
}
