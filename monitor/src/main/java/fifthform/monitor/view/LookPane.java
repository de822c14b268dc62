package fifthform.monitor.view;

import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.BarLook.Sureness;
import fifthform.curves.learning.BarPlace;
import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Gloss;
import fifthform.curves.learning.Kept;
import fifthform.curves.learning.Release;
import fifthform.curves.learning.Snap;
import fifthform.monitor.looks.LookWords;
import fifthform.monitor.notebook.BatchRow;
import fifthform.monitor.notebook.NotebookDesk;
import fifthform.monitor.texts.LooksText;
import fifthform.monitor.texts.NotebookText;
import fifthform.monitor.texts.Text;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What is seen on the bars of one batch, asked in the words of {@code look}. */
final class LookPane extends VBox {
    private final NotebookDesk desk;
    private final Runnable kept;
    private final Label title = DeskParts.words("");
    private final Label age = DeskParts.words("");
    private final Map<Bloom, CheckBox> bloom = new LinkedHashMap<>();
    private final Map<BarPlace, CheckBox> places = new LinkedHashMap<>();
    private final ChoiceBox<FilterRow.Choice<Optional<Snap>>> snap = box("look-snap", Snap.values(), LookWords::of);
    private final ChoiceBox<FilterRow.Choice<Optional<Gloss>>> gloss = box("look-gloss", Gloss.values(), LookWords::of);
    private final ChoiceBox<FilterRow.Choice<Optional<Release>>> release =
            box("look-release", Release.values(), LookWords::of);
    private final ChoiceBox<FilterRow.Choice<Optional<Kept>>> keptHow = box("look-kept", Kept.values(), LookWords::of);
    private final CheckBox unsure = new CheckBox(LooksText.NOT_QUITE_COUNT_IT_FOR_LESS.say());
    private final TextField note = new TextField();
    private final TextField photo = new TextField();
    private Optional<BatchRow> batch = Optional.empty();

    LookPane(NotebookDesk desk, Runnable kept, Runnable back) {
        this.desk = desk;
        this.kept = kept;
        getStyleClass().add("side");
        title.getStyleClass().add("heading");
        for (Bloom each : Bloom.values()) bloom.put(each, check("bloom-" + each.word(), LookWords.of(each)));
        for (BarPlace each : BarPlace.values()) places.put(each, check("place-" + each.word(), LookWords.of(each)));
        unsure.setId("look-unsure");
        note.setId("look-note");
        photo.setId("look-photo");
        photo.setPromptText(NotebookText.LOOK_PHOTO_HINT.say());
        Button keep = new Button(NotebookText.BUTTON_KEEP.say());
        keep.setId("look-keep");
        keep.setOnAction(event -> keep());
        Button leave = new Button(NotebookText.BUTTON_BACK.say());
        leave.setOnAction(event -> back.run());
        getChildren().addAll(title, age);
        // A row of its own for each: some words are so long that they must wrap, which a flow does not let them.
        VBox blooms = new VBox();
        blooms.getStyleClass().add("bar");
        blooms.getChildren().addAll(bloom.values());
        ask(NotebookText.LOOK_BLOOM, blooms);
        ask(NotebookText.LOOK_PLACES, flow(places.values()));
        ask(LooksText.HOW_DOES_A_BAR_BREAK_NOT, snap);
        ask(LooksText.HOW_DOES_THE_SIDE_FROM_THE, gloss);
        ask(LooksText.HOW_DID_THEY_LEAVE_THE_MOULD, release);
        ask(LooksText.HOW_WERE_THEY_KEPT, keptHow);
        ask(NotebookText.LOOK_SURE, unsure);
        ask(NotebookText.LOOK_NOTE, note);
        ask(NotebookText.LOOK_PHOTO, photo);
        getChildren().add(flow(List.of(keep, leave)));
    }

    private static CheckBox check(String id, String words) {
        CheckBox check = new CheckBox(words);
        check.setId(id);
        check.setWrapText(true);
        return check;
    }

    private static <T> ChoiceBox<FilterRow.Choice<Optional<T>>> box(String id, T[] values, Function<T, String> words) {
        ChoiceBox<FilterRow.Choice<Optional<T>>> box = new ChoiceBox<>();
        box.setId(id);
        box.getItems().add(new FilterRow.Choice<>(Optional.empty(), NotebookText.CHOICE_NOT_SAID.say()));
        for (T value : values) box.getItems().add(new FilterRow.Choice<>(Optional.of(value), words.apply(value)));
        return box;
    }

    private static FlowPane flow(Iterable<? extends Node> nodes) {
        FlowPane flow = new FlowPane();
        flow.getStyleClass().add("bar");
        nodes.forEach(flow.getChildren()::add);
        return flow;
    }

    private void ask(Text question, Node answer) {
        Label label = DeskParts.words(question.say());
        label.getStyleClass().add("strong");
        answer.setAccessibleText(
                answer instanceof CheckBox check ? question.say() + " " + check.getText() : question.say());
        getChildren().addAll(label, answer);
    }

    /** An empty form for this batch. */
    void begin(BatchRow row) {
        batch = Optional.of(row);
        title.setText(NotebookText.LOOK_TITLE.say(row.name()));
        age.setText(NotebookText.LOOK_AGE.say(LookWords.age(desk.ageHours(row))));
        bloom.values().forEach(check -> check.setSelected(false));
        places.values().forEach(check -> check.setSelected(false));
        for (ChoiceBox<?> box : List.of(snap, gloss, release, keptHow))
            box.getSelectionModel().select(0);
        unsure.setSelected(false);
        note.clear();
        photo.clear();
        bloom.get(Bloom.NONE).requestFocus();
    }

    private void keep() {
        List<Bloom> seen = chosen(bloom);
        List<BarPlace> where = chosen(places);
        boolean blooms = !seen.isEmpty() && !seen.contains(Bloom.NONE);
        if (seen.size() > 1 && seen.contains(Bloom.NONE)) {
            desk.say(NotebookText.SAID_LOOK_TWO_WAYS.say());
            kept.run();
            return;
        }
        BatchRow row = batch.orElseThrow();
        BarLook look = new BarLook(
                desk.ageHours(row),
                seen,
                blooms ? where : List.of(),
                snap.getValue().value(),
                gloss.getValue().value(),
                release.getValue().value(),
                keptHow.getValue().value(),
                unsure.isSelected() ? Sureness.UNSURE : Sureness.SURE);
        Optional<String> said = Optional.of(note.getText().strip()).filter(words -> !words.isEmpty());
        if (desk.keep(row, look, photo.getText(), said)) batch = Optional.empty();
        kept.run();
    }

    /** Whether the look was kept, so that the form has done its work. */
    boolean isDone() {
        return batch.isEmpty();
    }

    private static <T> List<T> chosen(Map<T, CheckBox> checks) {
        List<T> chosen = new ArrayList<>();
        checks.forEach((value, check) -> {
            if (check.isSelected()) chosen.add(value);
        });
        return chosen;
    }
}
