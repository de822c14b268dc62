package fifthform.monitor.chart;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfGState;
import java.awt.Color;
import javafx.scene.text.TextAlignment;

/**
 * Draws on a page of a PDF file. Lengths are points, 1/72 inch, from the page's upper left corner as on a screen; a page
 * counts from its lower left.
 */
final class PdfPen implements Pen {
    private final PdfContentByte ink;
    private final double pageHeight;

    PdfPen(PdfContentByte ink, double pageHeight) {
        this.ink = ink;
        this.pageHeight = pageHeight;
    }

    @Override
    public void box(double x, double y, double width, double height, javafx.scene.paint.Color color) {
        fill(color);
        ink.rectangle(x(x), y(y + height), (float) width, (float) height);
        ink.fill();
    }

    @Override
    public void line(
            double x1,
            double y1,
            double x2,
            double y2,
            javafx.scene.paint.Color color,
            double width,
            double... dashes) {
        path(new double[] {x1, x2}, new double[] {y1, y2}, color, width, dashes);
    }

    @Override
    public void path(double[] xs, double[] ys, javafx.scene.paint.Color color, double width, double... dashes) {
        ink.saveState();
        stroke(color, width);
        ink.setLineJoin(PdfContentByte.LINE_JOIN_ROUND);
        ink.setLineCap(dashes.length == 0 ? PdfContentByte.LINE_CAP_ROUND : PdfContentByte.LINE_CAP_BUTT);
        if (dashes.length > 0) {
            float[] strokes = new float[dashes.length];
            for (int i = 0; i < dashes.length; i++) strokes[i] = (float) dashes[i];
            ink.setLineDash(strokes, 0);
        }
        boolean broken = true;
        for (int i = 0; i < xs.length; i++) {
            boolean gap = Double.isNaN(xs[i]);
            if (!gap && broken) ink.moveTo(x(xs[i]), y(ys[i]));
            if (!gap && !broken) ink.lineTo(x(xs[i]), y(ys[i]));
            broken = gap;
        }
        ink.stroke();
        ink.restoreState();
    }

    @Override
    public void shape(
            double[] xs, double[] ys, javafx.scene.paint.Color inside, javafx.scene.paint.Color edge, double width) {
        ink.saveState();
        if (inside.getOpacity() < 1) {
            PdfGState see = new PdfGState();
            see.setFillOpacity((float) inside.getOpacity());
            ink.setGState(see);
        }
        fill(inside);
        if (width > 0) stroke(edge, width);
        for (int i = 0; i < xs.length; i++) {
            if (i == 0) ink.moveTo(x(xs[i]), y(ys[i]));
            else ink.lineTo(x(xs[i]), y(ys[i]));
        }
        if (width > 0) ink.closePathFillStroke();
        else ink.fill();
        ink.restoreState();
    }

    @Override
    public void words(
            String words,
            double x,
            double middleY,
            TextAlignment align,
            Typeface face,
            double size,
            javafx.scene.paint.Color color) {
        int how = switch (align) {
            case RIGHT -> PdfContentByte.ALIGN_RIGHT;
            case CENTER -> PdfContentByte.ALIGN_CENTER;
            case LEFT, JUSTIFY -> PdfContentByte.ALIGN_LEFT;
        };
        ink.beginText();
        fill(color);
        ink.setFontAndSize(PlainFace.of(face), (float) size);
        ink.showTextAligned(how, PlainFace.writable(words, face), x(x), y(middleY + CAPITALS_MIDDLE * size), 0);
        ink.endText();
    }

    @Override
    public double width(String words, Typeface face, double size) {
        return PlainFace.width(words, face, size);
    }

    @Override
    public void within(double x, double y, double width, double height) {
        ink.saveState();
        ink.rectangle(x(x), y(y + Math.max(0, height)), (float) Math.max(0, width), (float) Math.max(0, height));
        ink.clip();
        ink.newPath();
    }

    @Override
    public void free() {
        ink.restoreState();
    }

    private float x(double x) {
        return (float) x;
    }

    private float y(double y) {
        return (float) (pageHeight - y);
    }

    private void fill(javafx.scene.paint.Color color) {
        ink.setColorFill(plain(color));
    }

    private void stroke(javafx.scene.paint.Color color, double width) {
        ink.setColorStroke(plain(color));
        ink.setLineWidth((float) width);
    }

    private static Color plain(javafx.scene.paint.Color color) {
        return new Color((float) color.getRed(), (float) color.getGreen(), (float) color.getBlue());
    }
}
