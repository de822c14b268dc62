package fifthform.monitor.settings;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The screens that were measured with a bank card, and from how far they are read.
 *
 * @param scales by the screen's size in pixels, {@code 1920x1080}
 * @param metres how far away the farthest reader of Watch stands, 0.3 to 10
 */
public record ScreenSizes(Map<String, ScreenScale> scales, double metres) {
    /** At the stove. */
    public static final double USUAL_METRES = 2;

    public static final double LEAST_METRES = 0.3;
    public static final double MOST_METRES = 10;

    /** Nothing measured. */
    public static final ScreenSizes USUAL = new ScreenSizes(Map.of(), USUAL_METRES);

    /** Least angle that a letter's height may fill: ISO 9241-3, as a display vendor's ergonomics page quotes it. */
    private static final double LEAST_RADIANS = Math.toRadians(16 / 60.0);

    public ScreenSizes {
        scales = Collections.unmodifiableMap(new TreeMap<>(scales));
        if (!(metres >= LEAST_METRES && metres <= MOST_METRES))
            throw new IllegalArgumentException(
                    "metres must lie in " + LEAST_METRES + " to " + MOST_METRES + ", was " + metres);
    }

    /** The name of a screen of this size. */
    public static String name(double width, double height) {
        return Math.round(width) + "x" + Math.round(height);
    }

    /** The scale of a screen of this size, where it was measured. */
    public Optional<ScreenScale> of(double width, double height) {
        return Optional.ofNullable(scales.get(name(width, height)));
    }

    /** How high letters must be to be read from there, mm: 2·d·tan(α/2) with α = 16 minutes of arc; 9.3 mm at 2 m. */
    public double leastMillimetres() {
        return 2 * 1000 * metres * Math.tan(LEAST_RADIANS / 2);
    }

    /** From how far letters of this height can be read, m: the inverse of {@link #leastMillimetres()}. */
    static double metresFor(double millimetres) {
        return millimetres / (2 * 1000 * Math.tan(LEAST_RADIANS / 2));
    }

    public ScreenSizes with(String screen, ScreenScale scale) {
        Map<String, ScreenScale> all = new TreeMap<>(scales);
        all.put(screen, scale);
        return new ScreenSizes(all, metres);
    }

    public ScreenSizes without(String screen) {
        Map<String, ScreenScale> all = new TreeMap<>(scales);
        all.remove(screen);
        return new ScreenSizes(all, metres);
    }

    public ScreenSizes withMetres(double other) {
        return new ScreenSizes(scales, other);
    }
}
