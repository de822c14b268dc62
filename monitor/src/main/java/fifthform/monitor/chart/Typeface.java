package fifthform.monitor.chart;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;

/**
 * The one typeface of the window: B612, because all its digits have the same width, so a changing number stays in
 * place. It is read from the program itself, so the screen looks the same on every machine.
 */
public enum Typeface {
    REGULAR("/fonts/B612-Regular.otf", FontWeight.NORMAL),
    BOLD("/fonts/B612-Bold.otf", FontWeight.BOLD);

    private static final String FAMILY = "B612";

    private final String file;
    private final FontWeight weight;
    private boolean loaded;

    Typeface(String file, FontWeight weight) {
        this.file = file;
        this.weight = weight;
    }

    /** This face at {@code sizePixels}. FX thread only, as all that measures text. */
    public synchronized Font at(double sizePixels) {
        if (!loaded) load();
        return Font.font(FAMILY, weight, sizePixels);
    }

    private void load() {
        try (InputStream bytes = Typeface.class.getResourceAsStream(file)) {
            if (bytes == null) throw new IllegalStateException(file + " is missing from the program");
            if (Font.loadFont(bytes, 12) == null) throw new IllegalStateException(file + " is no font JavaFX can read");
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        loaded = true;
    }

    /** The font's file in the program. */
    String file() {
        return file;
    }

    /** Width of {@code words} in pixels. FX thread only. */
    public double width(String words, double sizePixels) {
        Text text = new Text(words);
        text.setFont(at(sizePixels));
        return text.getLayoutBounds().getWidth();
    }
}
