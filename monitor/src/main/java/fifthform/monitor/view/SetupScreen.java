package fifthform.monitor.view;

import fifthform.monitor.chart.Typeface;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.Volume;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.texts.DeskText;
import fifthform.monitor.texts.SetupText;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import javafx.stage.Screen;

/** The Setup screen: what can be set as a list, and beside it the part that is chosen. All sizes follow the letters. */
final class SetupScreen extends BorderPane implements DeskWindow.Sized {
    private static final double USUAL_LETTERS = 13;

    /** With fewer letters across than this the list stands above. */
    private static final double SIDE_BY_SIDE_EMS = 60;

    /** With fewer lines than this above each other there is no room for all hints. */
    private static final double FEW_LINES_EMS = 26;

    private static final double ROW_EMS = 2;

    /** Rows of the list where it stands above. */
    private static final int ROWS_ABOVE = 3;

    /** Its frame, above and below, pixels. */
    private static final double FRAME = 4;

    /** A part of Setup. */
    enum Section {
        SCREEN(SetupText.SECTION_SCREEN),
        KEYS(SetupText.SECTION_KEYS),
        SOUND(SetupText.SECTION_SOUND),
        CHOCOLATES(SetupText.SECTION_CHOCOLATES),
        BOWLS(SetupText.SECTION_BOWLS),
        PROBES(SetupText.SECTION_PROBES),
        FOLDERS(SetupText.SECTION_FOLDERS);

        private final SetupText words;

        Section(SetupText words) {
            this.words = words;
        }

        String words() {
            return words.say();
        }
    }

    private final SetupDesk desk;
    private final Map<Section, SetupPane> panes = new EnumMap<>(Section.class);
    private final KeysPane keys;
    private final ListView<Section> sections = new ListView<>();
    private final ScrollPane scroll = new ScrollPane();
    private final BorderPane middle = new BorderPane(scroll);
    private final Label said = DeskParts.words("");
    private final Label problems = DeskParts.words("");
    private final Label hints = DeskParts.words("");
    private Theme theme = Theme.BRIGHT;
    private int percent = 100;

    /**
     * A screen.
     *
     * @param screen the screen on which the window is
     * @param trial plays the urgent sound and says why it was not heard
     */
    SetupScreen(SetupDesk desk, Supplier<Screen> screen, Function<Volume, Optional<String>> trial) {
        this.desk = desk;
        // Style sheets name the typeface; both faces must have been read by then.
        for (Typeface face : Typeface.values()) face.at(USUAL_LETTERS);
        keys = new KeysPane(desk, this::show);
        panes.put(Section.SCREEN, new SizesPane(desk, this::show, screen));
        panes.put(Section.KEYS, keys);
        panes.put(Section.SOUND, new SoundPane(desk, this::show, trial));
        panes.put(Section.CHOCOLATES, new ChocolatesPane(desk, this::show));
        panes.put(Section.BOWLS, new BowlsPane(desk, this::show));
        panes.put(Section.PROBES, new ProbesPane(desk, this::show));
        panes.put(Section.FOLDERS, new FoldersPane(desk, this::show));
        getStyleClass().addAll("desk", "notebook", "setup");
        Label title = new Label(DeskText.SETUP.say());
        title.getStyleClass().add("heading");
        problems.getStyleClass().add("warning");
        problems.setId("problems");
        said.setId("said");
        said.getStyleClass().add("strong");
        hints.setId("keys");
        sections.setId("sections");
        sections.getStyleClass().add("sections");
        sections.setAccessibleText(SetupText.SECTIONS.say());
        sections.getItems().setAll(Section.values());
        sections.setCellFactory(made -> new ListCell<>() {
            @Override
            protected void updateItem(Section section, boolean empty) {
                super.updateItem(section, empty);
                setText(empty || section == null ? "" : (section.ordinal() + 1) + "  " + section.words());
            }
        });
        sections.getSelectionModel().selectedItemProperty().addListener((property, was, is) -> {
            scroll.setContent(panes.get(is));
            scroll.setVvalue(0);
            requestLayout();
            show();
        });
        scroll.getStyleClass().add("desk-scroll");
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        VBox head = new VBox(title, problems);
        head.getStyleClass().add("head");
        setTop(head);
        setCenter(middle);
        VBox foot = new VBox(said, hints);
        foot.setSpacing(4);
        setBottom(foot);
        sections.getSelectionModel().select(Section.SCREEN);
        widthProperty().addListener((property, was, is) -> arrange());
        heightProperty().addListener((property, was, is) -> arrange());
        sceneProperty().addListener((property, before, scene) -> {
            if (scene != null) scene.focusOwnerProperty().addListener((focus, had, has) -> Reveal.reveal(has, scroll));
        });
        letters();
        show();
    }

    ListView<Section> sections() {
        return sections;
    }

    KeysPane keys() {
        return keys;
    }

    @Override
    public int percent() {
        return percent;
    }

    /** Shows a part and goes to the list, at its row. */
    void open(Section section) {
        sections.getSelectionModel().select(section);
        sections.requestFocus();
    }

    /** Takes a theme. */
    void wear(Theme other) {
        theme = other;
        getStylesheets().setAll(other.deskSheets());
        getStylesheets().addAll(List.of(Theme.sheet("notebook.css"), Theme.sheet("setup.css")));
    }

    @Override
    public void scale(int wishedPercent) {
        percent = Math.max(100, Math.min(300, wishedPercent));
        letters();
        desk.say(SetupText.SAID_SIZE.say(Integer.toString(percent)));
        show();
    }

    private void letters() {
        setStyle("-fx-font-size: " + em() + "px;");
        arrange();
        requestLayout();
    }

    private double em() {
        return USUAL_LETTERS * percent / 100.0;
    }

    private void arrange() {
        boolean beside = getWidth() >= SIDE_BY_SIDE_EMS * em();
        // Where letters are so large that little else fits, the list is its chosen row, and the rest is the part's.
        boolean few = getHeight() > 0 && getHeight() < FEW_LINES_EMS * em();
        double row = ROW_EMS * em();
        int rows = few ? 1 : ROWS_ABOVE;
        hints.setText((few ? SetupText.KEYS_SHORT : SetupText.KEYS).say());
        // Whole rows only: half a row above the chosen one reads as a fault.
        sections.setFixedCellSize(row);
        sections.setMinHeight(beside ? 0 : rows * row + FRAME);
        sections.setMaxHeight(beside ? Double.MAX_VALUE : rows * row + FRAME);
        if (beside != (middle.getLeft() == sections)) move(beside);
    }

    /** Only a list that knows its height can bring a row to its top. */
    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        if (middle.getTop() != sections) return;
        middle.layout();
        sections.layout();
        sections.scrollTo(sections.getSelectionModel().getSelectedIndex());
    }

    private void move(boolean beside) {
        boolean focused = sections.isFocused();
        middle.setTop(null);
        middle.setLeft(null);
        if (beside) middle.setLeft(sections);
        else middle.setTop(sections);
        if (focused) sections.requestFocus();
    }

    /** Shows the desk as it is now. */
    void show() {
        Theme wanted = desk.settings().theme() == Settings.Theme.DARK ? Theme.DARK : Theme.BRIGHT;
        if (getStylesheets().isEmpty() || wanted != theme) wear(wanted);
        problems.setText(String.join("\n", desk.problems()));
        SetupPane.shown(problems, !desk.problems().isEmpty());
        said.setText(desk.said());
        SetupPane.shown(said, !desk.said().isEmpty());
        Optional.ofNullable(sections.getSelectionModel().getSelectedItem())
                .map(panes::get)
                .ifPresent(SetupPane::show);
    }
}
