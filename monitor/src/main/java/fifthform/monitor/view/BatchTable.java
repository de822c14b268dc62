package fifthform.monitor.view;

import fifthform.monitor.chart.CurveCanvas;
import fifthform.monitor.notebook.BatchRow;
import fifthform.monitor.notebook.Condition;
import fifthform.monitor.notebook.NotebookDesk;
import fifthform.monitor.notebook.RowOrder;
import fifthform.monitor.notebook.RowWords;
import fifthform.monitor.texts.DeskText;
import fifthform.monitor.texts.NotebookText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableColumn.SortType;
import javafx.scene.control.TableView;

/** The batches as rows, each with its curve. */
final class BatchTable {
    private static final String[] LETTERS = {"A", "B", "C"};

    private final NotebookDesk desk;
    private final Supplier<Theme> theme;
    private final TableView<BatchRow> table = new TableView<>();
    private final List<TableColumn<BatchRow, BatchRow>> sortable = new ArrayList<>();
    private double em = 13;
    private int firstColumn;

    BatchTable(NotebookDesk desk, Supplier<Theme> theme) {
        this.desk = desk;
        this.theme = theme;
        table.setId("batches");
        table.setAccessibleText(DeskText.NOTEBOOK.say());
        table.getStyleClass().add("batches");
        table.setPlaceholder(new Label(NotebookText.NONE_FITS.say()));
        column(NotebookText.COLUMN_WHEN, 10.4, Optional.of(RowOrder.WHEN), RowWords::when);
        column(NotebookText.COLUMN_CHOCOLATE, 9.6, Optional.of(RowOrder.CHOCOLATE), RowWords::chocolate);
        column(NotebookText.COLUMN_BOWL, 6.5, Optional.of(RowOrder.BOWL), RowWords::bowl);
        column(NotebookText.COLUMN_AMOUNT, 4.9, Optional.of(RowOrder.AMOUNT), RowWords::amount);
        column(NotebookText.COLUMN_LENGTH, 5.0, Optional.of(RowOrder.LENGTH), RowWords::minutes);
        curves();
        column(NotebookText.COLUMN_PEAK, 6.2, Optional.of(RowOrder.PEAK), row -> RowWords.peak(row, desk.units()));
        column(NotebookText.COLUMN_END, 12, Optional.of(RowOrder.END), RowWords::end);
        column(NotebookText.COLUMN_LOOKS, 11.2, Optional.of(RowOrder.LOOKS), this::looks);
        sortable.get(0).setSortType(SortType.DESCENDING);
        table.getSortOrder().add(sortable.get(0));
    }

    TableView<BatchRow> node() {
        return table;
    }

    private String looks(BatchRow row) {
        String due = desk.due(row).isPresent() ? " · " + NotebookText.LOOK_DUE.say() : "";
        return RowWords.looks(row) + due;
    }

    static String letter(int place) {
        return LETTERS[place];
    }

    private void column(NotebookText name, double ems, Optional<RowOrder> order, Function<BatchRow, String> words) {
        TableColumn<BatchRow, BatchRow> column = new TableColumn<>(name.say());
        column.setUserData(ems);
        column.setReorderable(false);
        column.setCellValueFactory(cell -> new SimpleObjectProperty<>(cell.getValue()));
        column.setCellFactory(made -> new WordsCell(words));
        order.ifPresent(by -> {
            column.setComparator(by.comparator());
            sortable.add(column);
        });
        column.setSortable(order.isPresent());
        table.getColumns().add(column);
    }

    private void curves() {
        TableColumn<BatchRow, BatchRow> column = new TableColumn<>(NotebookText.COLUMN_CURVE.say());
        column.setUserData(8.0);
        column.setSortable(false);
        column.setReorderable(false);
        column.setCellValueFactory(cell -> new SimpleObjectProperty<>(cell.getValue()));
        column.setCellFactory(made -> new CurveCell());
        table.getColumns().add(column);
    }

    /** Sorts by a column, from 0; by the same once more, the other way round. */
    void sortBy(int place) {
        if (place >= sortable.size()) return;
        TableColumn<BatchRow, BatchRow> column = sortable.get(place);
        boolean same = table.getSortOrder().size() == 1 && table.getSortOrder().get(0) == column;
        boolean turn = same && column.getSortType() == SortType.ASCENDING;
        column.setSortType(turn ? SortType.DESCENDING : SortType.ASCENDING);
        table.getSortOrder().setAll(List.of(column));
        table.sort();
    }

    /** Brings columns into sight that large letters have pushed out of it. */
    void sideways(int columns) {
        firstColumn = Math.max(0, Math.min(table.getColumns().size() - 1, firstColumn + 3 * columns));
        table.scrollToColumnIndex(firstColumn);
    }

    /** Letters of this size, pixels. */
    void letters(double emPixels) {
        em = emPixels;
        table.setFixedCellSize(Math.ceil(2.9 * em));
        fit();
        table.refresh();
    }

    /** Shares the width out: what is left over goes to the words, and what is missing is scrolled to. */
    void fit() {
        double all = table.getColumns().stream()
                .mapToDouble(c -> (double) c.getUserData())
                .sum();
        double room = table.getWidth() - 1.3 * em;
        double factor = Math.max(1, room / (all * em));
        for (TableColumn<BatchRow, ?> column : table.getColumns())
            column.setPrefWidth(Math.floor((double) column.getUserData() * em * factor));
    }

    /** Shows these rows, and keeps the one that is chosen. */
    void show(List<BatchRow> rows) {
        Optional<String> chosen = chosen().map(BatchRow::name);
        int place = table.getSelectionModel().getSelectedIndex();
        if (!table.getItems().equals(rows)) {
            table.getItems().setAll(rows);
            table.sort();
        }
        for (int i = 0; i < table.getItems().size(); i++) {
            if (chosen.filter(table.getItems().get(i).name()::equals).isPresent()) {
                choose(i);
                return;
            }
        }
        if (!table.getItems().isEmpty())
            choose(Math.max(0, Math.min(place, table.getItems().size() - 1)));
    }

    private void choose(int place) {
        if (table.getSelectionModel().getSelectedIndex() == place) return;
        table.getSelectionModel().clearAndSelect(place);
        table.getFocusModel().focus(place);
    }

    /** Chooses a batch and goes there. */
    void choose(String name) {
        for (int i = 0; i < table.getItems().size(); i++)
            if (table.getItems().get(i).name().equals(name)) {
                choose(i);
                table.scrollTo(Math.max(0, i - 2));
            }
    }

    Optional<BatchRow> chosen() {
        return Optional.ofNullable(table.getSelectionModel().getSelectedItem());
    }

    private static final class WordsCell extends TableCell<BatchRow, BatchRow> {
        private final Function<BatchRow, String> words;

        WordsCell(Function<BatchRow, String> words) {
            this.words = words;
            setWrapText(true);
        }

        @Override
        protected void updateItem(BatchRow row, boolean empty) {
            super.updateItem(row, empty);
            setText(empty || row == null ? "" : words.apply(row));
            getStyleClass().remove("quiet");
            boolean quiet = !empty && row != null && row.condition() == Condition.UNREAD;
            if (quiet) getStyleClass().add("quiet");
        }
    }

    private final class CurveCell extends TableCell<BatchRow, BatchRow> {
        private final CurveCanvas curve = CurveCanvas.small();

        CurveCell() {
            curve.setMinSize(0, 0);
            getStyleClass().add("curve-cell");
        }

        @Override
        protected void updateItem(BatchRow row, boolean empty) {
            super.updateItem(row, empty);
            boolean none = empty || row == null || row.curve().points() == 0;
            setGraphic(none ? null : curve);
            if (none) return;
            curve.setPrefSize(8 * em, 2.5 * em);
            curve.setPrefWidth(Math.max(em, getTableColumn().getWidth() - 0.8 * em));
            int place = desk.place(row);
            String letter = place < 0 ? "" : letter(place);
            String spoken = Curves.spoken(row, desk.units());
            curve.show(
                    Curves.of(row, row.curve(), letter, desk.units()),
                    place < 0 ? spoken : NotebookText.COMPARED_AS.say(letter, spoken),
                    theme.get().palette(),
                    em);
        }
    }
}
