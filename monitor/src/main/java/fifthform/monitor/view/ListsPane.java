package fifthform.monitor.view;

import fifthform.monitor.replay.ListRow;
import fifthform.monitor.replay.ReplayDesk;
import fifthform.monitor.replay.ReplayPicture;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.texts.ReplayText;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The lists of the Replay screen, one at a time: why, what if, alarms, notes, other batches, keys. */
final class ListsPane extends VBox {
    /** One list. */
    enum Tab {
        WHY(ReplayText.PANE_WHY),
        WHAT_IF(ReplayText.PANE_WHAT_IF),
        ALARMS(ReplayText.PANE_ALARMS),
        NOTES(ReplayText.PANE_NOTES),
        BESIDE(ReplayText.PANE_BESIDE),
        KEYS(ReplayText.PANE_KEYS);

        private final ReplayText name;

        Tab(ReplayText name) {
            this.name = name;
        }

        private String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    private final ReplayDesk desk;
    private final Supplier<List<Path>> others;
    private final Map<Tab, ToggleButton> buttons = new EnumMap<>(Tab.class);
    private final Map<Tab, Node> panes = new EnumMap<>(Tab.class);
    private final RowList why = list(Tab.WHY);
    private final RowList whatIf;
    private final RowList alarms = list(Tab.ALARMS);
    private final RowList notes = list(Tab.NOTES);
    private final RowList laid;
    private final RowList sessions;
    private final RowList keys = new RowList("list-keys", ReplayText.PANE_KEYS.say(), place -> {}).headed(11);
    private final TextField words = new TextField();
    private final Label noNotes = hint(ReplayText.NOTES_NONE);
    private final Label noAlarms = hint(ReplayText.ALARMS_NONE);
    private final Label noWhatIfs = hint(ReplayText.WHAT_IF_NONE);
    private final Label simulated = hint(ReplayText.WHAT_IF_SIMULATED);
    private List<Path> files = List.of();
    private int changing = -1;
    private Runnable finished = () -> {};

    ListsPane(ReplayDesk desk, Supplier<List<Path>> others) {
        this.desk = desk;
        this.others = others;
        getStyleClass().add("pane");
        whatIf = new RowList("list-what-if", ReplayText.PANE_WHAT_IF.say(), desk::chooseWhatIf);
        laid = new RowList("list-laid", ReplayText.PANE_BESIDE.say(), place -> {});
        sessions = new RowList("list-sessions", ReplayText.BESIDE_CHOOSE.say(), this::lay);
        words.setId("note-words");
        words.setOnAction(event -> keep());
        words.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() != KeyCode.ESCAPE) return;
            event.consume();
            leave();
        });
        notes.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.F2) change(notes.chosen());
            if (event.getCode() == KeyCode.DELETE) desk.takeNoteBack(notes.chosen());
        });
        panes.put(Tab.WHY, filled(why));
        panes.put(Tab.WHAT_IF, filled(noWhatIfs, simulated, whatIf));
        panes.put(Tab.ALARMS, filled(noAlarms, alarms));
        panes.put(Tab.NOTES, filled(words, noNotes, notes));
        panes.put(Tab.BESIDE, filled(hint(ReplayText.BESIDE_CHOOSE), sessions, laid));
        keys.show(keys());
        panes.put(Tab.KEYS, filled(hint(ReplayText.SIGNS), keys));
        FlowPane tabs = new FlowPane();
        tabs.getStyleClass().add("bar");
        ToggleGroup group = new ToggleGroup();
        for (Tab tab : Tab.values()) {
            ToggleButton button = new ToggleButton(tab.ordinal() + 1 + " " + tab.name.say());
            button.setId("tab-" + tab.id());
            button.setToggleGroup(group);
            button.setOnAction(event -> open(tab));
            buttons.put(tab, button);
            tabs.getChildren().add(button);
        }
        StackPane stack = new StackPane();
        stack.getChildren().addAll(panes.values());
        stack.setMinHeight(0);
        VBox.setVgrow(stack, Priority.ALWAYS);
        getChildren().addAll(tabs, stack);
        open(Tab.WHY);
    }

    /** What is to have the focus when a text field is left. */
    void whenFinished(Runnable then) {
        finished = then;
    }

    private RowList list(Tab tab) {
        return new RowList("list-" + tab.id(), tab.name.say(), place -> jump(place, tab));
    }

    private void jump(int place, Tab tab) {
        RowList list = tab == Tab.WHY ? why : tab == Tab.ALARMS ? alarms : notes;
        Optional<ListRow> row = list.chosenRow();
        row.flatMap(ListRow::nanos).ifPresent(desk::seek);
    }

    private static Label hint(ReplayText text) {
        Label label = new Label(text.say());
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }

    private static VBox filled(Node... nodes) {
        VBox box = new VBox(nodes);
        box.getStyleClass().add("pane");
        for (Node node : nodes) if (node instanceof RowList) VBox.setVgrow(node, Priority.ALWAYS);
        return box;
    }

    private static List<ListRow> keys() {
        return Stream.of(ReplayKey.values())
                .map(key -> new ListRow(Optional.empty(), key.cap(), key.does(), "", Optional.empty()))
                .toList();
    }

    /** Shows a list. */
    void open(Tab tab) {
        panes.forEach((each, pane) -> pane.setVisible(each == tab));
        buttons.get(tab).setSelected(true);
        if (tab == Tab.BESIDE) askForSessions();
    }

    /** Shows a list and gives it the focus. */
    void enter(Tab tab) {
        open(tab);
        RowList list = switch (tab) {
            case WHY -> why;
            case WHAT_IF -> whatIf;
            case ALARMS -> alarms;
            case NOTES -> notes;
            case BESIDE -> sessions;
            case KEYS -> keys;
        };
        list.requestFocus();
        if (list.chosen() < 0 && !list.getItems().isEmpty())
            list.getSelectionModel().select(0);
    }

    /** Opens the notes to write one at the moment shown. */
    void write() {
        open(Tab.NOTES);
        changing = -1;
        words.setPromptText(ReplayText.NOTE_PROMPT.say());
        words.setAccessibleText(ReplayText.NOTE_PROMPT.say());
        words.clear();
        words.requestFocus();
    }

    private void change(int place) {
        if (place < 0) return;
        changing = place;
        words.setPromptText(ReplayText.NOTE_CHANGE_PROMPT.say());
        words.setAccessibleText(ReplayText.NOTE_CHANGE_PROMPT.say());
        words.setText(desk.noteText(place));
        words.requestFocus();
        words.end();
    }

    private void keep() {
        if (changing >= 0) desk.changeNote(changing, words.getText());
        else if (!words.getText().isBlank()) desk.note(words.getText());
        leave();
    }

    private void leave() {
        changing = -1;
        words.clear();
        finished.run();
    }

    private void askForSessions() {
        files = others.get();
        sessions.show(files.stream()
                .map(file -> new ListRow(
                        Optional.empty(), "", files.isEmpty() ? "" : SessionFiles.name(file), "", Optional.empty()))
                .toList());
    }

    private void lay(int place) {
        if (place >= 0 && place < files.size()) desk.lay(files.get(place));
    }

    void show(ReplayPicture picture) {
        why.show(picture.findings());
        whatIf.show(picture.whatIfs());
        alarms.show(picture.alarms());
        notes.show(picture.notes());
        laid.show(picture.laid());
        hide(noNotes, !picture.notes().isEmpty());
        hide(noAlarms, !picture.alarms().isEmpty());
        hide(noWhatIfs, !picture.whatIfs().isEmpty());
        hide(simulated, picture.whatIfs().isEmpty());
        hide(laid, picture.laid().isEmpty());
    }

    private static void hide(Node node, boolean hidden) {
        node.setVisible(!hidden);
        node.setManaged(!hidden);
    }
}
