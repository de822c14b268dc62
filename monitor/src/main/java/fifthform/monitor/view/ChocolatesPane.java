package fifthform.monitor.view;

import fifthform.curves.check.Problem;
import fifthform.curves.recipe.Ingredients;
import fifthform.curves.recipe.OtherFat;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.KnownRecipe.From;
import fifthform.monitor.model.Phrases;
import fifthform.monitor.settings.Units;
import fifthform.monitor.setup.Chocolates;
import fifthform.monitor.setup.SettingTable;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.SetupText;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** The chocolates with their targets and the source of each; a copy of one's own can be changed as text. */
final class ChocolatesPane extends SetupPane {
    private final Chocolates chocolates;
    private final ListView<KnownRecipe> list = new ListView<>();
    private final GridPane targets = new GridPane();
    private final TextField cocoaButter = field("composition-cocoa-butter", SetupText.COMPOSITION_COCOA_BUTTER, "38");
    private final TextField milkFat = field("composition-milk-fat", SetupText.COMPOSITION_MILK_FAT, "0");
    private final TextField otherFat = field("composition-other-fat", SetupText.COMPOSITION_OTHER_FAT, "0");
    private final ChoiceBox<OtherFat> otherFatKind = new ChoiceBox<>();
    private final TextField sugar = field("composition-sugar", SetupText.COMPOSITION_SUGAR, "30");
    private final TextField lecithin = field("composition-lecithin", SetupText.COMPOSITION_LECITHIN, "0");
    private final TextArea text = new TextArea();
    private final Label wrong = DeskParts.words("");
    private final Label remarks = DeskParts.words("");
    private final Button copy = DeskParts.button("chocolate-copy", SetupText.CHOCOLATE_COPY, this::copy);
    private final VBox looking;
    private final VBox editing;

    ChocolatesPane(SetupDesk desk, Runnable changed) {
        super(desk, changed);
        chocolates = new Chocolates(desk.folders().recipes());
        list.setId("chocolates");
        list.setAccessibleText(SetupText.CHOCOLATES_TITLE.say());
        list.setCellFactory(made -> new Cell());
        list.getSelectionModel().selectedItemProperty().addListener((property, was, is) -> targets());
        targets.getStyleClass().add("targets");
        remarks.getStyleClass().add("warning");
        otherFatKind.setId("composition-other-fat-kind");
        otherFatKind.setAccessibleText(SetupText.COMPOSITION_OTHER_FAT_KIND.say());
        otherFatKind.getItems().setAll(OtherFat.values());
        otherFatKind.setValue(OtherFat.SOFT);
        otherFatKind.setConverter(new ShownAs<>(InWords::of));
        FlowPane composition = DeskParts.bar(
                asked(SetupText.COMPOSITION_COCOA_BUTTER, cocoaButter),
                asked(SetupText.COMPOSITION_MILK_FAT, milkFat),
                asked(SetupText.COMPOSITION_OTHER_FAT, otherFat),
                asked(SetupText.COMPOSITION_OTHER_FAT_KIND, otherFatKind),
                asked(SetupText.COMPOSITION_SUGAR, sugar),
                asked(SetupText.COMPOSITION_LECITHIN, lecithin),
                DeskParts.button("composition-work-out", SetupText.COMPOSITION_WORK_OUT, this::workOut));
        composition.getStyleClass().add("composition");
        looking = group(
                list,
                remarks,
                DeskParts.bar(DeskParts.button("chocolate-use", SetupText.CHOCOLATE_USE, this::use), copy),
                targets,
                heading(SetupText.CHOCOLATE_FROM),
                composition,
                DeskParts.words(SetupText.COMPOSITION_ALLERGENS.say()));
        text.setId("chocolate-text");
        text.setAccessibleText(SetupText.EDIT_TEXT.say());
        text.textProperty().addListener((property, was, is) -> judge());
        wrong.setId("chocolate-wrong");
        editing = group(
                DeskParts.words(SetupText.EDIT_TITLE.say()),
                text,
                wrong,
                DeskParts.bar(
                        DeskParts.button("chocolate-keep", SetupText.EDIT_KEEP, this::keep),
                        DeskParts.button("chocolate-leave", SetupText.EDIT_LEAVE, this::leave)));
        getChildren().addAll(heading(SetupText.CHOCOLATES_TITLE), looking, editing);
        shown(editing, false);
        show();
    }

    private static VBox group(Node... nodes) {
        VBox group = new VBox(nodes);
        group.getStyleClass().add("pane");
        group.setStyle("-fx-padding: 0;");
        return group;
    }

    private static TextField field(String id, SetupText words, String usual) {
        TextField field = new TextField(usual);
        field.setId(id);
        field.setPrefColumnCount(5);
        field.setAccessibleText(words.say());
        return field;
    }

    private static VBox asked(SetupText words, Node field) {
        VBox asked = new VBox(new Label(words.say()), field);
        asked.getStyleClass().add("asked");
        return asked;
    }

    @Override
    void show() {
        int place = Math.max(0, list.getSelectionModel().getSelectedIndex());
        List<KnownRecipe> known = chocolates.known();
        if (!known.equals(list.getItems())) {
            list.getItems().setAll(known);
            list.getSelectionModel().select(Math.min(place, known.size() - 1));
        }
        list.refresh();
        remarks.setText(String.join("\n", chocolates.remarks()));
        shown(remarks, !remarks.getText().isEmpty());
        targets();
    }

    private Optional<KnownRecipe> chosen() {
        return Optional.ofNullable(list.getSelectionModel().getSelectedItem());
    }

    private void targets() {
        targets.getChildren().clear();
        chosen().ifPresent(known -> {
            copy.setText((known.from() == From.OWN ? SetupText.CHOCOLATE_CHANGE : SetupText.CHOCOLATE_COPY).say());
            Recipe recipe = known.recipe();
            Units units = desk().settings().units();
            Phrases phrases = new Phrases(units, recipe);
            target(SetupText.TARGET_MELT, phrases.range(recipe.melt().range()), recipe, "melt low");
            target(SetupText.TARGET_COOL, phrases.range(recipe.cool().range()), recipe, "cool low");
            target(SetupText.TARGET_WORK, phrases.range(recipe.work().range()), recipe, "work low");
            target(SetupText.TARGET_WARN, units.withUnit(recipe.meltOut().warnCelsius()), recipe, "warn");
            target(SetupText.TARGET_MELT_OUT, units.withUnit(recipe.meltOut().limitCelsius()), recipe, "melt-out");
            target(SetupText.TARGET_SCORCH, units.withUnit(recipe.scorchCelsius()), recipe, "scorch");
            target(SetupText.TARGET_BATH, units.withUnit(recipe.rewarmBathCelsius()), recipe, "bath");
        });
    }

    private void target(SetupText name, String value, Recipe recipe, String key) {
        Label what = new Label(name.say());
        Label figure = new Label(value);
        figure.getStyleClass().add("strong");
        figure.setMinWidth(USE_PREF_SIZE);
        what.setMinWidth(USE_PREF_SIZE);
        targets.addRow(
                targets.getRowCount(),
                what,
                figure,
                DeskParts.words(Chocolates.source(recipe, key).orElseGet(SetupText.CHOCOLATE_NO_SOURCE::say)));
    }

    private void use() {
        chosen().ifPresent(known ->
                desk().set(SettingTable.CHOCOLATE, known.recipe().id()));
        changed();
    }

    private void copy() {
        chosen().ifPresent(known -> edit(chocolates.copy(known)));
    }

    private void workOut() {
        try {
            chocolates
                    .from("my-own", ingredients())
                    .fold(
                            found -> {
                                edit(found);
                                return true;
                            },
                            problems -> {
                                say(first(problems));
                                return false;
                            });
        } catch (NumberFormatException no) {
            say(SetupText.COMPOSITION_NO_NUMBER.say(no.getMessage()));
        }
    }

    private Ingredients ingredients() {
        double other = percent(otherFat);
        return new Ingredients(
                0,
                Ingredients.USUAL_CACAO_FAT_PERCENT,
                percent(cocoaButter),
                percent(milkFat),
                other,
                other > 0 ? Optional.of(otherFatKind.getValue()) : Optional.empty(),
                percent(sugar),
                percent(lecithin));
    }

    private static double percent(TextField field) {
        String typed = field.getText().strip();
        if (!typed.matches("[0-9]{1,3}([.,][0-9]{1,6})?")) throw new NumberFormatException(typed);
        return Double.parseDouble(typed.replace(',', '.'));
    }

    private void edit(String words) {
        text.setText(words);
        shown(looking, false);
        shown(editing, true);
        judge();
        text.requestFocus();
    }

    private void judge() {
        List<String> problems = chocolates.check(text.getText());
        wrong.setText(problems.isEmpty() ? SetupText.EDIT_GOOD.say() : String.join("\n", problems));
        wrong.getStyleClass().remove("warning");
        if (!problems.isEmpty()) wrong.getStyleClass().add("warning");
    }

    private void keep() {
        String said = chocolates
                .keep(text.getText())
                .fold(
                        id -> {
                            back();
                            return SetupText.EDIT_KEPT.say(id);
                        },
                        ChocolatesPane::first);
        say(said);
    }

    private static String first(List<Problem> problems) {
        Problem first = problems.get(0);
        return first.what() + " " + first.whatToDo();
    }

    private void leave() {
        back();
        changed();
    }

    private void back() {
        shown(editing, false);
        shown(looking, true);
        list.requestFocus();
    }

    private final class Cell extends ListCell<KnownRecipe> {
        Cell() {
            setWrapText(true);
            // As wide as the list, so that long words wrap and do not push it sideways.
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(KnownRecipe known, boolean empty) {
            super.updateItem(known, empty);
            if (empty || known == null) {
                setText("");
                return;
            }
            boolean next =
                    desk().value(SettingTable.CHOCOLATE).equals(known.recipe().id());
            boolean own = known.from() == From.OWN;
            setText(List.of(
                            known.recipe().name(),
                            // Its file has this name; those built in are called alike.
                            own ? known.recipe().id() : "",
                            (own ? SetupText.CHOCOLATE_OWN : SetupText.CHOCOLATE_BUILT_IN).say(),
                            next ? SetupText.CHOCOLATE_NEXT.say() : "")
                    .stream()
                    .filter(part -> !part.isEmpty())
                    .collect(Collectors.joining(" · ")));
        }
    }
}
