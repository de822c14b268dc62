package fifthform.monitor.settings;

/**
 * How high the smallest letters of the far display are, and from how far away that can be read. Measured is the height of a
 * capital letter or a digit, as ISO 9241-3 measures a character (as a display vendor's ergonomics page quotes it).
 *
 * @param pixels height of a capital, as the window system counts pixels
 * @param metres the distance from which letters of that height fill 16 minutes of arc
 * @param reach whether that is as far as was asked for
 */
public record FarLetters(double pixels, double metres, Reach reach) {
    /** The layout needs so many capitals of the least height above each other, and beside each other. Our own count. */
    static final double HIGH = 17;

    static final double WIDE = 28;

    /** Where there is this much more room, letters go up to 21 minutes of arc, which NUREG-0700 prefers (1.3.1-4). */
    static final double ROOMY = 1.25;

    static final double PREFERRED = 21 / 16.0;

    /** A hair more than needed, so that nothing is lost where a font is rounded. */
    private static final double SPARE = 1.005;

    /** Whether letters are as large as the farthest reader needs them. */
    public enum Reach {
        ENOUGH,
        /** The screen is too small; its letters are as large as it has room for. */
        SCREEN_TOO_SMALL
    }

    /** For a screen of so many pixels. */
    public static FarLetters on(double width, double height, ScreenScale scale, ScreenSizes sizes) {
        double needed = scale.pixels(sizes.leastMillimetres()) * SPARE;
        double most = Math.min(height / HIGH, width / WIDE);
        double roomy = Math.min(Math.min(height / HIGH, width / WIDE) / ROOMY, needed * PREFERRED);
        if (needed <= most) return new FarLetters(Math.max(needed, roomy), sizes.metres(), Reach.ENOUGH);
        return new FarLetters(most, farthest(width, height, scale), Reach.SCREEN_TOO_SMALL);
    }

    /** The greatest distance, m, from which a far display of so many pixels can be read. */
    public static double farthest(double width, double height, ScreenScale scale) {
        return ScreenSizes.metresFor(scale.millimetres(Math.min(height / HIGH, width / WIDE)) / SPARE);
    }
}
