package fifthform.monitor.view;

import fifthform.monitor.chart.LadderCanvas;
import fifthform.monitor.chart.LadderCanvas.Reading;
import fifthform.monitor.chart.Typeface;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Crystals;
import java.util.Optional;
import javafx.scene.layout.Region;

/**
 * What matters from across the kitchen, and nothing else: what to do, how warm, where that is on the ladder, and the word
 * about the crystals. The band's first line, the number and the line at the foot are larger than on Watch; the ladder's
 * words and the band's second line are not.
 *
 * <p>Lengths are design units: the design is 1600 × 900.
 */
final class FarScreen extends Region {
    private static final double MARGIN = 40;
    private static final double LADDER = 560;

    private final BandBar band = new BandBar();
    private final NumeralPane numeral = new NumeralPane();
    private final LadderCanvas ladder = new LadderCanvas();
    private final Words line = new Words(Typeface.BOLD);
    private Optional<WatchPicture> shown = Optional.empty();

    FarScreen(Theme theme) {
        getStyleClass().add("watch");
        ladder.setManaged(false);
        getChildren().addAll(band, numeral, ladder, line);
        wear(theme);
    }

    void wear(Theme theme) {
        getStylesheets().setAll(theme.styleSheets());
        ladder.colour(theme.palette());
    }

    void show(WatchPicture picture) {
        if (shown.filter(picture::equals).isPresent()) return;
        shown = Optional.of(picture);
        arrange(picture);
    }

    void lightSymbol(boolean lit) {
        band.blink(lit);
    }

    @Override
    protected void layoutChildren() {
        shown.ifPresent(this::arrange);
    }

    private void arrange(WatchPicture picture) {
        if (getWidth() <= 0 || getHeight() <= 0) return;
        double u = Math.min(getWidth() / 1600, getHeight() / 900);
        double wide = getWidth() / u;
        double high = getHeight() / u;
        band.lay(picture.band(), new Box(MARGIN, 24, wide - 2 * MARGIN, 180).times(u), u);
        double foot = high - 96;
        Box left = new Box(MARGIN + 6, 230, wide - 2 * MARGIN - LADDER - 40, foot - 260);
        numeral.lay(picture.numeral(), left.times(u), u);
        Box at = new Box(wide - MARGIN - LADDER, 224, LADDER, foot - 240).times(u);
        ladder.size(at.width(), at.height(), 1.16 * u);
        ladder.relocate(at.x(), at.y());
        ladder.show(picture.ladder(), picture.numeral().stale().isPresent() ? Reading.OLD : Reading.GOOD);
        line.place(
                words(picture), new Box(MARGIN + 6, foot, wide - 2 * MARGIN, 72).times(u), 48 * u, 1, Words.Side.LEFT);
    }

    /** Whose bowl, and what is said of the crystals; practice says so here too. */
    private static String words(WatchPicture picture) {
        Crystals crystals = picture.crystals();
        String said = crystals.isSaid() ? " · " + Crystals.LABEL + ": " + crystals.word() : "";
        return (picture.simulated() ? TopLine.PRACTICE + " · " : "") + picture.subject() + said;
    }
}
