package fifthform.monitor.view;

import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.bowls.Bowls;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.bowls.TaughtWords;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.SetupText;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** The bowls, and what each has taught. */
final class BowlsPane extends SetupPane {
    private final Bowls bowls;
    private final ListView<KeptBowl> list = new ListView<>();
    private final Label taught = DeskParts.words("");
    private final Label none = DeskParts.words(SetupText.BOWLS_NONE.say());
    private final TextField name = new TextField();
    private final ChoiceBox<BowlMaterial> material = new ChoiceBox<>();
    private final VBox one;
    private boolean filling;

    BowlsPane(SetupDesk desk, Runnable changed) {
        super(desk, changed);
        bowls = new Bowls(desk.folders().bowls());
        list.setId("bowls");
        list.setAccessibleText(SetupText.BOWLS_TITLE.say());
        list.setCellFactory(made -> new ListCell<>() {
            @Override
            protected void updateItem(KeptBowl bowl, boolean empty) {
                super.updateItem(bowl, empty);
                setText(empty || bowl == null ? "" : bowl.name() + " · " + InWords.of(bowl.material()));
            }
        });
        list.getSelectionModel().selectedItemProperty().addListener((property, was, is) -> one());
        name.setId("bowl-name");
        name.setPrefColumnCount(20);
        name.setAccessibleText(SetupText.BOWL_NAME.say());
        name.setOnAction(event -> rename());
        name.focusedProperty().addListener((property, was, is) -> {
            if (!is) rename();
        });
        material.setId("bowl-material");
        material.getItems().setAll(BowlMaterial.values());
        material.setConverter(new ShownAs<>(InWords::of));
        material.valueProperty().addListener((property, was, is) -> rename());
        taught.setId("bowl-taught");
        one = new VBox(
                taught,
                new Label(SetupText.BOWL_NAME.say()),
                DeskParts.bar(name),
                new Label(SetupText.BOWL_MATERIAL.say()),
                material,
                DeskParts.bar(
                        sure("bowl-reset", SetupText.BOWL_RESET, SetupText.SURE, button -> reset()),
                        sure("bowl-forget", SetupText.BOWL_FORGET, SetupText.SURE, button -> forget())));
        one.setSpacing(6);
        getChildren().addAll(heading(SetupText.BOWLS_TITLE), none, list, one);
        show();
    }

    private Optional<KeptBowl> chosen() {
        return Optional.ofNullable(list.getSelectionModel().getSelectedItem());
    }

    @Override
    void show() {
        int place = Math.max(0, list.getSelectionModel().getSelectedIndex());
        List<KeptBowl> known = bowls.load().bowls();
        if (!known.equals(list.getItems())) {
            list.getItems().setAll(known);
            if (!known.isEmpty()) list.getSelectionModel().select(Math.min(place, known.size() - 1));
        }
        shown(none, known.isEmpty());
        shown(list, !known.isEmpty());
        shown(one, !known.isEmpty());
        one();
    }

    private void one() {
        filling = true;
        chosen().ifPresent(bowl -> {
            if (!name.getText().equals(bowl.name())) name.setText(bowl.name());
            material.setValue(bowl.material());
            material.setAccessibleText(
                    SetupText.ROW_SPOKEN.say(SetupText.BOWL_MATERIAL.say(), InWords.of(bowl.material())));
            String lines = bowl.taught().stream()
                    .map(each -> TaughtWords.line(each, desk().settings().units()))
                    .collect(Collectors.joining("\n"));
            taught.setText(lines.isEmpty() ? SetupText.BOWL_UNTAUGHT.say() : lines);
        });
        filling = false;
    }

    private void rename() {
        if (filling) return;
        chosen().ifPresent(bowl -> {
            String wished = name.getText().strip();
            if (wished.equals(bowl.name()) && material.getValue() == bowl.material()) return;
            if (!TaughtWords.isName(wished)) {
                say(SetupText.BOWL_NO_NAME.say());
                return;
            }
            keep(
                    bowl.as(wished, material.getValue()),
                    SetupText.BOWL_KEPT.say(wished, InWords.of(material.getValue())));
        });
    }

    private void reset() {
        chosen().ifPresent(bowl -> keep(bowl.untaught(), SetupText.BOWL_RESET_DONE.say(bowl.name())));
    }

    private void keep(KeptBowl bowl, String words) {
        try {
            bowls.keep(bowl);
            say(words);
        } catch (IOException e) {
            say(SetupText.SAID_NOT_DONE.say(e.getMessage()));
        }
    }

    private void forget() {
        chosen().ifPresent(bowl -> {
            try {
                say(SetupText.BOWL_FORGOTTEN.say(bowl.name(), bowls.forget(bowl).getFileName()));
            } catch (IOException e) {
                say(SetupText.SAID_NOT_DONE.say(e.getMessage()));
            }
        });
    }
}
