package fifthform.monitor.view;

import fifthform.monitor.chart.CurveCanvas;
import fifthform.monitor.chart.Typeface;
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
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableColumn.SortType;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;

/** The batches as rows, each with its curve. */
final class BatchTable {
    /** The scroll bar and the frame. */
    private static final double BESIDE_COLUMNS_EMS = 1.3;

    /** What stands free beside the words of a cell. */
    private static final double CELL_ROOM_EMS = 1.1;

    private static final double MOST_FOR_BOWL_EMS = 10;

    /** As high as two lines of a cell, and as three: words wrap where columns are narrow. */
    private static final double ROW_EMS = 2.9;

    private static final double HIGH_ROW_EMS = 4.5;

    private static final double TOOLKITS_USUAL_WIDTH = 80;

    private static final String[] LETTERS = {"A", "B", "C"};

    private final NotebookDesk desk;
    private final Supplier<Theme> theme;
    private final TableView<BatchRow> table = new TableView<>();
    private final List<TableColumn<BatchRow, BatchRow>> sortable = new ArrayList<>();
    private double em = 13;
    private double bowlEms;
    private int firstColumn;

    /**
     * How wide a column is.
     *
     * @param wished where there is room
     * @param least with words that wrap
     * @param canGo whether it leaves where there is still less room: the side says it too
     */
    private record Ems(double wished, double least, boolean canGo) {}

    BatchTable(NotebookDesk desk, Supplier<Theme> theme) {
        this.desk = desk;
        this.theme = theme;
        table.setId("batches");
        table.setAccessibleText(DeskText.NOTEBOOK.say());
        table.getStyleClass().add("batches");
        table.setPlaceholder(new Label(NotebookText.NONE_FITS.say()));
        column(NotebookText.COLUMN_WHEN, new Ems(10.4, 6.9, false), Optional.of(RowOrder.WHEN), RowWords::when);
        column(
                NotebookText.COLUMN_CHOCOLATE,
                new Ems(9.6, 6.6, false),
                Optional.of(RowOrder.CHOCOLATE),
                RowWords::chocolate);
        column(NotebookText.COLUMN_BOWL, new Ems(6.5, 5, false), Optional.of(RowOrder.BOWL), RowWords::bowl);
        column(NotebookText.COLUMN_AMOUNT, new Ems(4.9, 4.9, true), Optional.of(RowOrder.AMOUNT), RowWords::amount);
        column(NotebookText.COLUMN_LENGTH, new Ems(5, 5, true), Optional.of(RowOrder.LENGTH), RowWords::minutes);
        curves();
        column(
                NotebookText.COLUMN_PEAK,
                new Ems(6.2, 6.2, false),
                Optional.of(RowOrder.PEAK),
                row -> RowWords.peak(row, desk.units()));
        column(NotebookText.COLUMN_END, new Ems(12, 8.5, false), Optional.of(RowOrder.END), RowWords::end);
        column(NotebookText.COLUMN_LOOKS, new Ems(11.2, 8.5, false), Optional.of(RowOrder.LOOKS), this::looks);
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

    private void column(NotebookText name, Ems ems, Optional<RowOrder> order, Function<BatchRow, String> words) {
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
        column.setUserData(new Ems(8, 5, false));
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
        fit();
        table.refresh();
    }

    /** As wide as it must be to show all its columns, in letters. */
    double leastEms() {
        return sum(Ems::least, true) + BESIDE_COLUMNS_EMS;
    }

    /**
     * Shares the width out: what is left over goes to the words, and where it is missing they wrap. Where even that is too
     * little, two columns of figures leave, and the rest is scrolled to.
     */
    void fit() {
        double room = table.getWidth() / em - BESIDE_COLUMNS_EMS;
        boolean all = room >= sum(Ems::least, true);
        double wished = sum(Ems::wished, all);
        double least = sum(Ems::least, all);
        boolean wraps = room < wished;
        double share = wraps ? Math.max(0, (room - least) / (wished - least)) : 1;
        double factor = Math.max(1, room / wished);
        for (TableColumn<BatchRow, ?> column : table.getColumns()) {
            Ems ems = ems(column);
            column.setVisible(all || !ems.canGo());
            double wide = Math.floor((ems.least() + share * (ems.wished() - ems.least())) * factor * em);
            // The toolkit takes its own usual width for none at all and fits such a column to its words.
            column.setPrefWidth(wide == TOOLKITS_USUAL_WIDTH ? wide - 1 : wide);
        }
        table.setFixedCellSize(Math.ceil((wraps ? HIGH_ROW_EMS : ROW_EMS) * em));
    }

    private double sum(ToDoubleFunction<Ems> width, boolean all) {
        return table.getColumns().stream()
                .map(this::ems)
                .filter(ems -> all || !ems.canGo())
                .mapToDouble(width)
                .sum();
    }

    /** The bowls' column holds each word of their names whole: half a name is none. */
    private Ems ems(TableColumn<BatchRow, ?> column) {
        Ems ems = (Ems) column.getUserData();
        if (!column.getText().equals(NotebookText.COLUMN_BOWL.say())) return ems;
        return new Ems(Math.max(ems.wished(), bowlEms), Math.max(ems.least(), bowlEms), false);
    }

    private static double widestWord(List<BatchRow> rows) {
        return rows.stream()
                .flatMap(row -> Stream.of(RowWords.bowl(row).split(" ")))
                .distinct()
                .mapToDouble(word -> Typeface.REGULAR.width(word, 1))
                .max()
                .orElse(0);
    }

    /** Shows these rows, and keeps the one that is chosen. */
    void show(List<BatchRow> rows) {
        bowlEms = Math.min(MOST_FOR_BOWL_EMS, widestWord(rows) + CELL_ROOM_EMS);
        fit();
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
            setText(empty || row == null ? "" : DeskParts.held(words.apply(row)));
            getStyleClass().remove("quiet");
            boolean quiet = !empty && row != null && row.condition() == Condition.UNREAD;
            if (quiet) getStyleClass().add("quiet");
        }
    }

    private final class CurveCell extends TableCell<BatchRow, BatchRow> {
        private final CurveCanvas curve = CurveCanvas.small();
        private final ChangeListener<Boolean> redraws = (property, was, is) -> draw();

        CurveCell() {
            curve.setMinSize(0, 0);
            getStyleClass().add("curve-cell");
            // Cells come and go; the table stays.
            table.focusedProperty().addListener(new WeakChangeListener<>(redraws));
            tableRowProperty().flatMap(TableRow::selectedProperty).addListener(redraws);
        }

        @Override
        protected void updateItem(BatchRow row, boolean empty) {
            super.updateItem(row, empty);
            boolean none = empty || row == null || row.curve().points() == 0;
            setGraphic(none ? null : curve);
            draw();
        }

        /** The row that is chosen is reversed while the rows have the focus, and so is its curve. */
        private void draw() {
            if (getGraphic() == null) return;
            BatchRow row = getItem();
            boolean reversed = table.isFocused() && getTableRow().isSelected();
            curve.setPrefSize(8 * em, 2.5 * em);
            curve.setPrefWidth(Math.max(em, getTableColumn().getWidth() - 0.8 * em));
            int place = desk.place(row);
            String letter = place < 0 ? "" : letter(place);
            String spoken = Curves.spoken(row, desk.units());
            curve.show(
                    Curves.of(row, row.curve(), letter, desk.units()),
                    place < 0 ? spoken : NotebookText.COMPARED_AS.say(letter, spoken),
                    (reversed ? theme.get().other() : theme.get()).palette(),
                    em);
        }
    }
}
