package fifthform.monitor.chart;

import java.util.Locale;

/** A sheet to print on; lengths in points, 1/72 inch. */
public enum Paper {
    /** 210 × 297 mm, ISO 216. */
    A4(595.28, 841.89),
    /** 8.5 × 11 inches, ANSI/ASME Y14.1, from memory. */
    LETTER(612, 792);

    private final double width;
    private final double height;

    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }
}
