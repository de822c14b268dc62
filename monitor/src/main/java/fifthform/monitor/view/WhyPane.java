package fifthform.monitor.view;

import fifthform.monitor.notebook.BatchRow;
import fifthform.monitor.texts.NotebookText;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** Why the bars of one batch came out as they did. */
final class WhyPane extends VBox {
    private final Label title = DeskParts.words("");
    private final VBox lines = new VBox();

    WhyPane() {
        getStyleClass().add("side");
        title.getStyleClass().add("heading");
        title.setId("why-title");
        // With large letters it stands below the rows, and what has the focus is brought into sight.
        title.setFocusTraversable(true);
        title.setAccessibleText(NotebookText.BUTTON_WHY.say());
        lines.getStyleClass().add("looks");
        lines.setId("why-lines");
        getChildren().addAll(title, lines);
    }

    /** While the batch is gone through. */
    void begin(BatchRow row) {
        title.setText(NotebookText.WHY_TITLE.say(row.name()));
        title.setAccessibleText(title.getText());
        tell(List.of(NotebookText.WHY_READING.say()));
    }

    Label title() {
        return title;
    }

    void tell(List<String> said) {
        lines.getChildren().clear();
        for (int i = 0; i < said.size(); i++) {
            Label label = DeskParts.words("");
            label.setText(said.get(i).strip());
            if (i == 0) label.getStyleClass().add("strong");
            lines.getChildren().add(label);
        }
    }
}
