package fifthform.monitor.view;

import fifthform.monitor.replay.ListRow;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import javafx.beans.binding.Bindings;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A list for the desk: time, what, and its figures under it; Enter or a click takes a row. */
final class RowList extends ListView<ListRow> {
    private List<ListRow> shown = List.of();
    private double letters;

    RowList(String id, String name, IntConsumer taken) {
        setId(id);
        setAccessibleText(name);
        setAccessibleRole(AccessibleRole.LIST_VIEW);
        setCellFactory(list -> new Cell(this));
        setOnKeyPressed(event -> {
            int place = getSelectionModel().getSelectedIndex();
            if (event.getCode() != KeyCode.ENTER || place < 0) return;
            event.consume();
            taken.accept(place);
        });
        setOnMouseClicked(event -> {
            int place = getSelectionModel().getSelectedIndex();
            if (place >= 0) taken.accept(place);
        });
        setMinHeight(0);
        setPrefHeight(0);
    }

    /** Gives the first words of each row a column of this width, in letters, and their weight. */
    RowList headed(double wide) {
        letters = wide;
        return this;
    }

    /** Shows these rows; nothing happens where they are shown already, so that what is chosen stays chosen. */
    void show(List<ListRow> rows) {
        if (rows.equals(shown)) return;
        int place = getSelectionModel().getSelectedIndex();
        shown = rows;
        getItems().setAll(rows);
        if (place >= 0 && place < rows.size()) getSelectionModel().select(place);
    }

    /** The place that is chosen; -1 for none. */
    int chosen() {
        return getSelectionModel().getSelectedIndex();
    }

    private static final class Cell extends ListCell<ListRow> {
        private final Label time = new Label();
        private final Label words = new Label();
        private final Label detail = new Label();
        private final HBox line;

        Cell(RowList list) {
            VBox text = new VBox(words, detail);
            (list.letters > 0 ? time : words).getStyleClass().add("strong");
            words.setWrapText(true);
            detail.setWrapText(true);
            if (list.letters == 0) time.setMinWidth(USE_PREF_SIZE);
            else
                time.minWidthProperty()
                        .bind(Bindings.createDoubleBinding(
                                () -> list.letters * time.getFont().getSize(), time.fontProperty()));
            HBox.setHgrow(text, Priority.ALWAYS);
            text.setMinWidth(0);
            line = new HBox(time, text);
            line.spacingProperty()
                    .bind(Bindings.createDoubleBinding(() -> time.getFont().getSize(), time.fontProperty()));
            // As wide as the list, so that long rows wrap instead of running out of it.
            prefWidthProperty().bind(list.widthProperty().subtract(24));
            setMaxWidth(USE_PREF_SIZE);
        }

        @Override
        protected void updateItem(ListRow row, boolean empty) {
            super.updateItem(row, empty);
            if (empty || row == null) {
                setGraphic(null);
                setAccessibleText(null);
                return;
            }
            put(time, row.time());
            put(words, row.words());
            put(detail, row.detail());
            setGraphic(line);
            setAccessibleText(String.join(". ", List.of(row.time(), row.words(), row.detail())));
        }

        private static void put(Label label, String text) {
            label.setText(text);
            label.setVisible(!text.isEmpty());
            label.setManaged(!text.isEmpty());
        }
    }

    /** The row that is chosen. */
    Optional<ListRow> chosenRow() {
        return Optional.ofNullable(getSelectionModel().getSelectedItem());
    }
}
