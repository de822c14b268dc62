package fifthform.monitor.settings;

/**
 * How large a screen's pixels really are. The figure that a screen reports of itself is unreliable, so it is measured
 * with a card that everybody has.
 *
 * @param pixelsPerMillimetre as the window system counts pixels, 0.5 to 40
 */
public record ScreenScale(double pixelsPerMillimetre) {
    /** Width of a bank card, ID-1 of ISO/IEC 7810; from memory. */
    public static final double CARD_MILLIMETRES = 85.60;

    /** Height of the same card; from memory. */
    public static final double CARD_HIGH_MILLIMETRES = 53.98;

    public static final double LEAST = 0.5;
    public static final double MOST = 40;

    public ScreenScale {
        if (!(pixelsPerMillimetre >= LEAST && pixelsPerMillimetre <= MOST))
            throw new IllegalArgumentException(
                    "pixelsPerMillimetre must lie in " + LEAST + " to " + MOST + ", was " + pixelsPerMillimetre);
    }

    /** The scale of a screen on which a bank card is so many pixels wide. */
    public static ScreenScale ofCard(double pixels) {
        return new ScreenScale(pixels / CARD_MILLIMETRES);
    }

    /** How wide a bank card is on this screen, pixels. */
    public double cardPixels() {
        return pixels(CARD_MILLIMETRES);
    }

    /** The real length, mm, of so many pixels: also the height of a text whose letters are so high. */
    public double millimetres(double pixels) {
        return pixels / pixelsPerMillimetre;
    }

    /** So many millimetres, as pixels. */
    public double pixels(double millimetres) {
        return millimetres * pixelsPerMillimetre;
    }
}
