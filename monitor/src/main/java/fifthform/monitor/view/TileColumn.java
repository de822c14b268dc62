package fifthform.monitor.view;

import eu.hansolo.tilesfx.Tile;
import eu.hansolo.tilesfx.Tile.SkinType;
import eu.hansolo.tilesfx.TileBuilder;
import fifthform.monitor.chart.Palette;
import fifthform.monitor.chart.Typeface;
import fifthform.monitor.model.WatchPicture;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Group;
import javafx.scene.paint.Color;

/** Slow values, one tile each; a value outside its range says so in words and turns to the prompt's fill. */
final class TileColumn extends Group {
    static final int MOST = 3;

    private final List<Tile> tiles = new ArrayList<>();
    private List<WatchPicture.Tile> shown = List.of();
    private Palette palette = Palette.BRIGHT;

    void colour(Palette colours) {
        palette = colours;
        shown.forEach(this::dress);
    }

    void lay(List<WatchPicture.Tile> wanted, Box box, double u) {
        List<WatchPicture.Tile> most = wanted.subList(0, Math.min(MOST, wanted.size()));
        while (tiles.size() > most.size()) getChildren().remove(tiles.remove(tiles.size() - 1));
        while (tiles.size() < most.size()) {
            Tile tile = made();
            tiles.add(tile);
            getChildren().add(tile);
        }
        if (!most.equals(shown)) {
            shown = List.copyOf(most);
            shown.forEach(this::dress);
        }
        double gap = 12 * u;
        double high = Math.min(box.width() * 0.8, (box.height() - gap * (most.size() - 1)) / Math.max(1, most.size()));
        for (int i = 0; i < tiles.size(); i++) {
            tiles.get(i).setPrefSize(box.width(), high);
            tiles.get(i).resizeRelocate(box.x(), box.y() + i * (high + gap), box.width(), high);
        }
    }

    private static Tile made() {
        Tile tile = TileBuilder.create()
                .skinType(SkinType.NUMBER)
                .animated(false)
                .roundedCorners(false)
                .customFontEnabled(true)
                .customFont(Typeface.REGULAR.at(20))
                .textSize(Tile.TextSize.BIGGER)
                .textVisible(true)
                .build();
        tile.setManaged(false);
        return tile;
    }

    private void dress(WatchPicture.Tile value) {
        Tile tile = tiles.get(shown.indexOf(value));
        boolean low = value.value() < value.low();
        boolean high = value.value() > value.high();
        Color fill = low || high ? palette.prompt() : palette.panel();
        Color ink = low || high ? palette.promptText() : palette.ink();
        tile.setTitle(value.title());
        tile.setDecimals(value.decimals());
        tile.setMinValue(Math.min(0, value.value()));
        tile.setMaxValue(Math.max(100, value.value()));
        tile.setValue(value.value());
        tile.setUnit(value.unit());
        tile.setText(low ? "under " + figure(value, value.low()) : high ? "over " + figure(value, value.high()) : "");
        tile.setBackgroundColor(fill);
        tile.setBorderColor(low || high ? palette.ink() : Color.TRANSPARENT);
        tile.setForegroundBaseColor(ink);
        tile.setTitleColor(ink);
        tile.setTextColor(ink);
        tile.setValueColor(ink);
        tile.setUnitColor(ink);
        tile.setAccessibleText(
                value.title() + " " + figure(value, value.value()) + " " + value.unit() + " " + tile.getText());
    }

    private static String figure(WatchPicture.Tile value, double number) {
        return String.format(Locale.ROOT, "%." + value.decimals() + "f", number);
    }
}
