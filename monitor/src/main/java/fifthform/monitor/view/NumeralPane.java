package fifthform.monitor.view;

import fifthform.monitor.chart.Typeface;
import fifthform.monitor.model.WatchPicture.Numeral;
import fifthform.monitor.texts.ViewText;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.shape.Rectangle;

/** The temperature, large; or the last one struck through with its age. */
final class NumeralPane extends Group {
    /** Size of the second decimal and of the unit in parts of the first; the unit's from the sketch. */
    private static final double HUNDREDTHS = 0.5;

    private static final double UNIT = 0.32;

    private final Words whole = new Words(Typeface.REGULAR);
    private final Words hundredths = new Words(Typeface.REGULAR);
    private final Words unit = new Words(Typeface.REGULAR);
    private final Words stale = new Words(Typeface.BOLD, "warning");
    private final Rectangle strike = new Rectangle();

    NumeralPane() {
        strike.getStyleClass().add("strike");
        getChildren().addAll(whole, hundredths, unit, strike, stale);
        setAccessibleRole(AccessibleRole.TEXT);
    }

    /** Lays it out; returns where its digits stand. */
    Box lay(Numeral numeral, Box box, double u) {
        double natural = Words.widthOf(numeral.whole(), Typeface.REGULAR, 100)
                + Words.widthOf(numeral.hundredths(), Typeface.REGULAR, 100 * HUNDREDTHS)
                + Words.widthOf(numeral.unit(), Typeface.REGULAR, 100 * UNIT)
                + 14;
        double size = Math.min(box.height() / Words.CAPITAL, box.width() / natural * 100);
        double baseline = box.middle() + size * Words.CAPITAL / 2;
        double x = box.x();
        x += whole.stand(numeral.whole(), x, baseline, size);
        double decimalAt = x + size * 0.02;
        x = decimalAt + hundredths.stand(numeral.hundredths(), decimalAt, baseline, size * HUNDREDTHS);
        Box digits = new Box(box.x(), baseline - size * Words.CAPITAL, decimalAt - box.x(), size * Words.CAPITAL);
        unit.stand(numeral.unit(), x + size * 0.07, baseline, size * UNIT);
        strike.setVisible(numeral.stale().isPresent());
        if (strike.isVisible()) strike(baseline - size * Words.CAPITAL * 0.42, u);
        Box age = new Box(
                decimalAt + 22 * u,
                baseline - size * Words.CAPITAL,
                Math.max(u, box.right() - decimalAt - 22 * u),
                size * Words.CAPITAL * 0.4);
        stale.place(numeral.stale().orElse(""), age, 52 * u, 2, Words.Side.LEFT);
        setAccessibleText(spoken(numeral));
        return digits;
    }

    /** From the first digit's ink to the last one's: longer, it would strike the unit too. */
    private void strike(double middle, double u) {
        double from = whole.ink().getMinX();
        double to = (hundredths.isVisible() ? hundredths : whole).ink().getMaxX();
        strike.setX(from);
        strike.setWidth(to - from);
        strike.setHeight(13 * u);
        strike.setY(middle - 6.5 * u);
    }

    private static String spoken(Numeral numeral) {
        String value = numeral.whole() + numeral.hundredths() + " " + numeral.unit();
        String age = numeral.stale()
                .map(words -> ViewText.NOT_GOOD_ANY_MORE.say(words))
                .orElse("");
        return value + age + (numeral.doubt().isEmpty() ? "" : ", " + numeral.doubt());
    }
}
