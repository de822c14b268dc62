package fifthform.monitor.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.text.Text;
import javafx.stage.Stage;

/** A robot's window for the whole program: what the program opens, it opens here. */
public final class LentStage {
    private final Stage stage;

    private LentStage(Stage stage) {
        this.stage = stage;
    }

    public static LentStage lend(Stage stage) {
        FxStart.lend(stage);
        return new LentStage(stage);
    }

    public static void takeBack() {
        FxStart.takeBack();
    }

    /** Every text that is shown, with its style classes in front. */
    public List<String> texts() {
        return OnScreen.read(() -> {
            List<String> texts = new ArrayList<>();
            if (stage.getScene() != null) collect(stage.getScene().getRoot(), texts);
            return texts;
        });
    }

    /** The step that is due, as the filled band says it. */
    public Optional<String> due() {
        return texts().stream()
                .filter(text -> text.contains("on-cue|"))
                .map(text -> text.substring(text.indexOf('|') + 1))
                .findFirst();
    }

    public boolean shows(String words) {
        return texts().stream().anyMatch(text -> text.contains(words));
    }

    private static void collect(Node node, List<String> texts) {
        if (!node.isVisible()) return;
        if (node instanceof Text text && !text.getText().isBlank())
            texts.add(String.join(" ", text.getStyleClass()) + "|"
                    + text.getText().replace('\n', ' '));
        if (node instanceof Parent parent) parent.getChildrenUnmodifiable().forEach(child -> collect(child, texts));
    }
}
