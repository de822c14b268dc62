package fifthform.monitor.view;

import fifthform.monitor.chart.FarLadder;
import fifthform.monitor.chart.LadderCanvas.Reading;
import fifthform.monitor.chart.Typeface;
import fifthform.monitor.chart.Written;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Band;
import fifthform.monitor.model.WatchPicture.Crystals;
import fifthform.monitor.model.WatchPicture.Numeral;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.monitor.settings.FarLetters;
import fifthform.monitor.settings.ScreenScale;
import fifthform.monitor.settings.ScreenSizes;
import fifthform.monitor.texts.LiveText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.layout.Region;

/**
 * What matters from across the kitchen, and nothing else: what to do, how warm, where that is on the ladder, and the word
 * about the crystals. No text is smaller than the farthest reader needs; what does not fit at that size is said shorter or
 * not at all.
 *
 * <p>Lengths are in capitals of that least height.
 */
final class FarScreen extends Region {
    private static final double MARGIN = 0.8;
    private static final double GAP = 0.7;

    /** Headline: two lines at 12 mm where the least is 9.3 mm. */
    private static final double HEADLINE = 1.3;

    private static final double BAND = 5;
    private static final double SIGN = 4;
    private static final double FOOT_LINE = 1.7;
    private static final int FOOT_LINES = 2;
    private static final double AGE = 1.9;

    private final BandBar band = new BandBar();
    private final NumeralPane numeral = new NumeralPane();
    private final Words age = new Words(Typeface.BOLD, "warning");
    private final FarLadder ladder = new FarLadder();
    private final Words line = new Words(Typeface.BOLD);
    private final ScreenScale scale;
    private final ScreenSizes sizes;
    private Optional<WatchPicture> shown = Optional.empty();

    /** @param scale how large this screen's pixels are */
    FarScreen(Theme theme, ScreenScale scale, ScreenSizes sizes) {
        this.scale = scale;
        this.sizes = sizes;
        getStyleClass().add("watch");
        ladder.setManaged(false);
        getChildren().addAll(band, numeral, age, ladder, line);
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

    /** What stands on the ladder. */
    List<Written> onTheLadder() {
        return ladder.written();
    }

    /** How large its smallest letters are. */
    FarLetters letters() {
        return FarLetters.on(getWidth(), getHeight(), scale, sizes);
    }

    @Override
    protected void layoutChildren() {
        shown.ifPresent(this::arrange);
    }

    private void arrange(WatchPicture picture) {
        if (getWidth() <= 0 || getHeight() <= 0) return;
        FarLetters letters = letters();
        double c = letters.pixels();
        double font = c / Words.CAPITAL;
        double margin = MARGIN * c;
        double wide = getWidth() - 2 * margin;
        double bandHigh = Math.max(BAND * c, getHeight() * 0.2);
        layBand(picture.band(), new Box(margin, margin, wide, bandHigh), c);
        String said = words(picture, letters, wide, font);
        int lines = Words.widthOf(said, Typeface.BOLD, font) <= wide ? 1 : FOOT_LINES;
        double forFoot = (FOOT_LINE * lines + 0.1) * c;
        double foot = getHeight() - margin - forFoot;
        line.placeLarge(said, new Box(margin, foot, wide, forFoot), font * 1.0001, lines, Words.Side.LEFT);
        double top = margin + bandHigh + GAP * c;
        double high = foot - GAP * c - top;
        double wished = Math.min(FarLadder.wish(picture.ladder(), font), wide * 0.46);
        double forLadder = Math.max(wished, Math.min(FarLadder.least(picture.ladder(), font), wide * 0.55));
        Reading reading = picture.numeral().stale().isPresent() ? Reading.OLD : Reading.GOOD;
        ladder.show(picture.ladder(), reading, forLadder, high, font);
        ladder.relocate(getWidth() - margin - forLadder, top);
        Box left = new Box(margin, top, wide - forLadder - GAP * c, high);
        layNumeral(picture.numeral(), left, c);
    }

    /** The figure that matters stands beside the instruction only where both have room. */
    private void layBand(Band wanted, Box box, double c) {
        boolean signed = wanted.tone() != Tone.CALM && wanted.tone() != Tone.CUE;
        double inner = box.width() - (signed ? SIGN : 0) * c - 2 * c;
        double headline = Words.widthOf(wanted.headline(), Typeface.BOLD, HEADLINE * c / Words.CAPITAL, 2);
        double aside = Words.widthOf(wanted.aside(), Typeface.REGULAR, c / Words.CAPITAL, 2) * 1.12;
        boolean both = headline + aside + c <= inner;
        band.layFar(both ? wanted : without(wanted), box, c, both ? aside : 0);
    }

    private static Band without(Band band) {
        return new Band(band.tone(), band.direction(), band.headline(), "", band.blinking());
    }

    /** The age of a number that is not good any more has a line of its own, right under it. */
    private void layNumeral(Numeral wanted, Box box, double c) {
        double forAge = wanted.stale().isPresent() ? AGE * c : 0;
        Numeral struck = new Numeral(
                wanted.whole(),
                wanted.hundredths(),
                wanted.unit(),
                wanted.stale().map(words -> ""),
                "",
                List.of());
        Box digits = numeral.lay(struck, new Box(box.x(), box.y(), box.width(), box.height() - forAge), c / 30);
        double under = Math.min(digits.bottom() + 0.35 * c, box.bottom() - forAge);
        age.place(
                wanted.stale().orElse(""),
                new Box(box.x(), under, box.width(), Math.max(1, forAge)),
                c / Words.CAPITAL,
                1,
                Words.Side.LEFT);
    }

    /** That it is practice, what is said of the crystals, whose bowl: as many of these as have room, in this order. */
    private static String words(WatchPicture picture, FarLetters letters, double wide, double font) {
        List<String> parts = new ArrayList<>();
        if (picture.simulated()) parts.add(TopLine.PRACTICE.say());
        Crystals crystals = picture.crystals();
        if (crystals.isSaid()) parts.add(Crystals.LABEL.say() + ": " + crystals.word());
        if (letters.reach() == FarLetters.Reach.SCREEN_TOO_SMALL)
            parts.add(LiveText.FAR_READABLE.say(String.format(Locale.ROOT, "%.1f", letters.metres())));
        parts.add(picture.subject());
        while (!parts.isEmpty() && tooWide(parts, wide, font)) parts.remove(parts.size() - 1);
        return String.join(" · ", parts);
    }

    private static boolean tooWide(List<String> parts, double wide, double font) {
        return Words.widthOf(String.join(" · ", parts), Typeface.BOLD, font, FOOT_LINES) > wide;
    }
}
