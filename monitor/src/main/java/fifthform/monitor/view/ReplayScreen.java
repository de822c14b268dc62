package fifthform.monitor.view;

import fifthform.monitor.chart.Typeface;
import fifthform.monitor.replay.ReplayDesk;
import fifthform.monitor.replay.ReplayPicture;
import fifthform.monitor.texts.ReplayText;
import fifthform.monitor.view.ListsPane.Tab;
import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * The Replay screen: the finding first, the batch on its scale of time, and under it what was told then beside what is
 * computed now, and the lists. All sizes follow the letters; where they leave too little room the page scrolls.
 */
final class ReplayScreen extends ScrollPane implements DeskWindow.Sized {
    private static final double USUAL_LETTERS = 13;

    /** What the page leaves free at both sides, in letters; see the style sheet. */
    private static final double PADDING_LETTERS = 2.6;

    private final ReplayDesk desk;
    private final TimePane time;
    private final ComparePane compare = new ComparePane();
    private final ListsPane lists;
    private final VBox page = new VBox();
    private final LowerPane lower;
    private final Label title = new Label();
    private final Label subject = new Label();
    private final FlowPane marks = new FlowPane();
    private final Label headline = new Label();
    private final Label aside = new Label();
    private final Label clock = new Label();
    private final Label pace = new Label();
    private final Label span = new Label();
    private final Label said = new Label();
    private final Label cursors = new Label();
    private final Button play = button("play", ReplayText.BUTTON_PLAY, () -> desk().playOrPause());
    private Theme theme = Theme.BRIGHT;
    private int percent = 100;

    ReplayScreen(ReplayFeed feed) {
        desk = feed.desk();
        // Style sheets name the typeface; both faces must have been read by then.
        for (Typeface face : Typeface.values()) face.at(USUAL_LETTERS);
        time = new TimePane(desk);
        lists = new ListsPane(desk, feed.others());
        lists.whenFinished(this::focusTime);
        lower = new LowerPane(compare, lists, this::em);
        page.getStyleClass().addAll("desk", "replay");
        getStyleClass().add("desk-scroll");
        title.getStyleClass().add("title");
        title.setId("title");
        headline.getStyleClass().add("finding");
        headline.setId("headline");
        headline.setWrapText(true);
        headline.setMinHeight(Region.USE_PREF_SIZE);
        clock.getStyleClass().add("clock");
        clock.setId("clock");
        pace.setId("pace");
        span.setId("span");
        said.setId("said");
        said.setWrapText(true);
        said.setMinHeight(Region.USE_PREF_SIZE);
        said.setAccessibleRole(AccessibleRole.TEXT);
        cursors.setId("cursors");
        cursors.getStyleClass().add("strong");
        cursors.setWrapText(true);
        FlowPane lines = bar(said, cursors);
        FlowPane head = bar(title, subject, marks);
        FlowPane finding = bar(headline, aside);
        FlowPane controls = bar(
                play,
                button("earlier", ReplayText.BUTTON_EARLIER, desk::previousEvent),
                button("later", ReplayText.BUTTON_LATER, desk::nextEvent),
                button("slower", ReplayText.BUTTON_SLOWER, desk::slower),
                pace,
                button("faster", ReplayText.BUTTON_FASTER, desk::faster),
                button("whole", ReplayText.BUTTON_WHOLE, desk::showWhole),
                clock,
                span);
        viewportBoundsProperty().addListener((bounds, before, now) -> fitWords());
        marks.getStyleClass().add("bar");
        VBox.setVgrow(time, Priority.ALWAYS);
        VBox.setVgrow(lower, Priority.SOMETIMES);
        page.getChildren().addAll(head, finding, time, controls, lines, lower);
        setContent(page);
        setFitToWidth(true);
        setFitToHeight(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        sceneProperty().addListener((property, before, scene) -> {
            if (scene != null) scene.focusOwnerProperty().addListener((focus, had, has) -> Reveal.reveal(has, this));
        });
        letters();
    }

    private ReplayDesk desk() {
        return desk;
    }

    private static FlowPane bar(Node... nodes) {
        FlowPane bar = DeskParts.bar(nodes);
        // Else its longest words would make the page wider than the window.
        bar.setMinWidth(0);
        return bar;
    }

    private Button button(String id, ReplayText words, Runnable act) {
        Button button = new Button(words.say());
        button.setId(id);
        button.setOnAction(event -> {
            act.run();
            // After a click Space is play again; who came by Tab stays where they are.
            if (!button.isFocusVisible()) focusTime();
        });
        return button;
    }

    /** Gives the slider the focus: from there every key is the batch's. */
    void focusTime() {
        time.slider().requestFocus();
    }

    ListsPane lists() {
        return lists;
    }

    Theme theme() {
        return theme;
    }

    /** Takes a theme. */
    void wear(Theme other) {
        theme = other;
        getStylesheets().setAll(other.deskSheets());
        getStylesheets().add(Theme.sheet("replay.css"));
        time.wear(other);
    }

    @Override
    public void scale(int wishedPercent) {
        percent = Math.max(100, Math.min(300, wishedPercent));
        letters();
        desk.say(ReplayText.SAID_SIZE.say(Integer.toString(percent)));
    }

    @Override
    public int percent() {
        return percent;
    }

    private void letters() {
        double em = USUAL_LETTERS * percent / 100.0;
        setStyle("-fx-font-size: " + em + "px;");
        time.letters(em);
        fitWords();
        requestLayout();
    }

    /** Words that are longer than the page is wide wrap; a bar by itself would let them run out of it. */
    private void fitWords() {
        double wide = Math.max(1, getViewportBounds().getWidth() - PADDING_LETTERS * em());
        for (Label words : List.of(title, subject, headline, aside, clock, span, said, cursors)) {
            words.setWrapText(true);
            words.setMaxWidth(wide);
        }
    }

    private double em() {
        return USUAL_LETTERS * percent / 100.0;
    }

    int columns() {
        return time.columns();
    }

    void show(ReplayPicture picture) {
        set(title, picture.title());
        set(subject, picture.subject());
        set(headline, picture.headline());
        set(aside, picture.headlineAside());
        set(clock, picture.clock());
        set(pace, picture.pace());
        set(span, picture.span());
        set(said, picture.said().isEmpty() ? " " : picture.said());
        set(cursors, picture.chart().cursorWords());
        set(play, picture.playing() ? ReplayText.BUTTON_PAUSE.say() : ReplayText.BUTTON_PLAY.say());
        if (marks.getChildren().size() != picture.marks().size()) {
            marks.getChildren().clear();
            for (String mark : picture.marks()) {
                Label label = new Label(mark);
                label.getStyleClass().add("mark");
                marks.getChildren().add(label);
            }
        }
        time.show(picture);
        compare.show(picture);
        lists.show(picture);
    }

    private static void set(Labeled label, String words) {
        if (!words.equals(label.getText())) label.setText(words);
    }

    /** Opens a list and goes there. */
    void enter(Tab tab) {
        lists.enter(tab);
    }
}
