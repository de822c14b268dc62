package fifthform.monitor.view;

import fifthform.monitor.chart.Typeface;
import fifthform.monitor.plan.PlanDesk;
import fifthform.monitor.plan.PlanPage;
import fifthform.monitor.texts.PlanText;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * The plan's screen: the form, and beside it the page that follows from it. All sizes follow the letters; where they leave
 * too little room the page stands under the form, and all scrolls.
 */
final class PlanScreen extends ScrollPane implements DeskWindow.Sized {
    private static final double USUAL_LETTERS = 13;
    private static final double SIDE_BY_SIDE_EMS = 74;
    private static final double FORM_EMS = 25;

    private final PlanDesk desk;
    private final PlanForm form;
    private final VBox page = new VBox();
    private final GridPane middle = new GridPane();
    private final VBox result = new VBox();
    private final ScrollPane figures = new ScrollPane(result);
    private final Label said = DeskParts.label("plan-said");
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
        page.getStyleClass().addAll("desk", "notebook", "plan");
        getStyleClass().add("desk-scroll");
        Label title = new Label(PlanText.TITLE.say());
        title.getStyleClass().add("heading");
        FlowPane head = DeskParts.bar(title, said(PlanText.LEAD));
        FlowPane acts = DeskParts.bar(
                DeskParts.button("plan-why", PlanText.BUTTON_WHY, act::why),
                DeskParts.button("plan-save", PlanText.BUTTON_SAVE, act::save),
                DeskParts.button("plan-print", PlanText.BUTTON_PRINT, act::print),
                DeskParts.button("plan-watch", PlanText.BUTTON_WATCH, act::watch));
        figures.setId("plan-figures");
        figures.setAccessibleText(PlanText.TITLE.say());
        figures.getStyleClass().add("desk-scroll");
        figures.setFitToWidth(true);
        figures.setHbarPolicy(ScrollBarPolicy.NEVER);
        figures.setFocusTraversable(true);
        result.getStyleClass().add("side");
        VBox.setVgrow(middle, Priority.ALWAYS);
        page.getChildren().addAll(head, middle, acts, said, said(PlanText.CAUTION), said(PlanText.KEYS));
        setContent(page);
        setFitToWidth(true);
        setFitToHeight(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        sceneProperty().addListener((property, before, scene) -> {
            if (scene != null) scene.focusOwnerProperty().addListener((focus, had, has) -> Reveal.reveal(has, this));
        });
        widthProperty().addListener((property, was, is) -> arrange());
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
        boolean beside = getWidth() >= SIDE_BY_SIDE_EMS * em();
        middle.getChildren().clear();
        middle.getColumnConstraints().clear();
        middle.setHgap(1.5 * em());
        middle.setVgap(em());
        ColumnConstraints first = new ColumnConstraints();
        if (beside) {
            first.setMinWidth(FORM_EMS * em());
            first.setMaxWidth(FORM_EMS * em());
            ColumnConstraints second = new ColumnConstraints();
            second.setHgrow(Priority.ALWAYS);
            middle.getColumnConstraints().addAll(first, second);
            middle.addRow(0, form, figures);
        } else {
            first.setHgrow(Priority.ALWAYS);
            middle.getColumnConstraints().add(first);
            middle.addColumn(0, form, figures);
        }
        GridPane.setVgrow(figures, Priority.ALWAYS);
        GridPane.setValignment(form, VPos.TOP);
        form.setMinHeight(Region.USE_PREF_SIZE);
        figures.setMinHeight((beside ? 20 : 28) * em());
        figures.setPrefHeight(28 * em());
    }

    /** Shows the desk as it is now. */
    void show() {
        double at = figures.getVvalue();
        result.getChildren().clear();
        for (String problem : desk.problems()) result.getChildren().add(line(problem, "strong"));
        desk.page().ifPresent(this::fill);
        figures.setVvalue(at);
        said.setText(desk.said().isEmpty() ? " " : desk.said());
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
        List<String> times = made.times(desk.start());
        for (String note : made.notes()) result.getChildren().add(line(PlanText.NOTE.say(note), "quiet"));
        result.getChildren().add(line(times.get(0), "strong"));
        for (String time : times.subList(1, times.size())) result.getChildren().add(line(time, "plain"));
        if (!desk.showsWhy()) return;
        result.getChildren().add(line(PlanText.WHY_TITLE.say(), "strong"));
        for (String why : made.why()) result.getChildren().add(line(why, "plain"));
    }

    private static Label line(String words, String style) {
        Label label = DeskParts.words(words);
        label.getStyleClass().add(style);
        return label;
    }

    /** Goes to the formulas, which stand under the plan. */
    void reachWhy() {
        figures.applyCss();
        figures.layout();
        double all = result.getHeight();
        double shown = figures.getViewportBounds().getHeight();
        for (Node node : result.getChildren()) {
            if (node instanceof Label label && label.getText().equals(PlanText.WHY_TITLE.say()) && all > shown) {
                figures.setVvalue(Math.min(1, node.getBoundsInParent().getMinY() / (all - shown)));
            }
        }
    }
}
