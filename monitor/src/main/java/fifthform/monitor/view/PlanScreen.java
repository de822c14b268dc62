package fifthform.monitor.view;

import fifthform.monitor.chart.Typeface;
import fifthform.monitor.plan.PlanDesk;
import fifthform.monitor.plan.PlanPage;
import fifthform.monitor.texts.PlanText;
import java.util.List;
import java.util.regex.Pattern;
import javafx.geometry.Insets;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * The plan's screen: the form, and beside it the page that follows from it. All sizes follow the letters; where they leave
 * too little room the form in columns and the page under it scroll together. What can be done stays in sight, and so does
 * the caution where there is room for more than it.
 */
final class PlanScreen extends VBox implements DeskWindow.Sized {
    private static final double USUAL_LETTERS = 13;
    private static final double SIDE_BY_SIDE_EMS = 74;

    /** As high as the form is in one column, with all that stands above and below it. */
    private static final double SIDE_BY_SIDE_HIGH_EMS = 50;

    /** With fewer lines than this above each other the caution would leave none for the plan. */
    private static final double FEW_LINES_EMS = 26;

    /** The margins and a scroll bar. */
    private static final double AROUND_EMS = 3;

    /** A space at the beginning of a formula's line, in letters. */
    private static final double INDENT_EMS = 0.4;

    private final PlanDesk desk;
    private final PlanForm form;
    private final HBox middle = new HBox();
    private final VBox result = new VBox();
    private final VBox stacked = new VBox();
    /** A band in brackets stands on one line. */
    private static final Pattern BAND = Pattern.compile("\\(([0-9.]+) (\\p{L}+) ([0-9.]+)\\)");

    private final ScrollPane figures = new ScrollPane();
    private final FlowPane head;
    private final FlowPane acts;
    private final Label said = DeskParts.label("plan-said");
    private final Label caution = said(PlanText.CAUTION);
    private final Label keys = said(PlanText.KEYS);
    private Theme theme = Theme.BRIGHT;
    private int percent = 100;

    /** What the window does for a button. */
    interface Acts {
        void why();

        void save();

        void print();

        void watch();
    }

    PlanScreen(PlanDesk desk, Acts act) {
        this.desk = desk;
        // Style sheets name the typeface; both faces must have been read by then.
        for (Typeface face : Typeface.values()) face.at(USUAL_LETTERS);
        form = new PlanForm(desk, () -> {
            desk.say("");
            show();
        });
        getStyleClass().addAll("desk", "notebook", "plan");
        Label title = new Label(PlanText.TITLE.say());
        title.getStyleClass().add("heading");
        head = DeskParts.bar(title, said(PlanText.LEAD));
        acts = DeskParts.bar(
                DeskParts.button("plan-why", PlanText.BUTTON_WHY, act::why),
                DeskParts.button("plan-save", PlanText.BUTTON_SAVE, act::save),
                DeskParts.button("plan-print", PlanText.BUTTON_PRINT, act::print),
                DeskParts.button("plan-watch", PlanText.BUTTON_WATCH, act::watch));
        figures.setId("plan-figures");
        figures.setAccessibleText(PlanText.TITLE.say());
        figures.getStyleClass().addAll("desk-scroll", "ruled");
        figures.setFitToWidth(true);
        figures.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        figures.setFocusTraversable(true);
        result.getStyleClass().add("side");
        VBox.setVgrow(middle, Priority.ALWAYS);
        HBox.setHgrow(figures, Priority.ALWAYS);
        sceneProperty().addListener((property, before, scene) -> {
            if (scene != null) scene.focusOwnerProperty().addListener((focus, had, has) -> Reveal.reveal(has, figures));
        });
        widthProperty().addListener((property, was, is) -> arrange());
        heightProperty().addListener((property, was, is) -> arrange());
        letters();
        show();
    }

    private static Label said(PlanText words) {
        Label label = DeskParts.label(words.key());
        label.setText(words.say());
        return label;
    }

    PlanForm form() {
        return form;
    }

    /** What has the focus while the page is read. */
    ScrollPane figures() {
        return figures;
    }

    Theme theme() {
        return theme;
    }

    @Override
    public int percent() {
        return percent;
    }

    /** Takes a theme. */
    void wear(Theme other) {
        theme = other;
        getStylesheets().setAll(other.deskSheets());
        getStylesheets().add(Theme.sheet("notebook.css"));
    }

    @Override
    public void scale(int wishedPercent) {
        percent = Math.max(100, Math.min(300, wishedPercent));
        letters();
        desk.say(PlanText.SAID_SIZE.say(Integer.toString(percent)));
        show();
    }

    private double em() {
        return USUAL_LETTERS * percent / 100.0;
    }

    private void letters() {
        setStyle("-fx-font-size: " + em() + "px;");
        arrange();
        requestLayout();
    }

    private void arrange() {
        double wide = getWidth() / em();
        double high = getHeight() / em();
        boolean beside = wide >= SIDE_BY_SIDE_EMS && high >= SIDE_BY_SIDE_HIGH_EMS;
        boolean few = high < FEW_LINES_EMS;
        form.columns(beside ? 1 : PlanForm.columnsIn(wide - AROUND_EMS), em());
        form.setMinHeight(Region.USE_PREF_SIZE);
        form.setMinWidth(Region.USE_PREF_SIZE);
        middle.setSpacing(em());
        stacked.setSpacing(em());
        List<Node> below = beside
                ? List.of(head, middle, acts, said, caution, keys)
                : few ? List.of(head, middle, acts, said) : List.of(head, middle, acts, said, caution);
        List<Node> scrolled = few ? List.of(caution, form, result, keys) : List.of(form, result, keys);
        if (getChildren().equals(below)) return;
        // What is typed into must not lose the focus while the window is drawn larger.
        Node focused = getScene() == null ? null : getScene().getFocusOwner();
        getChildren().clear();
        middle.getChildren().clear();
        stacked.getChildren().clear();
        figures.setContent(null);
        if (beside) {
            middle.getChildren().addAll(form, figures);
            figures.setContent(result);
        } else {
            middle.getChildren().add(figures);
            stacked.getChildren().addAll(scrolled);
            figures.setContent(stacked);
        }
        getChildren().addAll(below);
        if (focused != null) focused.requestFocus();
    }

    /** Shows the desk as it is now; what is read or typed stays where it was. */
    void show() {
        double top = figures.getVvalue() * beyond();
        result.getChildren().clear();
        for (String problem : desk.problems()) result.getChildren().add(line(problem, "strong"));
        desk.page().ifPresent(this::fill);
        said.setText(desk.said());
        said.setVisible(!desk.said().isEmpty());
        said.setManaged(!desk.said().isEmpty());
        applyCss();
        layout();
        figures.setVvalue(beyond() > 0 ? Math.min(1, top / beyond()) : 0);
    }

    /** How much of what scrolls is out of sight, pixels. */
    private double beyond() {
        if (!(figures.getContent() instanceof Region content)) return 0;
        return Math.max(0, content.getHeight() - figures.getViewportBounds().getHeight());
    }

    private void fill(PlanPage made) {
        result.getChildren().add(line(made.title(), "finding"));
        GridPane grid = new GridPane();
        grid.getStyleClass().add("figures");
        ColumnConstraints heads = new ColumnConstraints();
        heads.setMinWidth(Region.USE_PREF_SIZE);
        ColumnConstraints words = new ColumnConstraints();
        words.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().addAll(heads, words);
        int row = 0;
        for (PlanPage.Row each : made.rows()) {
            Label head = line(each.head(), "strong");
            head.setWrapText(false);
            GridPane.setValignment(head, VPos.TOP);
            grid.addRow(row++, head, line(each.words(), "plain"));
        }
        result.getChildren().add(grid);
        for (String note : made.notes()) result.getChildren().add(line(PlanText.NOTE.say(note), "plain"));
        result.getChildren().add(line(PlanPage.timesHead(desk.start()), "strong"));
        GridPane times = new GridPane();
        times.getStyleClass().add("figures");
        for (PlanPage.Time time : made.timetable(desk.start()))
            times.addRow(
                    times.getRowCount(),
                    line(time.at(), "plain"),
                    line(time.span(), "plain"),
                    line(time.step(), "plain"));
        result.getChildren().add(times);
        if (!desk.showsWhy()) return;
        result.getChildren().add(line(PlanText.WHY_TITLE.say(), "strong"));
        for (String why : made.why()) result.getChildren().add(indented(why));
    }

    /** Further lines of the same words stand as far in as the first. */
    private Label indented(String words) {
        Label label = line(words.strip(), "plain");
        label.setPadding(new Insets(0, 0, 0, words.indexOf(words.strip()) * INDENT_EMS * em()));
        return label;
    }

    private static Label line(String words, String style) {
        Label label = DeskParts.words(BAND.matcher(DeskParts.held(words)).replaceAll("($1\u00A0$2\u00A0$3)"));
        label.getStyleClass().add(style);
        return label;
    }

    /** Goes to the plan, which may stand under the form. */
    void reachPlan() {
        figures.requestFocus();
        if (figures.getContent() == stacked) Reveal.begin(result, figures);
    }

    /** Goes to the formulas, which stand under the plan. */
    void reachWhy() {
        for (Node node : result.getChildren())
            if (node instanceof Label label && label.getText().equals(PlanText.WHY_TITLE.say()))
                Reveal.begin(node, figures);
    }
}
