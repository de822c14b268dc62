package fifthform.monitor.view;

import fifthform.monitor.looks.Photos;
import fifthform.monitor.notebook.BatchRow;
import fifthform.monitor.texts.NotebookText;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/**
 * The pictures of a batch's bars, small. They are read behind the screen and never larger than they are shown, so that
 * photos of many megapixels hold nobody up. One that is gone, or is no picture, stands as its name.
 */
final class PhotoRow extends FlowPane {
    private static final double HIGH_EMS = 9;

    private List<String> shown = List.of();
    private Optional<Path> of = Optional.empty();
    private double high;

    PhotoRow() {
        setId("photos");
        getStyleClass().add("photos");
    }

    /** Shows the pictures of this batch; an em is so many pixels. */
    void show(BatchRow row, double em) {
        boolean same = of.equals(Optional.of(row.file())) && shown.equals(row.photos()) && high == HIGH_EMS * em;
        if (same) return;
        of = Optional.of(row.file());
        shown = row.photos();
        high = HIGH_EMS * em;
        getChildren().setAll(shown.stream().map(name -> photo(row, name)).toList());
    }

    private Node photo(BatchRow row, String name) {
        Label words = new Label(name);
        words.setWrapText(true);
        Optional<Path> file = Photos.find(row.file(), name);
        if (file.isEmpty()) {
            words.setText(NotebookText.PHOTO_GONE.say(name));
            return words;
        }
        Image image = new Image(file.get().toUri().toString(), high * 4 / 3, high, true, true, true);
        ImageView view = new ImageView(image);
        view.setAccessibleText(NotebookText.PHOTO_SPOKEN.say(name));
        VBox box = new VBox(view, words);
        image.errorProperty().addListener((error, was, is) -> {
            box.getChildren().remove(view);
            words.setText(NotebookText.PHOTO_UNREADABLE.say(name));
        });
        return box;
    }
}
