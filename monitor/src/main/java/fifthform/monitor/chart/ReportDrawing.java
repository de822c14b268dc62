package fifthform.monitor.chart;

import fifthform.monitor.chart.ReplayDrawing.Purpose;
import fifthform.monitor.report.ReportSheet;
import fifthform.monitor.report.ReportSheet.Block;
import fifthform.monitor.texts.ReportText;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;

/** How a report looks: the finding first, the curve, and below it the rest in two columns. Lengths in points. */
final class ReportDrawing {
    private static final double MARGIN = 40;
    private static final double BETWEEN = 22;
    private static final double TITLE = 15;
    private static final double HEADLINE = 12;
    private static final double LETTERS = 8;
    private static final double CURVE_LETTERS = 7;
    private static final double CURVE_HEIGHT = 236;

    /** From line to line, as a share of the letters. */
    private static final double LINE = 1.42;

    private final Pen pen;
    private final Paper paper;
    private final ReportSheet sheet;
    private final Color ink = Palette.BRIGHT.ink();
    private final double inner;
    private double y = MARGIN;

    ReportDrawing(Pen pen, Paper paper, ReportSheet sheet) {
        this.pen = pen;
        this.paper = paper;
        this.sheet = sheet;
        this.inner = paper.width() - 2 * MARGIN;
    }

    void all() {
        say(sheet.title(), Typeface.BOLD, TITLE, ink);
        say(sheet.subject(), Typeface.REGULAR, LETTERS + 1, ink);
        if (!sheet.marks().isEmpty()) say(String.join(" · ", sheet.marks()), Typeface.BOLD, LETTERS + 1, ink);
        y += 6;
        say(sheet.headline(), Typeface.BOLD, HEADLINE, ink);
        if (!sheet.aside().isEmpty()) say(sheet.aside(), Typeface.REGULAR, LETTERS, Palette.BRIGHT.quiet());
        y += 4;
        curve();
        List<String> foot = wrapped(sheet.foot(), LETTERS - 1, inner);
        double under = paper.height() - MARGIN - foot.size() * (LETTERS - 1) * LINE;
        columns(under - 8);
        pen.line(MARGIN, under - 4, paper.width() - MARGIN, under - 4, Palette.BRIGHT.hatch(), 0.5);
        y = under;
        for (String line : foot) line(line, MARGIN, Typeface.REGULAR, LETTERS - 1, Palette.BRIGHT.quiet());
    }

    private void curve() {
        ReplayPlot plot = new ReplayPlot(inner, CURVE_HEIGHT, CURVE_LETTERS);
        new ReplayDrawing(new Moved(pen, MARGIN, y), plot, Palette.BRIGHT, sheet.chart(), Purpose.FILE).all();
        y += CURVE_HEIGHT + 8;
    }

    /** A line of a column as it will stand there. */
    private record Set(String words, Typeface face, boolean begins) {}

    private void columns(double bottom) {
        double wide = (inner - BETWEEN) / 2;
        List<Set> lines = new ArrayList<>();
        for (Block block : sheet.blocks()) {
            lines.add(new Set(block.heading(), Typeface.BOLD, true));
            for (String line : block.lines())
                for (String part : wrapped(line, LETTERS, wide)) lines.add(new Set(part, Typeface.REGULAR, false));
        }
        double top = y;
        int next = 0;
        for (int column = 0; column < 2; column++) {
            y = top;
            double x = MARGIN + column * (wide + BETWEEN);
            while (next < lines.size()) {
                Set line = lines.get(next);
                double before = line.begins() && y > top ? 0.6 * LETTERS : 0;
                // A heading is no last line, and the page's last line has to say what is left out.
                double needs = before + LETTERS * LINE * (line.begins() ? 2 : 1);
                double kept = column == 1 && next < lines.size() - 1 ? LETTERS * LINE : 0;
                if (y + needs + kept > bottom) break;
                y += before;
                line(line.words(), x, line.face(), LETTERS, ink);
                next++;
            }
            if (column == 1 && next < lines.size()) {
                String more = ReportText.MORE.say(Integer.toString(lines.size() - next));
                line(more, x, Typeface.REGULAR, LETTERS, Palette.BRIGHT.quiet());
            }
        }
    }

    private void say(String words, Typeface face, double size, Color color) {
        for (String line : wrapped(words, face, size, inner)) line(line, MARGIN, face, size, color);
    }

    private void line(String words, double x, Typeface face, double size, Color color) {
        pen.words(words, x, y + size * LINE / 2, TextAlignment.LEFT, face, size, color);
        y += size * LINE;
    }

    private List<String> wrapped(String words, double size, double wide) {
        return wrapped(words, Typeface.REGULAR, size, wide);
    }

    /** Broken between words; a word that is wider than the column, within it. */
    private List<String> wrapped(String words, Typeface face, double size, double wide) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.strip().split("\\s+")) {
            if (line.length() > 0 && pen.width(line + " " + word, face, size) > wide) {
                lines.add(line.toString());
                line.setLength(0);
            }
            if (line.length() > 0) line.append(' ');
            for (int c : word.codePoints().toArray()) {
                if (pen.width(line + Character.toString(c), face, size) > wide && line.length() > 0) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                line.appendCodePoint(c);
            }
        }
        if (line.length() > 0) lines.add(line.toString());
        return lines;
    }
}
