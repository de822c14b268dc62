package fifthform.monitor.view;

import fifthform.monitor.setup.Setting;
import fifthform.monitor.setup.SettingTable;
import fifthform.monitor.setup.SettingWords;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.texts.SetupText;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** One setting: what it is, its value, and the way back to what is usual. */
final class SettingRow extends VBox {
    private final SetupDesk desk;
    private final String name;
    private final Runnable changed;
    private final Node control;
    private final Button usual = new Button(SetupText.USUAL.say());
    private boolean filling;

    SettingRow(SetupDesk desk, String name, Runnable changed) {
        this.desk = desk;
        this.name = name;
        this.changed = changed;
        getStyleClass().add("asked");
        Setting setting = desk.named(name);
        Label label = DeskParts.words(setting.what());
        label.getStyleClass().add("strong");
        control = setting.possible().isEmpty() ? field() : choice(setting);
        control.setId("set-" + name);
        usual.setId("usual-" + name);
        usual.setOnAction(event -> {
            desk.setUsual(name);
            changed.run();
        });
        HBox row = new HBox(control, usual);
        row.getStyleClass().add("row");
        getChildren().addAll(label, row);
        show();
    }

    private ChoiceBox<String> choice(Setting setting) {
        ChoiceBox<String> box = new ChoiceBox<>();
        box.setConverter(new ShownAs<>(SettingWords::of));
        box.getItems().setAll(setting.possible());
        box.valueProperty().addListener((property, was, is) -> take(is));
        return box;
    }

    private TextField field() {
        TextField field = new TextField();
        field.setPrefColumnCount(name.equals("sessions") ? 30 : 8);
        field.setPromptText(SetupText.PROMPT_USUAL.say());
        field.setOnAction(event -> typed(field));
        field.focusedProperty().addListener((property, was, is) -> {
            if (!is) typed(field);
        });
        return field;
    }

    /** Nothing typed is nothing set: what is usual. */
    private void typed(TextField field) {
        if (!field.getText().isBlank()) {
            take(field.getText());
        } else if (!filling && !desk.value(name).equals(SettingTable.NONE)) {
            desk.setUsual(name);
            changed.run();
        }
    }

    private void take(String value) {
        if (filling || value == null || value.equals(desk.value(name))) return;
        desk.set(name, value);
        changed.run();
    }

    /** Shows its value as it is now. */
    void show() {
        filling = true;
        String value = desk.value(name);
        if (control instanceof ChoiceBox<?> box) select(box, value);
        else if (control instanceof TextField field) {
            String shown = value.equals(SettingTable.NONE) ? "" : value;
            if (!field.getText().equals(shown)) field.setText(shown);
        }
        Setting setting = desk.named(name);
        control.setAccessibleText(SetupText.ROW_SPOKEN.say(setting.what(), SettingWords.of(value)));
        usual.setAccessibleText(SetupText.USUAL_SPOKEN.say(setting.what(), SettingWords.of(setting.usual())));
        SetupPane.shown(usual, !desk.isUsual(name));
        filling = false;
    }

    private static void select(ChoiceBox<?> box, String value) {
        box.getSelectionModel().select(box.getItems().indexOf(value));
    }
}
