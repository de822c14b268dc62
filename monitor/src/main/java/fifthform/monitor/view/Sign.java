package fifthform.monitor.view;

import fifthform.monitor.model.WatchPicture.Direction;
import fifthform.monitor.model.WatchPicture.Tone;
import java.util.Locale;
import javafx.scene.shape.SVGPath;

/** The shape that says how loud something is, so that colour may be lost: octagon, triangle, circle with a bar. */
final class Sign extends SVGPath {
    Sign() {
        setManaged(false);
    }

    /** Draws the shape for {@code tone} with half height {@code radius}, pixels; calm and cue have none. */
    void draw(Tone tone, Direction direction, double x, double y, double radius) {
        setContent(outline(tone, direction, x, y, radius));
        setVisible(!getContent().isEmpty());
        setStrokeWidth(tone == Tone.ADVISE ? radius * 0.22 : radius * 0.14);
    }

    private static String outline(Tone tone, Direction direction, double x, double y, double r) {
        return switch (tone) {
            case URGENT -> octagon(x, y, r);
            case PROMPT -> triangle(direction, x, y, r);
            case ADVISE -> ringWithBar(x, y, r * 0.86);
            case CUE, CALM -> "";
        };
    }

    private static String octagon(double x, double y, double r) {
        StringBuilder path = new StringBuilder();
        for (int corner = 0; corner < 8; corner++) {
            double angle = Math.PI / 8 + corner * Math.PI / 4;
            point(path, corner == 0 ? "M" : "L", x + r * 1.06 * Math.cos(angle), y + r * 1.06 * Math.sin(angle));
        }
        return path.append('Z').toString();
    }

    /** Up means too hot, down too cold; to the side means neither. */
    private static String triangle(Direction direction, double x, double y, double r) {
        StringBuilder path = new StringBuilder();
        if (direction == Direction.NONE) {
            point(path, "M", x - r * 0.9, y - r);
            point(path, "L", x + r, y);
            point(path, "L", x - r * 0.9, y + r);
        } else {
            double sign = direction == Direction.UP ? 1 : -1;
            point(path, "M", x - r, y + sign * r * 0.9);
            point(path, "L", x, y - sign * r);
            point(path, "L", x + r, y + sign * r * 0.9);
        }
        return path.append('Z').toString();
    }

    private static String ringWithBar(double x, double y, double r) {
        StringBuilder path = new StringBuilder();
        point(path, "M", x - r, y);
        path.append(String.format(Locale.ROOT, "a%1$.2f %1$.2f 0 1 0 %2$.2f 0", r, 2 * r));
        path.append(String.format(Locale.ROOT, "a%1$.2f %1$.2f 0 1 0 %2$.2f 0Z", r, -2 * r));
        point(path, "M", x - r * 0.5, y);
        point(path, "L", x + r * 0.5, y);
        return path.toString();
    }

    private static void point(StringBuilder path, String command, double x, double y) {
        path.append(String.format(Locale.ROOT, "%s%.2f %.2f ", command, x, y));
    }
}
