package fifthform.monitor.view;

import fifthform.monitor.model.Pieces;
import fifthform.monitor.texts.Text;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;

/** What the screens read at a desk are made of. */
final class DeskParts {
    private DeskParts() {}

    /** Words that wrap and are never shortened. */
    static Label words(String words) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    /** Words for a label that breaks its lines itself: it breaks them at no space that must hold. */
    static String held(String words) {
        return Pieces.of(words).stream()
                .map(piece -> piece.replace(' ', '\u00A0'))
                .collect(Collectors.joining(" "));
    }

    /** A label for such words, which come later. */
    static Label label(String id) {
        Label label = words("");
        label.setId(id);
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
        return button(id, words.say(), act);
    }

    /** With words that are put together, or none yet. */
    static Button button(String id, String words, Runnable act) {
        Button button = new Button(words);
        button.setId(id);
        button.setOnAction(event -> act.run());
        return button;
    }
}
