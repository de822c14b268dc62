package fifthform.monitor.chart;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The typeface for files: measured and written without a window, on machines where no window could be opened. The same
 * font files as on the screen.
 */
final class PlainFace {
    private static final Map<Typeface, BaseFont> READ = new ConcurrentHashMap<>();

    /** Widths are kept for thousandths of the size. */
    private static final float WHOLE = 1000;

    private PlainFace() {}

    /** The face as it is put into a PDF file, its letters with it. */
    static BaseFont of(Typeface face) {
        return READ.computeIfAbsent(face, PlainFace::read);
    }

    /** Width of {@code words} at {@code size}, in the unit of {@code size}. */
    static double width(String words, Typeface face, double size) {
        return of(face).getWidthPoint(writable(words, face), WHOLE) / WHOLE * size;
    }

    /** What the face has letters for; what it has none for stands as a question mark. */
    static String writable(String words, Typeface face) {
        BaseFont font = of(face);
        StringBuilder safe = new StringBuilder();
        words.codePoints().forEach(c -> safe.appendCodePoint(font.charExists(c) ? c : '?'));
        return safe.toString();
    }

    private static BaseFont read(Typeface face) {
        try (InputStream bytes = PlainFace.class.getResourceAsStream(face.file())) {
            if (bytes == null) throw new IllegalStateException(face.file() + " is missing from the program");
            return BaseFont.createFont(
                    face.file(), BaseFont.IDENTITY_H, BaseFont.EMBEDDED, true, bytes.readAllBytes(), null);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        } catch (DocumentException broken) {
            throw new IllegalStateException(face.file() + " is no font that can be put into a file", broken);
        }
    }
}
