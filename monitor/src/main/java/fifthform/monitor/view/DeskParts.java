package fifthform.monitor.view;

import fifthform.monitor.texts.Text;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;

/** What the screens read at a desk are made of. */
final class DeskParts {
    private DeskParts() {}

    /** A label that wraps and never shortens its words. */
    static Label label(String id) {
        Label label = new Label();
        label.setId(id);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    /** What stands beside each other, in further rows where there is no room. */
    static FlowPane bar(Node... nodes) {
        FlowPane bar = new FlowPane(nodes);
        bar.getStyleClass().add("bar");
        bar.setMinHeight(Region.USE_PREF_SIZE);
        return bar;
    }

    static Button button(String id, Text words, Runnable act) {
        Button button = new Button(words.say());
        button.setId(id);
        button.setOnAction(event -> act.run());
        return button;
    }
}
