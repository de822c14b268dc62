package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.model.Moments;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.AlarmRow;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.testfx.framework.junit5.ApplicationExtension;

/** Which size and place things have on Watch beside each other, on a laptop of 15.6 inches with 1366 × 768 pixels. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class WatchLayoutTest {
    private static final double PIXELS_A_MILLIMETRE = Math.hypot(1366, 768) / (15.6 * 25.4);
    private static final double UNIT = 768 / 900.0;

    static Stream<WatchPicture> withTheReason() {
        String why = Moments.asked().banner().orElseThrow();
        return Stream.of(Moments.crowded(), Moments.headingOver(), Moments.crystals())
                .map(moment -> moment.answering(why));
    }

    /** Who asks why while an alarm stands still sees from two metres how warm it is: 26 mm, as the design has it. */
    @ParameterizedTest
    @MethodSource("withTheReason")
    void theNumberKeepsItsSizeBesideTheReason(WatchPicture picture) {
        double high = at(picture, screen -> size(screen, picture.numeral().whole()) * Words.CAPITAL);
        assertTrue(high / PIXELS_A_MILLIMETRE >= 26, () -> high / PIXELS_A_MILLIMETRE + " mm");
    }

    @Test
    void alarmsHaveOneSizeOfLettersAndStayClearOfWhatIsAroundThem() {
        WatchPicture picture = Moments.crowded();
        List<AlarmRow> rows = picture.alarms().subList(0, 3);
        Set<Long> sizes = at(
                picture,
                screen -> rows.stream()
                        .map(row -> Math.round(20 * size(screen, row.words())))
                        .collect(Collectors.toSet()));
        assertEquals(1, sizes.size(), sizes::toString);
        double gap = at(
                picture,
                screen -> text(screen, "and 1 more").getLayoutBounds().getMinX()
                        - text(screen, rows.get(2).state()).getLayoutBounds().getMaxX());
        assertTrue(gap >= 20 * UNIT, () -> "only " + gap + " px before what is left out");
        WatchPicture asked = picture.answering("what was asked for");
        double under = at(
                asked,
                screen -> screen.lookup(".accent").getLayoutBounds().getMinY()
                        - rows.stream()
                                .mapToDouble(
                                        row -> text(screen, row.words()).ink().getMaxY())
                                .max()
                                .orElseThrow());
        assertTrue(under > 1, () -> under + " px above the answer");
    }

    /** An alarm that has passed keeps its shape without its fill: it must not look like one that stands. */
    @Test
    void aPassedAlarmIsHollow() {
        List<AlarmRow> rows = Moments.crowded().alarms().subList(0, 3);
        long passed = rows.stream().filter(AlarmRow::hasPassed).count();
        assertTrue(passed > 0 && passed < rows.size(), rows::toString);
        long hollow = at(
                Moments.crowded(),
                screen -> screen.lookupAll(".sign-urgent-passed").stream()
                        .filter(Node::isVisible)
                        .filter(sign -> ((Sign) sign).getFill().equals(Color.TRANSPARENT))
                        .count());
        assertEquals(passed, hollow);
    }

    /** The instruction gives way to what stands beside it only where two lines of that do not help. */
    @Test
    void theInstructionKeepsItsSize() {
        WatchPicture picture = Moments.asked();
        double size = at(picture, screen -> size(screen, picture.band().headline()));
        assertEquals(74 * UNIT, size, 0.1);
    }

    @Test
    void allKeysHaveOneSizeOfWordsAndRoomForAFinger() {
        for (WatchPicture picture : List.of(Moments.liftNow(), Moments.cooling())) {
            Set<Double> sizes = at(
                    picture,
                    screen -> screen.lookupAll(".key").stream()
                            .filter(Node::isVisible)
                            .map(key -> ((Text) key.lookupAll(".words").toArray()[1])
                                    .getFont()
                                    .getSize())
                            .collect(Collectors.toSet()));
            assertEquals(1, sizes.size(), sizes::toString);
            double narrowest = at(
                    picture,
                    screen -> screen.lookupAll(".key").stream()
                            .filter(Node::isVisible)
                            .mapToDouble(key -> key.getLayoutBounds().getWidth())
                            .min()
                            .orElseThrow());
            assertTrue(narrowest / PIXELS_A_MILLIMETRE >= 15, () -> narrowest / PIXELS_A_MILLIMETRE + " mm");
        }
    }

    /** Yellow has too little contrast to the bright base to do without its edge. */
    @Test
    void aTileOutsideItsRangeHasAnEdgeOfInk() {
        List<Rectangle> edges = at(Moments.headingOver(), screen -> edges(screen));
        assertEquals(1, edges.size(), edges::toString);
        assertEquals(3 * UNIT, edges.get(0).getStrokeWidth(), 0.01);
        assertEquals(List.of(), at(Moments.liftNow(), screen -> edges(screen)));
    }

    /** Struck is the number, from its first digit to its last, and not the unit beside it. */
    @Test
    void theStrikeEndsWithTheNumber() {
        WatchPicture picture = Moments.unplugged();
        double[] ends = at(picture, screen -> {
            Bounds strike = screen.lookup(".strike").getLayoutBounds();
            Bounds first = text(screen, picture.numeral().whole()).ink();
            Bounds last = text(screen, picture.numeral().hundredths()).ink();
            return new double[] {strike.getMinX() - first.getMinX(), strike.getMaxX() - last.getMaxX()};
        });
        assertEquals(0, ends[0], 0.5);
        assertEquals(0, ends[1], 0.5);
    }

    /** Edges of tiles; the one around the word of practice stands in the top line. */
    private static List<Rectangle> edges(WatchScreen screen) {
        return screen.lookupAll(".outlined").stream()
                .filter(node -> node.isVisible()
                        && node.localToScene(node.getLayoutBounds()).getMinY() > 60 * UNIT)
                .filter(node -> node.getParent().isVisible())
                .map(Rectangle.class::cast)
                .toList();
    }

    private static double size(WatchScreen screen, String words) {
        return text(screen, words).getFont().getSize();
    }

    private static Words text(WatchScreen screen, String words) {
        return screen.lookupAll(".words").stream()
                .filter(node -> node instanceof Words
                        && node.isVisible()
                        && node.getParent().isVisible())
                .map(Words.class::cast)
                .filter(text -> OnScreen.plain(text.getText()).equals(OnScreen.plain(words)))
                .findFirst()
                .orElseThrow(() -> new AssertionError(words + " is not there"));
    }

    private static <R> R at(WatchPicture picture, Function<WatchScreen, R> use) {
        return OnScreen.at(1366, 768, Theme.BRIGHT, picture, use);
    }
}
