package fifthform.monitor.view;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Bowl;
import fifthform.monitor.plan.PlanDesk;
import fifthform.monitor.plan.PlanField;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.PlanText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;

/** The plan's form, in as many columns as there is room for; whatever is typed is planned at once. */
final class PlanForm extends GridPane {
    /** The longest name, and a field that holds the name of a chocolate. */
    private static final double COLUMN_EMS = 22.8;

    private static final double FIELD_EMS = 11.5;

    /** A field with its name, or what needs none. */
    private record Row(Optional<Label> name, Node field) {}

    private final PlanDesk desk;
    private final Runnable changed;
    private final List<Row> rows = new ArrayList<>();

    PlanForm(PlanDesk desk, Runnable changed) {
        this.desk = desk;
        this.changed = changed;
        getStyleClass().add("figures");
        field(PlanField.AMOUNT);
        choice("plan-chocolate", PlanText.CHOCOLATE, desk.recipes(), Recipe::name, desk.recipe(), desk::choose);
        choice("plan-bowl", PlanText.BOWL, desk.bowls(), PlanForm::words, desk.bowl(), desk::choose);
        for (PlanField field : PlanField.values()) {
            if (field != PlanField.AMOUNT) field(field);
            if (field == PlanField.PAN_WEIGHT)
                choice("plan-pan", PlanText.PAN, PlanDesk.pans(), InWords::of, desk.pan(), desk::choosePan);
        }
        CheckBox checked = new CheckBox(PlanText.CHECKED.say());
        checked.setId("plan-checked");
        checked.setWrapText(true);
        checked.setMinHeight(Region.USE_PREF_SIZE);
        checked.setSelected(desk.isChecked());
        checked.selectedProperty().addListener((property, was, is) -> {
            desk.check(is);
            changed.run();
        });
        rows.add(new Row(Optional.empty(), checked));
        rows.forEach(each -> {
            each.name().ifPresent(getChildren()::add);
            getChildren().add(each.field());
        });
        columns(1, 1);
    }

    /** How many columns fit beside each other. */
    static int columnsIn(double ems) {
        return Math.max(1, (int) Math.floor(ems / COLUMN_EMS));
    }

    /** Lays the fields out in so many columns, read downwards, for letters of this size, pixels. */
    void columns(int count, double em) {
        getColumnConstraints().clear();
        for (int i = 0; i < count; i++) {
            ColumnConstraints words = new ColumnConstraints();
            words.setMinWidth(Region.USE_PREF_SIZE);
            ColumnConstraints values = new ColumnConstraints(FIELD_EMS * em);
            getColumnConstraints().addAll(words, values);
        }
        int high = (rows.size() + count - 1) / count;
        for (int i = 0; i < rows.size(); i++) {
            int column = 2 * (i / high);
            int row = i % high;
            Optional<Label> name = rows.get(i).name();
            name.ifPresent(label -> GridPane.setConstraints(label, column, row));
            if (name.isPresent()) GridPane.setConstraints(rows.get(i).field(), column + 1, row);
            else GridPane.setConstraints(rows.get(i).field(), column, row, 2, 1);
        }
    }

    private static String words(Bowl bowl) {
        return InWords.bowl(bowl.id(), bowl.material());
    }

    /** The field that everything follows from. */
    TextField amount() {
        return (TextField) lookup("#plan-amount");
    }

    private void field(PlanField field) {
        TextField text = new TextField(desk.typed(field));
        text.setId("plan-" + field.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
        text.setPromptText(PlanText.USUAL.say());
        String label = field.label(desk.units());
        text.setAccessibleText(label);
        text.setPrefColumnCount(7);
        text.textProperty().addListener((property, was, is) -> {
            desk.type(field, is);
            changed.run();
        });
        row(label, text);
    }

    private <T> void choice(
            String id, PlanText words, List<T> all, Function<T, String> name, T chosen, Consumer<T> choose) {
        ChoiceBox<T> box = new ChoiceBox<>();
        box.setId(id);
        box.setAccessibleText(words.say());
        box.setConverter(new ShownAs<>(name));
        box.getItems().setAll(all);
        box.setValue(chosen);
        box.setMaxWidth(Double.MAX_VALUE);
        box.valueProperty().addListener((property, was, is) -> {
            choose.accept(is);
            changed.run();
        });
        row(words.say(), box);
    }

    private void row(String words, Node node) {
        Label label = new Label(words);
        label.setLabelFor(node);
        rows.add(new Row(Optional.of(label), node));
    }
}
