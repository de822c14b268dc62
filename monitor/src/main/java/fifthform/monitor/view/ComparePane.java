package fifthform.monitor.view;

import fifthform.monitor.replay.Compared;
import fifthform.monitor.replay.Compared.Agreement;
import fifthform.monitor.replay.ReplayPicture;
import fifthform.monitor.texts.ReplayText;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Told then beside computed now; where the two differ a word says so. */
final class ComparePane extends VBox {
    private final Label moment = new Label();
    private final Label agreement = new Label();
    private final GridPane grid = new GridPane();
    private final List<Label[]> lines = new ArrayList<>();

    ComparePane() {
        setId("compare");
        getStyleClass().add("pane");
        moment.getStyleClass().add("heading");
        agreement.setId("agreement");
        agreement.setWrapText(true);
        grid.getStyleClass().add("compare");
        ColumnConstraints label = new ColumnConstraints();
        label.setMinWidth(USE_PREF_SIZE);
        ColumnConstraints words = new ColumnConstraints();
        words.setHgrow(Priority.ALWAYS);
        // Both alike and as wide as there is room, whatever stands in them.
        words.setMinWidth(0);
        words.setPrefWidth(10);
        grid.getColumnConstraints().addAll(label, words, words);
        Label then = new Label(ReplayText.HEADING_THEN.say());
        Label now = new Label(ReplayText.HEADING_NOW.say());
        then.getStyleClass().add("head");
        now.getStyleClass().add("head");
        grid.add(moment, 0, 0);
        grid.add(then, 1, 0);
        grid.add(now, 2, 0);
        getChildren().addAll(grid, agreement);
    }

    void show(ReplayPicture picture) {
        moment.setText(picture.moment());
        agreement.setText(picture.agreement());
        for (int i = 0; i < picture.compared().size(); i++)
            line(i, picture.compared().get(i));
    }

    private void line(int place, Compared line) {
        while (lines.size() <= place) add();
        Label[] labels = lines.get(place);
        boolean differs = line.agreement() == Agreement.DIFFERS;
        set(labels[0], line.label());
        set(labels[1], line.then());
        set(labels[2], differs ? ReplayText.DIFFERS.say(line.now()) : line.now());
        labels[2].getStyleClass().removeAll("differs");
        if (differs) labels[2].getStyleClass().add("differs");
    }

    private static void set(Label label, String words) {
        if (!words.equals(label.getText())) label.setText(words);
    }

    private void add() {
        Label[] labels = {new Label(), new Label(), new Label()};
        for (int column = 0; column < labels.length; column++) {
            labels[column].setWrapText(column > 0);
            GridPane.setValignment(labels[column], VPos.TOP);
            grid.add(labels[column], column, lines.size() + 1);
        }
        lines.add(labels);
    }
}
