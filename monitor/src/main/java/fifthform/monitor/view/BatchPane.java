package fifthform.monitor.view;

import fifthform.monitor.chart.CurveCanvas;
import fifthform.monitor.looks.KeptLook;
import fifthform.monitor.looks.LookWords;
import fifthform.monitor.notebook.BatchRow;
import fifthform.monitor.notebook.NotebookDesk;
import fifthform.monitor.notebook.RowWords;
import fifthform.monitor.texts.NotebookText;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One batch: its curve, its figures, the looks at its bars. */
final class BatchPane extends VBox {
    private final NotebookDesk desk;
    private final Label title = new Label();
    private final CurveCanvas curve = CurveCanvas.large();
    private final GridPane figures = new GridPane();
    private final VBox looks = new VBox();
    private final PhotoRow photos = new PhotoRow();
    private final Label trouble = DeskParts.words("");
    private final Label due = DeskParts.words("");
    private final VBox typed = new VBox();
    private final TextField command = new TextField();

    BatchPane(NotebookDesk desk) {
        this.desk = desk;
        getStyleClass().add("side");
        title.getStyleClass().add("heading");
        title.setId("batch-title");
        title.setWrapText(true);
        figures.getStyleClass().add("figures");
        looks.getStyleClass().add("looks");
        due.getStyleClass().add("strong");
        command.setEditable(false);
        command.setId("replay-command");
        command.setAccessibleText(NotebookText.TYPE_THIS.say());
        typed.getChildren().addAll(new Label(NotebookText.TYPE_THIS.say()), command);
        getChildren().addAll(title, curve, due, trouble, figures, looks, photos, typed);
    }

    void show(Optional<BatchRow> chosen, Theme theme, double em, boolean opensReplay) {
        getChildren().forEach(node -> node.setVisible(chosen.isPresent()));
        if (chosen.isEmpty()) {
            title.setVisible(true);
            title.setText(NotebookText.SIDE_NOTHING.say());
            return;
        }
        BatchRow row = chosen.get();
        title.setText(row.name());
        boolean drawn = row.curve().points() > 0;
        set(curve, drawn);
        curve.setMinHeight(10 * em);
        curve.setPrefHeight(12 * em);
        if (drawn)
            curve.show(
                    Curves.of(row, desk.finest(row), "", desk.units()),
                    Curves.spoken(row, desk.units()),
                    theme.palette(),
                    em);
        set(due, desk.due(row).isPresent());
        due.setText(NotebookText.DUE_HERE.say());
        set(trouble, !row.trouble().isEmpty());
        trouble.setText(NotebookText.TROUBLE.say(row.trouble()));
        figures.getChildren().clear();
        set(figures, row.counts());
        if (row.counts()) figures(row);
        looks.getChildren().clear();
        for (KeptLook look : row.looks()) {
            Label label = DeskParts.words("");
            label.setText(LookWords.line(look) + ". " + LookWords.sign(look.look()));
            looks.getChildren().add(label);
        }
        set(looks, !row.looks().isEmpty());
        photos.show(row, em);
        set(photos, !row.photos().isEmpty());
        set(typed, !opensReplay);
        command.setText("monitor/run replay " + row.name());
    }

    private static void set(javafx.scene.Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }

    private void figures(BatchRow row) {
        figure(NotebookText.FIGURE_WHEN, RowWords.when(row));
        figure(NotebookText.FIGURE_CHOCOLATE, RowWords.chocolate(row));
        said(NotebookText.FIGURE_BEGAN, RowWords.beginning(row));
        said(NotebookText.FIGURE_AGAIN_IN, String.join(", ", desk.madeFrom(row)));
        said(NotebookText.FIGURE_HOLD, RowWords.hold(row));
        figure(NotebookText.FIGURE_BOWL, RowWords.bowl(row) + ", " + RowWords.amount(row));
        figure(NotebookText.FIGURE_LENGTH, NotebookText.MINUTES.say(RowWords.minutes(row)));
        figure(NotebookText.FIGURE_LOWEST, RowWords.lowest(row, desk.units()));
        figure(NotebookText.FIGURE_PEAK, RowWords.peak(row, desk.units()));
        figure(NotebookText.FIGURE_RANGE, RowWords.range(row, desk.units()));
        figure(NotebookText.FIGURE_OVER, RowWords.over(row));
        figure(NotebookText.FIGURE_END, RowWords.end(row));
    }

    private void said(NotebookText name, String value) {
        if (!value.isEmpty()) figure(name, value);
    }

    private void figure(NotebookText name, String value) {
        Label label = new Label(name.say());
        label.setMinWidth(Region.USE_PREF_SIZE);
        Label said = DeskParts.words("");
        said.setText(value);
        said.getStyleClass().add("strong");
        figures.addRow(figures.getRowCount(), label, said);
    }
}
