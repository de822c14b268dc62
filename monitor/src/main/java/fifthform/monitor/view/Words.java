package fifthform.monitor.view;

import fifthform.monitor.chart.Typeface;
import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/**
 * A text that always fits its place: first as large as wished, then on more lines where that allows larger letters,
 * then smaller. Nothing is ever cut off, because a cut instruction is worse than a small one.
 */
final class Words extends Text {
    /** Height of a capital or digit of B612 in parts of the font size; measured from the font file. */
    static final double CAPITAL = 0.73;

    /** Distance of two lines in parts of the font size; chosen to look even. */
    private static final double LINE = 1.22;

    /** Font sizes at which widths are measured once; widths grow with the size. */
    private static final double MEASURED = 100;

    /** Where the words stand in their place. */
    enum Side {
        LEFT,
        RIGHT,
        CENTRE
    }

    private final Typeface face;
    private Optional<Placed> placed = Optional.empty();

    Words(Typeface face, String... styles) {
        this.face = face;
        getStyleClass().add("words");
        getStyleClass().addAll(styles);
        setTextOrigin(VPos.BASELINE);
        setManaged(false);
    }

    /** Puts the words into {@code box}, centred by the height of their capitals; returns the width used, pixels. */
    double place(String words, Box box, double sizePixels, int mostLines, Side side) {
        Placed wish = new Placed(words, box, sizePixels, mostLines, side);
        if (placed.filter(wish::equals).isEmpty()) {
            placed = Optional.of(wish);
            fit(words.replace('\n', ' '), box, sizePixels, mostLines, side);
        }
        return words.isEmpty() ? 0 : getLayoutBounds().getWidth();
    }

    private void fit(String words, Box box, double sizePixels, int mostLines, Side side) {
        setVisible(!words.isEmpty());
        if (words.isEmpty()) {
            setText("");
            return;
        }
        List<String> best = List.of(words);
        double bestSize = 0;
        for (int lines = 1; lines <= mostLines; lines++) {
            List<String> broken = Lines.balanced(words, lines, line -> face.width(line, MEASURED));
            double widest = broken.stream()
                    .mapToDouble(line -> face.width(line, MEASURED))
                    .max()
                    .orElse(0);
            double byWidth = box.width() * MEASURED / Math.max(1e-6, widest);
            double byHeight = box.height() / (CAPITAL + LINE * (broken.size() - 1));
            double size = Math.min(sizePixels, Math.min(byWidth, byHeight));
            if (size > bestSize * 1.02) {
                bestSize = size;
                best = broken;
            }
        }
        set(best, box, bestSize, side);
    }

    /** Puts one line on a baseline; returns the width used, pixels. */
    double stand(String words, double x, double baseline, double sizePixels) {
        placed = Optional.empty();
        setVisible(!words.isEmpty());
        setFont(face.at(sizePixels));
        if (!words.equals(getText())) setText(words);
        setX(x);
        setY(baseline);
        return words.isEmpty() ? 0 : getLayoutBounds().getWidth();
    }

    private void set(List<String> lines, Box box, double wished, Side side) {
        setText(String.join("\n", lines));
        setTextAlignment(
                side == Side.RIGHT
                        ? TextAlignment.RIGHT
                        : side == Side.LEFT ? TextAlignment.LEFT : TextAlignment.CENTER);
        double size = wished;
        setFont(face.at(size));
        while (getLayoutBounds().getWidth() > box.width() && size > 1) {
            size *= 0.985;
            setFont(face.at(size));
        }
        setLineSpacing(size * (LINE - naturalLine()));
        double block = size * (CAPITAL + LINE * (lines.size() - 1));
        setY(box.middle() - block / 2 + size * CAPITAL);
        double width = getLayoutBounds().getWidth();
        setX(
                side == Side.LEFT
                        ? box.x()
                        : side == Side.RIGHT ? box.right() - width : box.x() + (box.width() - width) / 2);
    }

    private record Placed(String words, Box box, double sizePixels, int mostLines, Side side) {}

    private double naturalLine() {
        Text one = new Text("H");
        one.setFont(face.at(MEASURED));
        return one.getLayoutBounds().getHeight() / MEASURED;
    }

    /** Width of {@code words} broken into so many lines, pixels. */
    static double widthOf(String words, Typeface face, double sizePixels, int lines) {
        return Lines.balanced(words, lines, line -> widthOf(line, face, sizePixels)).stream()
                .mapToDouble(line -> widthOf(line, face, sizePixels))
                .max()
                .orElse(0);
    }

    /** Width of {@code words} on one line, pixels. */
    static double widthOf(String words, Typeface face, double sizePixels) {
        return words.isEmpty() ? 0 : face.width(words, sizePixels);
    }
}
