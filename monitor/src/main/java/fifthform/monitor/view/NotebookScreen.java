package fifthform.monitor.view;

import fifthform.monitor.chart.Typeface;
import fifthform.monitor.notebook.BatchRow;
import fifthform.monitor.notebook.NotebookDesk;
import fifthform.monitor.texts.DeskText;
import fifthform.monitor.texts.NotebookText;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * The Notebook screen: what is due, what is asked for, the batches as rows, one of them or several beside them, and what
 * they say together. All sizes follow the letters; where they leave too little room the side goes under the rows, and the
 * page scrolls.
 */
final class NotebookScreen extends ScrollPane implements DeskWindow.Sized {
    private static final double USUAL_LETTERS = 13;

    private static final double SIDE_EMS = 27;

    /** Where the side stands under the rows, it has the larger part: it is what was opened. */
    private static final double ROWS_SHARE = 0.4;

    /** Beside rows and side: the margins of the page, and what divides the two. */
    private static final double AROUND_EMS = 2.5;

    /** Three columns of figures want more than one. */
    private static final double COMPARED_EMS = 44;

    /** What stands at the side. */
    enum Side {
        BATCH,
        COMPARED,
        LOOK,
        BIN,
        WHY
    }

    private final NotebookDesk desk;
    private final VBox page = new VBox();
    private final FilterRow filter;
    private final BatchTable table;
    private final BatchPane batch;
    private final ComparedPane compared;
    private final LookPane look;
    private final BinPane bin;
    private final WhyPane why;
    private final SplitPane middle = new SplitPane();
    private final ScrollPane side = new ScrollPane();
    private final VBox none = new VBox();
    private final Label count = DeskParts.label("count");
    private final Label due = DeskParts.label("due");
    private final Label together = DeskParts.label("together");
    private final Label said = DeskParts.label("said");
    private final FlowPane acts = new FlowPane();
    private final boolean opensReplay;
    private Side shownSide = Side.BATCH;
    private Theme theme = Theme.BRIGHT;
    private int percent = 100;

    /** What the window does for a button. */
    interface Acts {
        void replay();

        void compare();

        void look();

        void putAway();

        void why();

        void page();

        void bin();

        void filtered();
    }

    NotebookScreen(NotebookDesk desk, Acts act, boolean opensReplay) {
        this.desk = desk;
        this.opensReplay = opensReplay;
        // Style sheets name the typeface; both faces must have been read by then.
        for (Typeface face : Typeface.values()) face.at(USUAL_LETTERS);
        filter = new FilterRow(desk, act::filtered);
        table = new BatchTable(desk, () -> theme);
        batch = new BatchPane(desk);
        compared = new ComparedPane(desk);
        look = new LookPane(desk, this::lookKept, () -> open(Side.BATCH));
        bin = new BinPane(desk, this::show);
        why = new WhyPane();
        page.getStyleClass().addAll("desk", "notebook");
        getStyleClass().add("desk-scroll");
        side.getStyleClass().addAll("desk-scroll", "ruled");
        Label title = new Label(DeskText.NOTEBOOK.say());
        title.getStyleClass().add("heading");
        FlowPane head = DeskParts.bar(title, count);
        due.getStyleClass().add("strong");
        acts.getStyleClass().add("bar");
        acts.setMinHeight(Region.USE_PREF_SIZE);
        acts.getChildren()
                .addAll(
                        DeskParts.button("act-replay", NotebookText.BUTTON_REPLAY, act::replay),
                        DeskParts.button("act-compare", NotebookText.BUTTON_COMPARE, act::compare),
                        DeskParts.button("act-look", NotebookText.BUTTON_LOOK, act::look),
                        DeskParts.button("act-why", NotebookText.BUTTON_WHY, act::why),
                        DeskParts.button("act-page", NotebookText.BUTTON_PAGE, act::page),
                        DeskParts.button("act-put-away", NotebookText.BUTTON_PUT_AWAY, act::putAway),
                        DeskParts.button("act-bin", NotebookText.BUTTON_BIN, act::bin));
        none.getStyleClass().add("none");
        Label emptyTitle = DeskParts.label("empty");
        emptyTitle.setText(NotebookText.EMPTY_TITLE.say());
        emptyTitle.getStyleClass().add("finding");
        Label emptyWords = DeskParts.label("empty-words");
        emptyWords.setText(NotebookText.EMPTY_WHAT_TO_DO.say());
        none.getChildren().addAll(emptyTitle, emptyWords);
        side.setFitToWidth(true);
        side.setHbarPolicy(ScrollBarPolicy.NEVER);
        side.setFocusTraversable(false);
        SplitPane.setResizableWithParent(side, false);
        middle.getItems().addAll(table.node(), side);
        VBox.setVgrow(middle, Priority.ALWAYS);
        VBox.setVgrow(none, Priority.ALWAYS);
        Label keys = DeskParts.label("keys");
        keys.setText(NotebookText.KEYS.say());
        page.getChildren().addAll(head, due, filter, middle, none, acts, said, together, keys);
        setContent(page);
        setFitToWidth(true);
        setFitToHeight(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        sceneProperty().addListener((property, before, scene) -> {
            if (scene != null) scene.focusOwnerProperty().addListener((focus, had, has) -> reveal(has));
        });
        table.node().getSelectionModel().selectedItemProperty().addListener((property, was, is) -> chosenChanged());
        table.node().widthProperty().addListener((property, was, is) -> table.fit());
        widthProperty().addListener((property, was, is) -> arrange());
        letters();
    }

    FilterRow filter() {
        return filter;
    }

    BatchTable table() {
        return table;
    }

    Side side() {
        return shownSide;
    }

    Theme theme() {
        return theme;
    }

    @Override
    public int percent() {
        return percent;
    }

    WhyPane why() {
        return why;
    }

    /** Goes to the rows. */
    void focusRows() {
        table.node().requestFocus();
    }

    /** Shows something else at the side. */
    void open(Side wanted) {
        shownSide = wanted;
        if (wanted == Side.LOOK) table.chosen().ifPresent(look::begin);
        if (wanted == Side.BIN) bin.show();
        side.setContent(
                switch (wanted) {
                    case BATCH -> batch;
                    case COMPARED -> compared;
                    case LOOK -> look;
                    case BIN -> bin;
                    case WHY -> why;
                });
        side.setVvalue(0);
        arrange();
        show();
        if (wanted == Side.BIN) bin.list().requestFocus();
        else if (wanted == Side.LOOK) table.chosen().ifPresent(look::begin);
        else if (wanted == Side.WHY) why.title().requestFocus();
        else focusRows();
        bringIntoSight(wanted);
    }

    /** Under the rows, what was opened may lie below the window's edge, and then nothing would seem to have happened. */
    private void bringIntoSight(Side opened) {
        applyCss();
        layout();
        if (opened == Side.BATCH) Reveal.reveal(table.node(), this);
        else if (middle.getOrientation() == Orientation.VERTICAL) Reveal.begin(side, this);
    }

    /** Brings back the batch that is chosen in the bin. */
    void restoreBinned() {
        bin.restore();
    }

    private void lookKept() {
        if (look.isDone()) open(Side.BATCH);
        else show();
    }

    private void chosenChanged() {
        if (shownSide == Side.BATCH) batch.show(table.chosen(), theme, em(), opensReplay);
        // Who goes on through the rows while the side is open looks for the rows.
        if (table.node().isFocused()) Reveal.reveal(table.node(), this);
    }

    /** Takes a theme. */
    void wear(Theme other) {
        theme = other;
        getStylesheets().setAll(other.deskSheets());
        getStylesheets().add(Theme.sheet("notebook.css"));
        table.node().refresh();
        showSide();
    }

    @Override
    public void scale(int wishedPercent) {
        percent = Math.max(100, Math.min(300, wishedPercent));
        letters();
        desk.say(NotebookText.SAID_SIZE.say(Integer.toString(percent)));
        show();
    }

    private void letters() {
        setStyle("-fx-font-size: " + em() + "px;");
        table.letters(em());
        table.node().setMinHeight(13 * em());
        side.setMinHeight(10 * em());
        arrange();
        requestLayout();
    }

    private void arrange() {
        double sideEms = shownSide == Side.COMPARED ? COMPARED_EMS : SIDE_EMS;
        // Beside each other only where every column of the rows stays in sight.
        boolean beside = getWidth() >= (table.leastEms() + sideEms + AROUND_EMS) * em();
        Orientation wanted = beside ? Orientation.HORIZONTAL : Orientation.VERTICAL;
        side.setMinWidth(beside ? 20 * em() : 0);
        side.setPrefWidth(sideEms * em());
        side.setPrefHeight(20 * em());
        middle.setMinHeight(beside ? 22 * em() : 40 * em());
        if (middle.getOrientation() != wanted) middle.setOrientation(wanted);
        middle.setDividerPositions(beside ? 1 - sideEms * em() / Math.max(1, getWidth()) : ROWS_SHARE);
    }

    private double em() {
        return USUAL_LETTERS * percent / 100.0;
    }

    /** Shows the desk as it is now. */
    void show() {
        List<BatchRow> rows = desk.shown();
        boolean empty = desk.isEmpty();
        set(middle, !empty || shownSide == Side.BIN);
        set(none, empty && shownSide != Side.BIN);
        set(filter, !empty);
        for (Node act : acts.getChildren())
            if (act instanceof Button button)
                set(button, !empty || button.getId().equals("act-bin"));
        filter.fill();
        table.show(rows);
        arrange();
        count.setText(counted(rows));
        String reminders = String.join("  ", desk.reminders());
        due.setText(reminders);
        set(due, !reminders.isEmpty());
        together.setText(empty ? "" : together());
        set(together, !empty);
        said.setText(desk.said().isEmpty() ? " " : desk.said());
        table.node().refresh();
        showSide();
    }

    /** The counts, and what was found of each chocolate on lines of its own. */
    private String together() {
        List<String> lines = new ArrayList<>();
        lines.add(NotebookText.TOGETHER_TITLE.say() + ": " + String.join(" ", desk.together()));
        lines.addAll(desk.found());
        return String.join("\n", lines);
    }

    private String counted(List<BatchRow> rows) {
        String shown = Integer.toString(rows.size());
        StringBuilder words = new StringBuilder(
                rows.size() == desk.count()
                        ? NotebookText.COUNT_ALL.say(shown)
                        : NotebookText.COUNT.say(shown, Integer.toString(desk.count())));
        if (desk.practiceLeftOut() > 0)
            words.append(". ").append(NotebookText.PRACTICE_LEFT_OUT.say(Integer.toString(desk.practiceLeftOut())));
        if (desk.unread() > 0) words.append(" ").append(NotebookText.READING_ON.say(Integer.toString(desk.unread())));
        return words.toString();
    }

    private void showSide() {
        if (side.getContent() == null) side.setContent(batch);
        switch (shownSide) {
            case BATCH -> batch.show(table.chosen(), theme, em(), opensReplay);
            case COMPARED -> compared.show(theme, em());
            case LOOK, BIN -> {}
        }
    }

    private static void set(Region node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }

    /** Scrolls to what has the focus, where large letters have pushed it out of sight. */
    private void reveal(Node focused) {
        Reveal.reveal(focused, side);
        Reveal.reveal(focused, this);
    }
}
