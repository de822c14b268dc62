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
import javafx.scene.paint.Color;

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
                cells.get(i).lay(wanted.get(i), new Box(box.x(), box.y() + i * (high + gap), box.width(), high));
        }
    }

    /**
     * A tile that carries panel, edge and number, with the words in our own type over it: the tile's own words shrink
     * with its shorter side until nobody can read them from the stove.
     */
    private final class Cell extends Group {
        private final Words title = new Words(Typeface.REGULAR);
        private final Words number = new Words(Typeface.REGULAR);
        private final Words range = new Words(Typeface.BOLD);
        private Optional<Tile> tile = Optional.empty();
        private Optional<WatchPicture.Tile> shown = Optional.empty();

        Cell() {
            setAccessibleRole(AccessibleRole.TEXT);
            getChildren().addAll(title, number, range);
        }

        void lay(WatchPicture.Tile value, Box box) {
            if (shown.filter(value::equals).isEmpty()) {
                shown = Optional.of(value);
                dress();
            }
            Tile under = tile.orElseGet(this::made);
            under.resizeRelocate(box.x(), box.y(), box.width(), box.height());
            double inset = box.width() * 0.055;
            double wide = box.width() - 2 * inset;
            double high = box.height();
            double size = Math.min(high * 0.22, box.width() * 0.13);
            double left = box.x() + inset;
            title.place(
                    value.title() + ", " + value.unit(),
                    new Box(left, box.y() + high * 0.06, wide, high * 0.24),
                    size,
                    1,
                    Words.Side.LEFT);
            String range = rangeWords(value);
            double numberHigh = range.isEmpty() ? 0.58 : 0.4;
            Box middle = new Box(left, box.y() + high * 0.34, wide, high * numberHigh);
            number.place(figure(value, value.value()), middle, high * numberHigh * 1.15, 1, Words.Side.LEFT);
            this.range.place(range, new Box(left, box.y() + high * 0.76, wide, high * 0.2), size, 1, Words.Side.LEFT);
        }

        void dress() {
            shown.ifPresent(value -> {
                Tile under = tile.orElseGet(this::made);
                under.setDecimals(value.decimals());
                under.setValue(value.value());
                under.setBackgroundColor(outside(value) ? palette.prompt() : palette.panel());
                under.setBorderColor(outside(value) ? palette.ink() : Color.TRANSPARENT);
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
