package fifthform.monitor.chart;

import fifthform.monitor.chart.LadderCanvas.Reading;
import fifthform.monitor.model.WatchPicture.Ladder;
import fifthform.monitor.model.WatchPicture.Limit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;

/**
 * The ladder of limits for somebody across the kitchen: no words smaller than asked for. What does not fit at that size is
 * said shorter; what would have to stand beside another line than its own is left out, the thin limits first.
 */
public final class FarLadder extends Canvas {
    /** Lengths in parts of the letters: a font of 40 units. */
    private static final double FONT = 40;

    private static final double LEFT_WALL = 72;
    private static final double RIGHT_WALL = 158;
    private static final double NAMES = 178;

    /** Distance of two labels in parts of their font. */
    private static final double PITCH = 1.15;

    /** How far a label may stand from its line, in parts of its font: half the height of its figures. */
    private static final double MOVED = 0.37;

    private Optional<Ladder> shown = Optional.empty();
    private Reading reading = Reading.GOOD;
    private Palette palette = Palette.BRIGHT;
    private double fontPixels = FONT;
    private List<Written> written = List.of();

    public FarLadder() {
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    }

    /** Shows {@code ladder} with letters of this font, pixels. */
    public void show(Ladder ladder, Reading quality, double width, double height, double font) {
        shown = Optional.of(ladder);
        reading = quality;
        fontPixels = font;
        setWidth(width);
        setHeight(height);
        setAccessibleText(LadderCanvas.spoken(ladder));
        draw();
    }

    /** Takes the theme's colours. */
    public void colour(Palette colours) {
        palette = colours;
        draw();
    }

    /** What stands on it and how large. */
    public List<Written> written() {
        return written;
    }

    /** The width it would like: room for its longest label, pixels. */
    public static double wish(Ladder ladder, double font) {
        double widest = labels(ladder).stream()
                .mapToDouble(label -> Typeface.BOLD.width(label.words(), font))
                .max()
                .orElse(0);
        return NAMES * font / FONT + widest + 2;
    }

    /** The width it cannot do without: room for the range aimed for in figures, pixels. */
    public static double least(Ladder ladder, double font) {
        String range = Figures.range(ladder.bandLowShown(), ladder.bandHighShown());
        return NAMES * font / FONT + Typeface.REGULAR.width(range, font) + 2;
    }

    private void draw() {
        GraphicsContext ink = getGraphicsContext2D();
        ink.clearRect(0, 0, getWidth(), getHeight());
        if (getHeight() <= 0 || shown.isEmpty()) return;
        Ladder ladder = shown.get();
        Brush brush = new Brush(ink, fontPixels / FONT);
        Rails rails = new Rails(ink, brush, ladder, palette, LEFT_WALL, RIGHT_WALL, getHeight());
        rails.range();
        rails.walls();
        rails.limits();
        names(brush, rails, ladder);
        rails.peak();
        rails.now(reading);
        written = brush.written();
    }

    private void names(Brush brush, Rails rails, Ladder ladder) {
        double room = getWidth() - brush.px(NAMES);
        List<Label> labels = new ArrayList<>();
        for (Label label : labels(ladder))
            if (label.limit().filter(limit -> !rails.isOnScale(limit)).isEmpty())
                label.fitting(room, fontPixels).ifPresent(labels::add);
        while (labels.size() > 1 && areMoved(labels, rails)) labels.remove(labels.size() - 1);
        labels.sort(Comparator.comparingDouble(label -> rails.y(label.atShown())));
        double[] placed = placed(labels, rails);
        for (int i = 0; i < placed.length; i++)
            brush.words(
                    labels.get(i).words(),
                    brush.px(NAMES),
                    placed[i],
                    TextAlignment.LEFT,
                    labels.get(i).face(),
                    FONT,
                    palette.ink());
    }

    /** Whether one would have to stand so far from its line that it is read as another's. */
    private boolean areMoved(List<Label> labels, Rails rails) {
        List<Label> sorted = labels.stream()
                .sorted(Comparator.comparingDouble(label -> rails.y(label.atShown())))
                .toList();
        double[] placed = placed(sorted, rails);
        for (int i = 0; i < placed.length; i++)
            if (Math.abs(placed[i] - rails.y(sorted.get(i).atShown())) > fontPixels * MOVED) return true;
        return false;
    }

    /** Where labels stand that are sorted from the top down. */
    private double[] placed(List<Label> labels, Rails rails) {
        double[] wished =
                labels.stream().mapToDouble(label -> rails.y(label.atShown())).toArray();
        double[] size = labels.stream().mapToDouble(label -> fontPixels * PITCH).toArray();
        return LabelStack.spread(wished, size, 0, getHeight());
    }

    /** From the most to the least needed. */
    private static List<Label> labels(Ladder ladder) {
        List<Label> labels = new ArrayList<>();
        if (!ladder.bandDetail().isEmpty() || !ladder.bandName().isEmpty()) {
            double middle = (ladder.bandLowShown() + ladder.bandHighShown()) / 2;
            String words = ladder.bandDetail().isEmpty() ? ladder.bandName() : ladder.bandDetail();
            String figures = Figures.range(ladder.bandLowShown(), ladder.bandHighShown());
            labels.add(new Label(words, figures, middle, Optional.empty(), Typeface.BOLD));
        }
        ladder.limits().stream().sorted(Comparator.comparing(Limit::weight)).forEach(limit -> labels.add(of(limit)));
        return labels;
    }

    private static Label of(Limit limit) {
        String figure = String.format(Locale.ROOT, "%.1f", limit.atShown());
        return new Label(figure + " " + limit.name(), figure, limit.atShown(), Optional.of(limit), Typeface.REGULAR);
    }

    /** Words beside the ladder, and shorter ones. */
    private record Label(String words, String shorter, double atShown, Optional<Limit> limit, Typeface face) {
        /** As it has room: in full, shorter, then in the narrower face. */
        Optional<Label> fitting(double room, double font) {
            Label figures = new Label(shorter, shorter, atShown, limit, face);
            Label narrow = new Label(shorter, shorter, atShown, limit, Typeface.REGULAR);
            return Stream.of(this, figures, narrow)
                    .filter(label -> label.face.width(label.words, font) <= room)
                    .findFirst();
        }
    }
}
