package fifthform.monitor.view;

import fifthform.monitor.chart.LadderCanvas;
import fifthform.monitor.chart.LadderCanvas.Reading;
import fifthform.monitor.chart.TraceCanvas;
import fifthform.monitor.chart.Typeface;
import fifthform.monitor.model.Key;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Crystals;
import fifthform.monitor.model.WatchPicture.Notice;
import fifthform.monitor.model.WatchPicture.Tone;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;

/**
 * The Watch screen: read at two metres in one glance, in the order <em>what now, how warm, how long</em>. Everything
 * is a share of the window's size, so nothing is cut off however small or large it is.
 *
 * <p>Lengths in this class are design units: the design is 1600 × 900.
 */
public final class WatchScreen extends Region {
    private static final double DESIGN_WIDTH = 1600;
    private static final double DESIGN_HEIGHT = 900;
    private static final double MARGIN = 40;
    private static final double LADDER_WIDTH = 480;
    private static final double UNDO_SIZE = 24;

    /** As many as fit on one line of two fifths of the foot. */
    private static final int ONE_LINE_LETTERS = 45;

    private final TopLine top = new TopLine();
    private final BandBar band = new BandBar();
    private final NumeralPane numeral = new NumeralPane();
    private final OutlookPane outlook = new OutlookPane();
    private final TileColumn tiles = new TileColumn();
    private final LadderCanvas ladder = new LadderCanvas();
    private final TraceCanvas trace = new TraceCanvas();
    private final AlarmStrip strip = new AlarmStrip();
    private final BannerPane banner = new BannerPane();
    private final Words crystals = new Words(Typeface.BOLD);
    private final Words limits = new Words(Typeface.REGULAR);
    private final Words foot = new Words(Typeface.REGULAR);
    private final Words undo = new Words(Typeface.BOLD);
    private final KeyRow keys;
    private final Rectangle edge = new Rectangle();
    private Optional<WatchPicture> shown = Optional.empty();
    private Theme theme = Theme.BRIGHT;

    /**
     * A screen without a picture.
     *
     * @param pressed takes the keys that are clicked
     * @param assigned the maker's keys
     */
    public WatchScreen(Consumer<Key> pressed, KeyMap assigned) {
        keys = new KeyRow(pressed, assigned);
        getStyleClass().add("watch");
        edge.getStyleClass().add("edge");
        edge.setManaged(false);
        edge.setMouseTransparent(true);
        edge.setVisible(false);
        ladder.setManaged(false);
        trace.setManaged(false);
        getChildren()
                .addAll(
                        top, band, numeral, outlook, tiles, ladder, trace, strip, banner, crystals, limits, foot, undo,
                        keys, edge);
        wear(Theme.BRIGHT);
    }

    /** Shows {@code picture}: words and charts. */
    public void show(WatchPicture picture) {
        showWords(picture);
        showCharts(picture);
    }

    /** Shows the words and figures of {@code picture} and leaves the charts as they are. */
    public void showWords(WatchPicture picture) {
        if (shown.filter(picture::equals).isPresent()) return;
        shown = Optional.of(picture);
        arrange(picture);
    }

    /** Shows the charts of {@code picture}; drawing them costs most, so the window does this less often. */
    public void showCharts(WatchPicture picture) {
        ladder.show(picture.ladder(), picture.numeral().stale().isPresent() ? Reading.OLD : Reading.GOOD);
        trace.show(picture.trace());
    }

    /** Changes the colours. */
    public void wear(Theme wanted) {
        theme = wanted;
        getStylesheets().setAll(wanted.styleSheets());
        ladder.colour(wanted.palette());
        trace.colour(wanted.palette());
        tiles.colour(wanted.palette());
    }

    /** The colours it wears. */
    public Theme theme() {
        return theme;
    }

    /** Lights the symbol of an alarm that nobody has seen yet, or takes its light away. */
    public void lightSymbol(Light light) {
        band.blink(light == Light.ON);
    }

    /** Lights the window's whole edge, where there is no sound for an urgent alarm. */
    public void lightEdge(Light light) {
        edge.setVisible(light == Light.ON);
    }

    /** One half of a blink. */
    public enum Light {
        ON,
        OFF
    }

    @Override
    protected void layoutChildren() {
        shown.ifPresent(this::arrange);
    }

    private void arrange(WatchPicture picture) {
        if (getWidth() <= 0 || getHeight() <= 0) return;
        double u = Math.min(getWidth() / DESIGN_WIDTH, getHeight() / DESIGN_HEIGHT);
        Frame frame = new Frame(picture, getWidth() / u, getHeight() / u);
        top.lay(picture, frame.top().times(u), u);
        band.lay(picture.band(), frame.band().times(u), u);
        numeral.lay(picture.numeral(), frame.numeral().times(u), u);
        outlook.lay(picture, frame.outlook().times(u), u);
        tiles.lay(picture.tiles(), frame.tiles().times(u), u);
        Box ladderBox = frame.ladder().times(u);
        ladder.size(ladderBox.width(), ladderBox.height(), u);
        ladder.relocate(ladderBox.x(), ladderBox.y());
        Box traceBox = frame.trace().times(u);
        trace.size(traceBox.width(), traceBox.height(), u);
        trace.relocate(traceBox.x(), traceBox.y());
        trace.setVisible(traceBox.height() > 0);
        strip.lay(picture.alarms(), frame.strip().times(u), u);
        banner.lay(picture, frame.banner().times(u), u);
        layCrystals(picture.crystals(), frame.crystals().times(u), u);
        layFoot(picture, frame.foot().times(u), u);
        keys.lay(picture, frame.keys().times(u), u);
        double wide = 10 * u;
        edge.setStrokeWidth(wide);
        edge.setX(wide / 2);
        edge.setY(wide / 2);
        edge.setWidth(getWidth() - wide);
        edge.setHeight(getHeight() - wide);
        if (picture.band().tone() != Tone.URGENT) edge.setVisible(false);
        if (!picture.band().blinking()) band.blink(true);
    }

    /** The word and how far it goes, in one line under the strip. */
    private void layCrystals(Crystals said, Box box, double u) {
        String word = said.isSaid() ? Crystals.LABEL.say() + ": " + said.word() : "";
        double used = crystals.place(
                word,
                new Box(box.x(), box.y(), box.width() * 0.3, Math.max(u, box.height())),
                25 * u,
                1,
                Words.Side.LEFT);
        double from = box.x() + used + 18 * u;
        limits.place(
                said.limits(),
                new Box(from, box.y(), box.right() - from, Math.max(u, box.height())),
                22 * u,
                1,
                Words.Side.LEFT);
    }

    /** Whether what a key said needs two lines of the foot, as looking back does. By its letters: measuring costs. */
    private static boolean saysMuch(WatchPicture picture) {
        return picture.undo().orElse("").length() > ONE_LINE_LETTERS;
    }

    /** Whether the quiet line needs two. */
    private static boolean tellsMuch(WatchPicture picture) {
        int room = picture.undo().isPresent() ? 3 * ONE_LINE_LETTERS / 2 : 2 * ONE_LINE_LETTERS;
        return picture.foot().length() > room;
    }

    private void layFoot(WatchPicture picture, Box box, double u) {
        double share = saysMuch(picture) ? 0.56 : 0.4;
        double forUndo = picture.undo().isPresent() ? box.width() * share : u;
        undo.place(
                picture.undo().orElse(""),
                new Box(box.right() - forUndo, box.y(), forUndo, box.height()),
                UNDO_SIZE * u,
                2,
                Words.Side.RIGHT);
        Box left = new Box(box.x(), box.y(), box.width() - forUndo - 20 * u, box.height());
        foot.place(picture.foot(), left, 25 * u, 2, Words.Side.LEFT);
    }

    /** Where everything stands, in design units, from the top down and from the bottom up with the main part between. */
    private record Frame(WatchPicture picture, double width, double height) {
        private double inner() {
            return width - 2 * MARGIN;
        }

        Box top() {
            return new Box(MARGIN, 0, inner(), 60);
        }

        Box band() {
            return new Box(MARGIN, 74, inner(), 106);
        }

        Box keys() {
            return new Box(MARGIN, height - 80, inner(), 68);
        }

        Box foot() {
            double high = saysMuch(picture) || tellsMuch(picture) ? 52 : 34;
            return new Box(MARGIN, keys().y() - 8 - high, inner(), high);
        }

        private boolean isAsked() {
            return picture.notice() == Notice.ASKED;
        }

        Box banner() {
            // Alarms need the room more than a notice that has been read, less than what was just asked for.
            boolean room = picture.banner().isPresent() && picture.alarms().isEmpty();
            double high = isAsked() ? 160 : room ? 82 : 0;
            return new Box(MARGIN, foot().y() - 6 - high, inner(), high);
        }

        Box strip() {
            double high = picture.alarms().isEmpty() ? 0 : 52;
            return new Box(MARGIN, banner().y() - (high > 0 ? 4 : 0) - high, inner(), high);
        }

        /** Who asks why gets the room of the curve, which comes back with the answer's end; the number keeps its own. */
        Box trace() {
            if (isAsked()) return new Box(MARGIN, crystals().y(), inner(), 0);
            double crowd = banner().height() + strip().height();
            double usual = crowd > 0 ? 154 : 206;
            double high = usual + Math.max(0, height - DESIGN_HEIGHT) * 0.4;
            return new Box(MARGIN, crystals().y() - 8 - high, inner(), high);
        }

        /** Nothing before the cool step, and no room for it. */
        Box crystals() {
            double high = picture.crystals().isSaid() ? 32 : 0;
            return new Box(MARGIN, strip().y() - (high > 0 ? 4 : 0) - high, inner(), high);
        }

        private Box main() {
            double from = band().bottom() + 14;
            return new Box(MARGIN, from, inner(), trace().y() - 6 - from);
        }

        Box ladder() {
            return new Box(width - MARGIN - LADDER_WIDTH, main().y(), LADDER_WIDTH, main().height());
        }

        Box tiles() {
            double wide = 190;
            return new Box(ladder().x() - 24 - wide, main().y() + 6, wide, main().height() - 12);
        }

        private double leftWidth() {
            return (picture.tiles().isEmpty() ? ladder().x() : tiles().x()) - 24 - MARGIN;
        }

        Box numeral() {
            return new Box(
                    MARGIN + 6,
                    main().y() + 12,
                    leftWidth() - 6,
                    main().height() - 12 - 20 - outlook().height());
        }

        Box outlook() {
            double high = 142;
            return new Box(MARGIN + 6, main().bottom() - high, leftWidth() - 6, high);
        }
    }
}
