package fifthform.monitor.view;

import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.texts.Text;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** One part of Setup, and what all parts are made of. */
abstract class SetupPane extends VBox {
    private final SetupDesk desk;
    private final Runnable changed;

    /** @param changed called after everything that may have changed what the screen shows */
    SetupPane(SetupDesk desk, Runnable changed) {
        this.desk = desk;
        this.changed = changed;
        getStyleClass().add("pane");
    }

    /** Shows the desk as it is now. */
    abstract void show();

    SetupDesk desk() {
        return desk;
    }

    void changed() {
        changed.run();
    }

    void say(String words) {
        desk.say(words);
        changed.run();
    }

    Label heading(Text words) {
        Label label = DeskParts.words(words.say());
        label.getStyleClass().add("heading");
        return label;
    }

    /** A button that does what it says only at the second press. */
    Button sure(String id, Text words, Text question, Consumer<Button> act) {
        Button button = new Button(words.say());
        button.setId(id);
        button.setOnAction(event -> {
            boolean asked = button.getUserData() != null;
            button.setUserData(asked ? null : Boolean.TRUE);
            button.setText(asked ? words.say() : question.say(words.say()));
            if (asked) act.accept(button);
        });
        button.focusedProperty().addListener((property, was, is) -> {
            if (is) return;
            button.setUserData(null);
            button.setText(words.say());
        });
        return button;
    }

    static void shown(Node node, boolean isShown) {
        node.setVisible(isShown);
        node.setManaged(isShown);
    }
}
