package fifthform.monitor.view;

import fifthform.monitor.notebook.Bin;
import fifthform.monitor.notebook.NotebookDesk;
import fifthform.monitor.texts.NotebookText;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What was put away: bring it back, or delete it for good after one question. */
final class BinPane extends VBox {
    private final NotebookDesk desk;
    private final Runnable changed;
    private final ListView<Bin.Binned> list = new ListView<>();
    private final Label question = new Label();
    private final Button restore = new Button(NotebookText.BUTTON_RESTORE.say());
    private final Button empty = new Button(NotebookText.BUTTON_EMPTY.say());
    private final Button yes = new Button();
    private final Button no = new Button(NotebookText.BUTTON_NO.say());
    private List<Bin.Binned> asked = List.of();

    BinPane(NotebookDesk desk, Runnable changed) {
        this.desk = desk;
        this.changed = changed;
        getStyleClass().add("side");
        Label title = new Label(NotebookText.BIN_TITLE.say());
        title.getStyleClass().add("heading");
        list.setId("bin");
        list.setAccessibleText(NotebookText.BIN_TITLE.say());
        list.setPlaceholder(new Label(NotebookText.BIN_EMPTY.say()));
        list.setCellFactory(made -> new ListCell<>() {
            @Override
            protected void updateItem(Bin.Binned batch, boolean none) {
                super.updateItem(batch, none);
                setText(
                        none || batch == null
                                ? ""
                                : NotebookText.BIN_ROW.say(batch.name(), Integer.toString(batch.files())));
            }
        });
        question.setWrapText(true);
        question.setMinHeight(Region.USE_PREF_SIZE);
        question.setId("question");
        question.getStyleClass().add("strong");
        restore.setId("restore");
        restore.setOnAction(event -> restore());
        empty.setId("empty-bin");
        empty.setOnAction(event -> ask());
        yes.setId("empty-yes");
        yes.setOnAction(event -> empty());
        no.setId("empty-no");
        no.setOnAction(event -> {
            show();
            list.requestFocus();
        });
        FlowPane buttons = new FlowPane(restore, empty, yes, no);
        buttons.getStyleClass().add("bar");
        getChildren().addAll(title, list, question, buttons);
    }

    ListView<Bin.Binned> list() {
        return list;
    }

    /** What is in the bin now; a question that stands is taken back. */
    void show() {
        asked = List.of();
        list.getItems().setAll(desk.binned());
        if (!list.getItems().isEmpty()) list.getSelectionModel().select(0);
        questionShown(false);
    }

    private void questionShown(boolean shown) {
        boolean filled = !list.getItems().isEmpty();
        set(question, shown);
        set(yes, shown);
        set(no, shown);
        set(restore, !shown && filled);
        set(empty, !shown && filled);
    }

    private static void set(Region node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }

    void restore() {
        Optional.ofNullable(list.getSelectionModel().getSelectedItem()).ifPresent(desk::restore);
        show();
        changed.run();
        list.requestFocus();
    }

    private void ask() {
        asked = List.copyOf(list.getItems());
        String count = Integer.toString(asked.size());
        question.setText(NotebookText.BIN_QUESTION.say(count));
        yes.setText(NotebookText.BUTTON_EMPTY_YES.say(count));
        questionShown(true);
        // The answer that deletes is never the one that a second press of the same key gives.
        no.requestFocus();
    }

    private void empty() {
        desk.empty(asked);
        show();
        changed.run();
        list.requestFocus();
    }
}
