package fifthform.monitor.view;

import fifthform.monitor.notebook.Ended;
import fifthform.monitor.notebook.NotebookDesk;
import fifthform.monitor.notebook.RowFilter;
import fifthform.monitor.notebook.RowFilter.Kinds;
import fifthform.monitor.notebook.RowFilter.Looks;
import fifthform.monitor.notebook.RowWords;
import fifthform.monitor.texts.NotebookText;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;

/** What is asked for. */
final class FilterRow extends FlowPane {
    private final NotebookDesk desk;
    private final Runnable asked;
    private final TextField search = new TextField();
    private final ChoiceBox<Choice<Optional<String>>> chocolate =
            box("filter-chocolate", NotebookText.FILTER_CHOCOLATE);
    private final ChoiceBox<Choice<Optional<String>>> bowl = box("filter-bowl", NotebookText.FILTER_BOWL);
    private final ChoiceBox<Choice<Kinds>> kinds = box("filter-kind", NotebookText.FILTER_KIND);
    private final ChoiceBox<Choice<Optional<Ended>>> end = box("filter-end", NotebookText.FILTER_END);
    private final ChoiceBox<Choice<Looks>> looks = box("filter-looks", NotebookText.FILTER_LOOKS);
    private boolean filling;

    /** A value with its word. */
    record Choice<T>(T value, String word) {
        @Override
        public String toString() {
            return word;
        }
    }

    FilterRow(NotebookDesk desk, Runnable asked) {
        this.desk = desk;
        this.asked = asked;
        getStyleClass().add("bar");
        setMinHeight(Region.USE_PREF_SIZE);
        search.setId("search");
        search.setPromptText(NotebookText.FILTER_SEARCH_HINT.say());
        search.setAccessibleText(NotebookText.FILTER_SEARCH.say());
        search.textProperty().addListener((property, was, is) -> take());
        Button all = new Button(NotebookText.BUTTON_SHOW_ALL.say());
        all.setId("show-all");
        all.setOnAction(event -> showAll());
        kinds.getItems()
                .setAll(List.of(
                        new Choice<>(Kinds.REAL, NotebookText.KIND_REAL.say()),
                        new Choice<>(Kinds.PRACTICE, NotebookText.KIND_PRACTICE.say()),
                        new Choice<>(Kinds.BOTH, NotebookText.KIND_BOTH.say())));
        looks.getItems()
                .setAll(List.of(
                        new Choice<>(Looks.ANY, NotebookText.ANY_LOOKS.say()),
                        new Choice<>(Looks.LOOKED, NotebookText.LOOKED.say()),
                        new Choice<>(Looks.NOT_LOOKED, NotebookText.NOT_LOOKED.say()),
                        new Choice<>(Looks.DUE, NotebookText.LOOK_DUE.say())));
        List<Choice<Optional<Ended>>> ends = new ArrayList<>();
        ends.add(new Choice<>(Optional.empty(), NotebookText.ANY_END.say()));
        for (Ended each : Ended.values())
            if (each != Ended.UNREAD) ends.add(new Choice<>(Optional.of(each), RowWords.end(each)));
        end.getItems().setAll(ends);
        getChildren().addAll(search, chocolate, bowl, kinds, end, looks, all);
    }

    private <T> ChoiceBox<Choice<T>> box(String id, NotebookText name) {
        ChoiceBox<Choice<T>> box = new ChoiceBox<>();
        box.setId(id);
        box.setAccessibleText(name.say());
        box.valueProperty().addListener((property, was, is) -> take());
        return box;
    }

    TextField search() {
        return search;
    }

    /** Shows what the desk asks for, among what there is. */
    void fill() {
        filling = true;
        RowFilter filter = desk.filter();
        if (!search.getText().equals(filter.search())) search.setText(filter.search());
        fill(chocolate, desk.chocolates(), filter.chocolate(), NotebookText.ANY_CHOCOLATE);
        fill(bowl, desk.bowls(), filter.bowl(), NotebookText.ANY_BOWL);
        choose(kinds, filter.kinds());
        choose(end, filter.end());
        choose(looks, filter.looks());
        filling = false;
    }

    private static void fill(
            ChoiceBox<Choice<Optional<String>>> box, Collection<String> words, Optional<String> now, NotebookText any) {
        List<Choice<Optional<String>>> choices = new ArrayList<>();
        choices.add(new Choice<>(Optional.empty(), any.say()));
        for (String word : words) choices.add(new Choice<>(Optional.of(word), word));
        // What was asked for on the command line may be in no batch.
        now.filter(word -> !words.contains(word)).ifPresent(word -> choices.add(new Choice<>(now, word)));
        if (!box.getItems().equals(choices)) box.getItems().setAll(choices);
        choose(box, now);
    }

    private static <T> void choose(ChoiceBox<Choice<T>> box, T value) {
        for (Choice<T> choice : box.getItems())
            if (choice.value().equals(value) && !choice.equals(box.getValue())) box.setValue(choice);
    }

    private void take() {
        if (filling) return;
        desk.ask(new RowFilter(
                chocolate.getValue().value(),
                bowl.getValue().value(),
                kinds.getValue().value(),
                end.getValue().value(),
                looks.getValue().value(),
                search.getText()));
        asked.run();
    }

    /** Asks for nothing any more. */
    void showAll() {
        desk.askForAll();
        fill();
        asked.run();
    }
}
