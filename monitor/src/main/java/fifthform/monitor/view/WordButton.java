package fifthform.monitor.view;

import fifthform.monitor.chart.Typeface;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.layout.Pane;

/** A button as large as a sticky finger needs it, with words that always fit: what it does, and a figure beside or below. */
final class WordButton extends Button {
    /** Where the second words stand. */
    enum Second {
        BESIDE,
        BELOW
    }

    private final Second second;
    private final Pane face = new Pane();
    private final Words number = new Words(Typeface.BOLD);
    private final Words first = new Words(Typeface.BOLD);
    private final Words other = new Words(Typeface.REGULAR);

    WordButton(String id, Second second, Runnable act) {
        this.second = second;
        getStyleClass().setAll("key");
        setId(id);
        setManaged(false);
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        setFocusTraversable(false);
        face.getChildren().addAll(number, first, other);
        setGraphic(face);
        setOnAction(event -> act.run());
    }

    /** Reversed, as a step that is due is. */
    void chosen(boolean chosen) {
        getStyleClass().setAll(chosen ? "key-chosen" : "key");
        BandBar.restyle(number, "on-", chosen ? "cue" : "calm");
        BandBar.restyle(first, "on-", chosen ? "cue" : "calm");
        BandBar.restyle(other, "on-", chosen ? "cue" : "calm");
    }

    void lay(String words, String aside, Box box, double u) {
        lay("", words, aside, box, u);
    }

    /** With a number before words that may wrap: numbers of one size stand under each other. */
    void lay(String place, String words, String aside, Box box, double u) {
        double inset = 3 + 2 * u;
        double wide = box.width() - 2 * inset;
        double high = box.height() - 2 * inset;
        face.setMinSize(wide, high);
        face.setPrefSize(wide, high);
        face.setMaxSize(wide, high);
        if (second == Second.BELOW) {
            first.place(words, new Box(0, high * 0.06, wide, high * 0.44), 27 * u, 1, Words.Side.CENTRE);
            other.place(aside, new Box(0, high * 0.53, wide, high * 0.42), 23 * u, 1, Words.Side.CENTRE);
        } else {
            double pad = 14 * u;
            double forAside =
                    aside.isEmpty() ? 0 : Math.min(wide * 0.45, Words.widthOf(aside, Typeface.REGULAR, 25 * u) + 2 * u);
            double forNumber = place.isEmpty() ? 0 : 38 * u;
            double room = wide - 2 * pad - forNumber - forAside - (aside.isEmpty() ? 0 : 20 * u);
            number.place(place, new Box(pad, 0, Math.max(1, forNumber), high), 34 * u, 1, Words.Side.LEFT);
            // Two lines leave room below for what hangs under the second.
            Box forWords = new Box(pad + forNumber, high * 0.13, room, high * 0.72);
            first.place(words, forWords, 34 * u, 2, Words.Side.LEFT);
            other.place(
                    aside, new Box(wide - pad - forAside, 0, Math.max(1, forAside), high), 25 * u, 1, Words.Side.RIGHT);
        }
        resizeRelocate(box.x(), box.y(), box.width(), box.height());
    }
}
