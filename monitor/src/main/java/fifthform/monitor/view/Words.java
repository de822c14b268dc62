package fifthform.monitor.view;

import fifthform.monitor.chart.Typeface;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.geometry.VPos;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import javafx.scene.text.TextBoundsType;

/**
 * A text that always fits its place: first as large as wished, then on more lines where that allows larger letters,
 * then smaller. Nothing is ever cut off, because a cut instruction is worse than a small one.
 */
final class Words extends Text {
    /** Height of a capital or digit of B612 in parts of the font size; measured from the font file. */
    static final double CAPITAL = 0.73;

    /** Distance of two lines in parts of the font size; chosen to look even. */
    private static final double LINE = 1.22;

    /** How much larger letters must become for one line more, in parts: a line more is harder to take in at a glance. */
    static final double WORTH_A_LINE = 1.15;

    /** How far letters reach below their line in parts of the font size; measured from the font file. */
    private static final double DESCENT = 0.22;

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
        return place(new Placed(words, box, sizePixels, mostLines, side, WORTH_A_LINE));
    }

    /** The same where size is all, as it is across a kitchen or in a narrow place: any line more that makes letters larger. */
    double placeLarge(String words, Box box, double sizePixels, int mostLines, Side side) {
        return place(new Placed(words, box, sizePixels, mostLines, side, 1.02));
    }

    private double place(Placed wish) {
        if (placed.filter(wish::equals).isEmpty()) {
            placed = Optional.of(wish);
            fit(wish);
        }
        return wish.words.isEmpty() ? 0 : getLayoutBounds().getWidth();
    }

    private void fit(Placed wish) {
        String words = wish.words.replace('\n', ' ');
        Box box = wish.box;
        setVisible(!words.isEmpty());
        if (words.isEmpty()) {
            setText("");
            return;
        }
        List<String> best = List.of(words);
        double bestSize = 0;
        for (int lines = 1; lines <= wish.mostLines; lines++) {
            double wished = Math.min(wish.sizePixels, box.height() / (CAPITAL + LINE * (lines - 1)));
            double free = box.width() * MEASURED / wished;
            List<String> broken = Lines.broken(words, lines, line -> face.width(line, MEASURED), free);
            double widest = broken.stream()
                    .mapToDouble(line -> face.width(line, MEASURED))
                    .max()
                    .orElse(0);
            double byWidth = box.width() * MEASURED / Math.max(1e-6, widest);
            double byHeight = box.height() / (CAPITAL + LINE * (broken.size() - 1));
            double size = Math.min(wish.sizePixels, Math.min(byWidth, byHeight));
            if (size > bestSize * wish.worthALine) {
                bestSize = size;
                best = broken;
            }
        }
        set(best, box, bestSize, wish.side);
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

    /** Where the ink of its letters is, without the space that the typeface leaves at both sides; pixels. */
    Bounds ink() {
        setBoundsType(TextBoundsType.VISUAL);
        Bounds ink = getLayoutBounds();
        setBoundsType(TextBoundsType.LOGICAL);
        return ink;
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

    private record Placed(String words, Box box, double sizePixels, int mostLines, Side side, double worthALine) {}

    private double naturalLine() {
        Text one = new Text("H");
        one.setFont(face.at(MEASURED));
        return one.getLayoutBounds().getHeight() / MEASURED;
    }

    /** Width that {@code words} need at least on so many lines, pixels. */
    static double widthOf(String words, Typeface face, double sizePixels, int lines) {
        return Lines.narrowest(words, lines, line -> widthOf(line, face, sizePixels));
    }

    /** The size at which so many lines stand within a height; what hangs below the last counts at both ends, as they are centred. */
    static double sizeIn(double height, int lines) {
        return height / (CAPITAL + LINE * (lines - 1) + 2 * DESCENT);
    }

    /** Width of {@code words} on one line, pixels. */
    static double widthOf(String words, Typeface face, double sizePixels) {
        return words.isEmpty() ? 0 : face.width(words, sizePixels);
    }
}
