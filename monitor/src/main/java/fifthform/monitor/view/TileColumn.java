package fifthform.monitor.view;

import eu.hansolo.tilesfx.Tile;
import eu.hansolo.tilesfx.Tile.SkinType;
import eu.hansolo.tilesfx.TileBuilder;
import fifthform.monitor.chart.Palette;
import fifthform.monitor.chart.Typeface;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.texts.ViewText;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.shape.Rectangle;

/** Slow values, one tile each; a value outside its range says so in words and turns to the prompt's fill. */
final class TileColumn extends Group {
    private static final int MOST = 3;

    private final List<Cell> cells = Stream.generate(Cell::new).limit(MOST).toList();
    private Palette palette = Palette.BRIGHT;

    TileColumn() {
        getChildren().addAll(cells);
    }

    void colour(Palette colours) {
        palette = colours;
        cells.forEach(Cell::dress);
    }

    void lay(List<WatchPicture.Tile> wanted, Box box, double u) {
        int count = Math.min(MOST, wanted.size());
        double gap = 12 * u;
        double high = Math.min(box.width() * 0.8, (box.height() - gap * (count - 1)) / Math.max(1, count));
        for (int i = 0; i < MOST; i++) {
            cells.get(i).setVisible(i < count);
            if (i < count)
                cells.get(i).lay(wanted.get(i), new Box(box.x(), box.y() + i * (high + gap), box.width(), high), u);
        }
    }

    /**
     * A tile that carries the panel and the number, with edge and words of our own over it: the tile's own shrink with its
     * shorter side until nobody can see them from the stove, and yellow without its edge hardly stands out from the base.
     */
    private final class Cell extends Group {
        private final Words title = new Words(Typeface.REGULAR);
        private final Words number = new Words(Typeface.REGULAR);
        private final Words range = new Words(Typeface.BOLD);
        private final Rectangle edge = new Rectangle();
        private Optional<Tile> tile = Optional.empty();
        private Optional<WatchPicture.Tile> shown = Optional.empty();

        Cell() {
            setAccessibleRole(AccessibleRole.TEXT);
            edge.getStyleClass().add("outlined");
            getChildren().addAll(edge, title, number, range);
        }

        void lay(WatchPicture.Tile value, Box box, double u) {
            if (shown.filter(value::equals).isEmpty()) {
                shown = Optional.of(value);
                dress();
            }
            Tile under = tile.orElseGet(this::made);
            under.resizeRelocate(box.x(), box.y(), box.width(), box.height());
            double line = 3 * u;
            edge.setX(box.x() + line / 2);
            edge.setY(box.y() + line / 2);
            edge.setWidth(box.width() - line);
            edge.setHeight(box.height() - line);
            edge.setStrokeWidth(line);
            double inset = box.width() * 0.055;
            double wide = box.width() - 2 * inset;
            double high = box.height();
            double left = box.x() + inset;
            String name = value.title() + ", " + value.unit();
            String range = rangeWords(value);
            double gap = range.isEmpty() ? 0 : 8 * u;
            double wished = Math.min(high * 0.22, box.width() * 0.13);
            double needed = 1.02
                    * (Words.widthOf(name, Typeface.REGULAR, wished) + Words.widthOf(range, Typeface.BOLD, wished));
            double size = wished * Math.min(1, (wide - gap) / needed);
            Box head = new Box(left, box.y() + high * 0.07, wide, high * 0.24);
            double used = title.place(name, head, size, 1, Words.Side.LEFT);
            Box rest = new Box(left + used + gap, head.y(), Math.max(u, wide - used - gap), head.height());
            this.range.place(range, rest, size, 1, Words.Side.RIGHT);
            Box middle = new Box(left, box.y() + high * 0.42, wide, high * 0.47);
            number.place(figure(value, value.value()), middle, high, 1, Words.Side.LEFT);
        }

        void dress() {
            shown.ifPresent(value -> {
                Tile under = tile.orElseGet(this::made);
                under.setDecimals(value.decimals());
                under.setValue(value.value());
                under.setBackgroundColor(outside(value) ? palette.prompt() : palette.panel());
                edge.setVisible(outside(value));
                BandBar.restyle(number, "on-", outside(value) ? "prompt" : "calm");
                BandBar.restyle(title, "on-", outside(value) ? "prompt" : "calm");
                BandBar.restyle(range, "on-", outside(value) ? "prompt" : "calm");
                setAccessibleText(value.title() + " " + figure(value, value.value()) + " " + value.unit() + ", "
                        + rangeWords(value));
            });
        }

        private Tile made() {
            Tile made = TileBuilder.create()
                    .skinType(SkinType.NUMBER)
                    .animated(false)
                    .minValue(-1e6)
                    .maxValue(1e6)
                    .roundedCorners(false)
                    .customFontEnabled(true)
                    .customFont(Typeface.REGULAR.at(20))
                    .textVisible(false)
                    // Its number is laid out for square tiles; ours are wide, so we write the same number larger.
                    .valueVisible(false)
                    .build();
            made.setManaged(false);
            made.setFocusTraversable(false);
            tile = Optional.of(made);
            getChildren().add(0, made);
            // The skin lays itself out when the size changes, so it must be there before the size comes.
            made.applyCss();
            return made;
        }
    }

    private static boolean outside(WatchPicture.Tile value) {
        return value.value() < value.low() || value.value() > value.high();
    }

    private static String rangeWords(WatchPicture.Tile value) {
        if (value.value() < value.low()) return ViewText.UNDER.say(limit(value.low()));
        if (value.value() > value.high()) return ViewText.OVER.say(limit(value.high()));
        boolean bounded = Double.isFinite(value.low()) && Double.isFinite(value.high());
        return bounded ? ViewText.TO.say(limit(value.low()), limit(value.high())) : "";
    }

    private static String limit(double number) {
        return number == Math.rint(number)
                ? String.format(Locale.ROOT, "%.0f", number)
                : String.format(Locale.ROOT, "%.1f", number);
    }

    private static String figure(WatchPicture.Tile value, double number) {
        return String.format(Locale.ROOT, "%." + value.decimals() + "f", number);
    }
}
