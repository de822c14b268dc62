package fifthform.monitor.chart;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;

/** Writes what is drawn as SVG 1.1 text. */
final class SvgPen implements Pen {
    private final StringBuilder text = new StringBuilder();
    private int clips;

    SvgPen(double width, double height, String title, Color ground) {
        text.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$.0f\" height=\"%2$.0f\" viewBox=\"0 0 %1$.0f %2$.0f\""
                        + " role=\"img\" font-family=\"B612, DejaVu Sans, sans-serif\">%n<title>%3$s</title>%n",
                width,
                height,
                escaped(title)));
        box(0, 0, width, height, ground);
    }

    /** The whole picture. */
    String end() {
        return text + "</svg>\n";
    }

    @Override
    public void box(double x, double y, double width, double height, Color color) {
        add("<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" %s/>%n", x, y, width, height, fill(color));
    }

    @Override
    public void line(double x1, double y1, double x2, double y2, Color color, double width, double... dashes) {
        path(new double[] {x1, x2}, new double[] {y1, y2}, color, width, dashes);
    }

    @Override
    public void path(double[] xs, double[] ys, Color color, double width, double... dashes) {
        StringBuilder path = new StringBuilder();
        boolean broken = true;
        for (int i = 0; i < xs.length; i++) {
            boolean gap = Double.isNaN(xs[i]);
            if (!gap) path.append(String.format(Locale.ROOT, "%s%.2f %.2f", broken ? "M" : "L", xs[i], ys[i]));
            broken = gap;
        }
        if (path.length() == 0) return;
        String dashed = dashes.length == 0
                ? "stroke-linecap=\"round\""
                : "stroke-dasharray=\""
                        + DoubleStream.of(dashes)
                                .mapToObj(d -> String.format(Locale.ROOT, "%.2f", d))
                                .collect(Collectors.joining(" "))
                        + "\"";
        add(
                "<path d=\"%s\" fill=\"none\" %s stroke-width=\"%.2f\" stroke-linejoin=\"round\" %s/>%n",
                path, stroke(color), width, dashed);
    }

    @Override
    public void shape(double[] xs, double[] ys, Color fill, Color edge, double width) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < xs.length; i++) points.append(String.format(Locale.ROOT, "%.2f,%.2f ", xs[i], ys[i]));
        String outline = width <= 0 ? "" : String.format(Locale.ROOT, " %s stroke-width=\"%.2f\"", stroke(edge), width);
        add("<polygon points=\"%s\" %s%s/>%n", points.toString().strip(), fill(fill), outline);
    }

    @Override
    public void words(
            String words, double x, double middleY, TextAlignment align, Typeface face, double size, Color color) {
        String anchor = switch (align) {
            case RIGHT -> "end";
            case CENTER -> "middle";
            case LEFT, JUSTIFY -> "start";
        };
        // Not dominant-baseline, which some readers of SVG do not know.
        add(
                "<text x=\"%.2f\" y=\"%.2f\" font-size=\"%.2f\"%s text-anchor=\"%s\" %s>%s</text>%n",
                x,
                middleY + CAPITALS_MIDDLE * size,
                size,
                face == Typeface.BOLD ? " font-weight=\"bold\"" : "",
                anchor,
                fill(color),
                escaped(words));
    }

    @Override
    public double width(String words, Typeface face, double size) {
        return PlainFace.width(words, face, size);
    }

    @Override
    public void within(double x, double y, double width, double height) {
        clips++;
        add(
                "<clipPath id=\"part%1$d\"><rect x=\"%2$.2f\" y=\"%3$.2f\" width=\"%4$.2f\" height=\"%5$.2f\"/></clipPath>"
                        + "<g clip-path=\"url(#part%1$d)\">%n",
                clips, x, y, Math.max(0, width), Math.max(0, height));
    }

    @Override
    public void free() {
        add("</g>%n");
    }

    private void add(String pattern, Object... parts) {
        text.append(String.format(Locale.ROOT, pattern, parts));
    }

    private static String fill(Color color) {
        return paint("fill", color);
    }

    private static String stroke(Color color) {
        return paint("stroke", color);
    }

    private static String paint(String what, Color color) {
        String opacity = color.getOpacity() < 1
                ? String.format(Locale.ROOT, " %s-opacity=\"%.2f\"", what, color.getOpacity())
                : "";
        return String.format(
                Locale.ROOT,
                "%s=\"#%02X%02X%02X\"%s",
                what,
                Math.round(255 * color.getRed()),
                Math.round(255 * color.getGreen()),
                Math.round(255 * color.getBlue()),
                opacity);
    }

    /** As XML wants it; characters that XML forbids are left out. */
    static String escaped(String words) {
        StringBuilder safe = new StringBuilder();
        words.codePoints().filter(c -> c >= 0x20 || c == '\t').forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.appendCodePoint(c);
            }
        });
        return safe.toString();
    }
}
