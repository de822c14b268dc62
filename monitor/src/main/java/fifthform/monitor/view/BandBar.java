package fifthform.monitor.view;

import fifthform.monitor.chart.Typeface;
import fifthform.monitor.model.WatchPicture.Band;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.monitor.texts.ViewText;
import java.util.Locale;
import javafx.css.Styleable;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.shape.Rectangle;

/** What to do now: one imperative line, on a band where something is due. */
final class BandBar extends Group {
    private final Rectangle plate = new Rectangle();
    private final Sign sign = new Sign();
    private final Words headline = new Words(Typeface.BOLD);
    private final Words aside = new Words(Typeface.REGULAR);

    BandBar() {
        plate.getStyleClass().add("plate");
        sign.getStyleClass().add("words");
        getChildren().addAll(plate, sign, headline, aside);
        setAccessibleRole(AccessibleRole.TEXT);
    }

    void lay(Band band, Box box, double u) {
        dress(band.tone());
        say(band);
        plate.setX(box.x());
        plate.setY(box.y());
        plate.setWidth(box.width());
        plate.setHeight(box.height());
        plate.setStrokeWidth((band.tone() == Tone.URGENT ? 4 : 3) * u);
        boolean signed = band.tone() != Tone.CALM && band.tone() != Tone.CUE;
        sign.draw(band.tone(), band.direction(), box.x() + 72 * u, box.middle(), 38 * u);
        double inset = band.tone() == Tone.CALM ? 0 : 36 * u;
        double left = box.x() + (signed ? 136 * u : inset);
        double right = box.right() - inset;
        double asideSize = band.tone() == Tone.CALM ? 42 * u : 32 * u;
        double headlineWide = Words.widthOf(band.headline(), Typeface.BOLD, 74 * u);
        double asideWide = Words.widthOf(band.aside(), Typeface.REGULAR, asideSize);
        double onTwoLines = Words.widthOf(band.aside(), Typeface.REGULAR, asideSize, 2);
        double room = right - left - 40 * u;
        // The instruction keeps its size as long as two lines are enough for what stands beside it.
        double kept = Math.min(onTwoLines + 2 * u, room * 0.3);
        double forAside =
                band.aside().isEmpty() ? 0 : Math.min(asideWide + 2 * u, Math.max(kept, room - headlineWide - 2 * u));
        Box head = new Box(left, box.y() + 16 * u, room - forAside, box.height() - 32 * u);
        headline.place(band.headline(), head, 74 * u, 2, Words.Side.LEFT);
        Box tail = new Box(right - forAside, box.y() + 14 * u, forAside, box.height() - 28 * u);
        aside.place(band.aside(), tail, asideSize, 2, Words.Side.RIGHT);
    }

    /** The same for a far display: in capitals of {@code c} pixels, with {@code forAside} pixels at its right end. */
    void layFar(Band band, Box box, double c, double forAside) {
        dress(band.tone());
        say(band);
        plate.setX(box.x());
        plate.setY(box.y());
        plate.setWidth(box.width());
        plate.setHeight(box.height());
        plate.setStrokeWidth(c * 0.12);
        boolean signed = band.tone() != Tone.CALM && band.tone() != Tone.CUE;
        sign.draw(band.tone(), band.direction(), box.x() + 2.4 * c, box.middle(), 1.4 * c);
        double inset = band.tone() == Tone.CALM ? 0 : c;
        double left = box.x() + (signed ? 4.6 * c : inset);
        double right = box.right() - inset;
        double gap = forAside > 0 ? c : 0;
        // Two lines at their least, with room for what hangs below the second.
        Box head = new Box(left, box.y() + 0.75 * c, right - left - forAside - gap, box.height() - 1.5 * c);
        headline.placeLarge(band.headline(), head, 4 * c, 3, Words.Side.LEFT);
        Box tail = new Box(right - forAside, head.y(), Math.max(1, forAside), head.height());
        aside.placeLarge(band.aside(), tail, 1.0001 * c / Words.CAPITAL, 2, Words.Side.RIGHT);
    }

    /** Only the symbol ever blinks, never the words. */
    void blink(boolean lit) {
        sign.setOpacity(lit ? 1 : 0.12);
    }

    private void dress(Tone tone) {
        String word = tone.name().toLowerCase(Locale.ROOT);
        restyle(plate, "plate-", word);
        restyle(headline, "on-", word);
        restyle(aside, "on-", word);
        restyle(sign, tone == Tone.ADVISE ? "sign-" : "on-", word);
    }

    /** Replaces the style class that begins with the last one's prefix. */
    static void restyle(Styleable node, String prefix, String word) {
        String wanted = prefix + word;
        if (node.getStyleClass().contains(wanted)) return;
        node.getStyleClass()
                .removeIf(style -> style.startsWith("plate-") || style.startsWith("on-") || style.startsWith("sign-"));
        node.getStyleClass().add(wanted);
    }

    private void say(Band band) {
        String loudness = switch (band.tone()) {
            case URGENT -> ViewText.URGENT.say();
            case PROMPT -> ViewText.PROMPT.say();
            case ADVISE -> ViewText.ADVISE.say();
            case CUE, CALM -> "";
        };
        String spoken = loudness + band.headline() + (band.aside().isEmpty() ? "" : ". " + band.aside());
        if (spoken.equals(getAccessibleText())) return;
        setAccessibleText(spoken);
        notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
    }
}
