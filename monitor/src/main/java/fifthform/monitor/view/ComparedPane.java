package fifthform.monitor.view;

import fifthform.monitor.chart.CurveCanvas;
import fifthform.monitor.notebook.Comparison;
import fifthform.monitor.notebook.NotebookDesk;
import fifthform.monitor.notebook.RowWords;
import fifthform.monitor.texts.NotebookText;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Up to three batches over each other, their figures side by side. */
final class ComparedPane extends VBox {
    private final NotebookDesk desk;
    private final CurveCanvas curve = CurveCanvas.large();
    private final Label how = DeskParts.words("");
    private final GridPane figures = new GridPane();

    ComparedPane(NotebookDesk desk) {
        this.desk = desk;
        getStyleClass().add("side");
        Label title = new Label(NotebookText.COMPARE_TITLE.say());
        title.getStyleClass().add("heading");
        title.setId("compare-title");

        figures.getStyleClass().add("figures");
        figures.setId("compared");
        getChildren().addAll(title, curve, how, figures);
    }

    void show(Theme theme, double em) {
        Comparison comparison = desk.comparison();
        boolean none = comparison.batches().isEmpty();
        curve.setVisible(!none);
        curve.setManaged(!none);
        curve.setMinHeight(12 * em);
        curve.setPrefHeight(16 * em);
        how.setText(none ? NotebookText.COMPARE_HOW.say() : NotebookText.COMPARE_MATCHED.say());
        figures.getChildren().clear();
        figures.getColumnConstraints().clear();
        if (none) return;
        curve.show(
                Curves.of(comparison, desk.units()),
                NotebookText.CURVES_SPOKEN.say(
                        Integer.toString(comparison.batches().size())),
                theme.palette(),
                em);
        columns(comparison.batches().size());
        figures.add(DeskParts.words(NotebookText.FIGURE_BATCH.say()), 0, 0);
        for (int i = 0; i < comparison.batches().size(); i++) {
            Comparison.Laid laid = comparison.batches().get(i);
            String unmatched = laid.isMatched() ? "" : " (" + NotebookText.COMPARE_NOT_COOLED.say() + ")";
            Label head = DeskParts.words(BatchTable.letter(i) + "  " + RowWords.when(laid.row()) + unmatched);
            head.getStyleClass().add("strong");
            figures.add(head, i + 1, 0);
        }
        for (int line = 0; line < comparison.figures().size(); line++) {
            List<String> cells = comparison.figures().get(line);
            for (int i = 0; i < cells.size(); i++) {
                Label cell = DeskParts.words(cells.get(i));
                if (i > 0 && differs(cells)) cell.getStyleClass().add("strong");
                figures.add(cell, i, line + 1);
            }
        }
    }

    private static boolean differs(List<String> cells) {
        return cells.stream().skip(1).distinct().count() > 1;
    }

    private void columns(int batches) {
        ColumnConstraints names = new ColumnConstraints();
        names.setMinWidth(0);
        names.setPercentWidth(100.0 / (batches + 1));
        figures.getColumnConstraints().add(names);
        for (int i = 0; i < batches; i++) {
            ColumnConstraints values = new ColumnConstraints();
            values.setMinWidth(0);
            values.setPrefWidth(10);
            values.setHgrow(Priority.ALWAYS);
            figures.getColumnConstraints().add(values);
        }
    }
}
