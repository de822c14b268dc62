package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.chart.LadderCanvas;
import fifthform.monitor.chart.Palette;
import fifthform.monitor.chart.TraceCanvas;
import fifthform.monitor.chart.Written;
import fifthform.monitor.model.Moments;
import fifthform.monitor.model.WatchPicture.FanPoint;
import fifthform.monitor.model.WatchPicture.Ladder;
import fifthform.monitor.model.WatchPicture.Trace;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;

/** What ladder and trace claim by where they draw it, one pixel a design unit. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class ChartsTest {
    private static final Palette COLOURS = Palette.BRIGHT;

    private static final int LADDER_HIGH = 300;

    /** The middle between the ladder's walls, and its topmost and lowest degree. */
    private static final int MIDDLE = 186;

    private static final int LADDER_TOP = 14;
    private static final int LADDER_BOTTOM = LADDER_HIGH - 14;

    private static final int TRACE_WIDE = 1500;
    private static final int TRACE_HIGH = 200;
    private static final int PANEL_TOP = 30;

    /** A forecast drawn on the scale's end would be read as that temperature. */
    @Test
    void aForecastOffTheScaleIsAnArrowOutOfIt() {
        WritableImage above = ladder(OptionalDouble.of(36), OptionalDouble.of(35), OptionalDouble.of(37));
        assertTrue(isLike(COLOURS.forecast(), above, MIDDLE, LADDER_TOP), "no arrow");
        assertFalse(isLike(COLOURS.forecast(), above, MIDDLE, LADDER_TOP + 20), "something of it is on the scale");
        WritableImage partly = ladder(OptionalDouble.of(34), OptionalDouble.of(33), OptionalDouble.of(36));
        assertTrue(isLike(COLOURS.panel(), partly, MIDDLE, at(34)), "its middle is a circle at its place");
        assertTrue(isLike(COLOURS.forecast(), partly, MIDDLE, LADDER_TOP - 6), "its upper end is no arrow");
    }

    /** Both ends of the range aimed for can be seen from the stove; its hatch is fainter. */
    @Test
    void theRangeAimedForHasALineAtBothEnds() {
        WritableImage image = ladder(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
        for (int end : new int[] {at(31), at(32)}) {
            long seen = IntStream.range(140, 232)
                    .filter(x ->
                            IntStream.rangeClosed(end - 1, end + 1).anyMatch(y -> isLike(COLOURS.quiet(), image, x, y)))
                    .count();
            assertTrue(seen > 80, seen + " of 92 pixels at " + end);
        }
    }

    /** Bent along the panel's edge it would seem to level off. */
    @Test
    void aForecastThatLeavesThePanelIsCutOff() {
        Trace t = Moments.liftNow().trace();
        List<FanPoint> falling = IntStream.rangeClosed(0, 12)
                .mapToObj(i ->
                        new FanPoint(t.now().plus(Duration.ofSeconds(10L * i)), 31 - 2 * i, 30.9 - 2 * i, 31.1 - 2 * i))
                .toList();
        WritableImage image = OnScreen.read(
                () -> trace(with(t, falling, Optional.empty()), TRACE_HIGH).snapshot(null, null));
        // Wider than a gap between two dashes.
        for (int x = TRACE_WIDE - 130; x < TRACE_WIDE - 94; x++)
            for (int y = PANEL_TOP; y < TRACE_HIGH; y++)
                assertFalse(isLike(COLOURS.forecast(), image, x, y), "it runs along the edge at " + x + ", " + y);
    }

    /** What is asked for by looking back is the curve and its limit: nothing may lie over them. */
    @Test
    void lookingBackIsWrittenAboveThePanel() {
        Trace past = with(Moments.liftNow().trace(), List.of(), Optional.of("looking back, 10 min ago"));
        List<Written> written = OnScreen.read(() -> trace(past, TRACE_HIGH).written());
        double at = written.stream()
                .filter(w -> w.words().startsWith("looking back"))
                .mapToDouble(Written::middleY)
                .findFirst()
                .orElseThrow();
        assertTrue(at < PANEL_TOP, "at " + at);
        assertTrue(written.stream().noneMatch(w -> w.words().equals("now")), written::toString);
    }

    /** Figures beside the curve that have no room are left out, the limit last. */
    @Test
    void figuresStayWithinTheirPanel() {
        Trace t = Moments.liftNow().trace();
        List<Written> roomy = OnScreen.read(() -> trace(t, TRACE_HIGH).written());
        for (String figure : List.of("33.8", "31–32", "27.3"))
            assertEquals(2, roomy.stream().filter(w -> w.words().equals(figure)).count(), figure + " in " + roomy);
        for (int high : new int[] {60, 80, 90}) {
            List<Written> small = OnScreen.read(() -> trace(t, high).written());
            for (Written w : small)
                assertTrue(w.middleY() <= high - 12 || w.middleY() < PANEL_TOP, w + " in a panel that ends at " + high);
            assertTrue(small.stream().anyMatch(w -> w.words().equals("33.8")), small::toString);
        }
    }

    private static WritableImage ladder(OptionalDouble peak, OptionalDouble low, OptionalDouble high) {
        Ladder l = Moments.liftNow().ladder();
        Ladder other = new Ladder(
                25, 35, 1, l.bandLowShown(), l.bandHighShown(), "", "", List.of(), l.nowShown(), peak, low, high);
        return OnScreen.read(() -> {
            LadderCanvas canvas = new LadderCanvas();
            canvas.colour(COLOURS);
            canvas.size(480, LADDER_HIGH, 1);
            canvas.show(other, LadderCanvas.Reading.GOOD);
            return canvas.snapshot(null, null);
        });
    }

    /** Where a temperature stands on that ladder, pixels. */
    private static int at(double shown) {
        return (int) Math.round(LADDER_BOTTOM - (shown - 25) / 10 * (LADDER_BOTTOM - LADDER_TOP));
    }

    private static Trace with(Trace t, List<FanPoint> fan, Optional<String> past) {
        return new Trace(
                t.from(),
                past.isPresent() ? t.to() : t.now(),
                past.isPresent() ? t.now() : t.to(),
                t.bottomShown(),
                t.topShown(),
                t.bandLowShown(),
                t.bandHighShown(),
                t.limitShown(),
                t.points(),
                fan,
                t.flags(),
                t.gaps(),
                t.crystals(),
                past);
    }

    private static TraceCanvas trace(Trace trace, int high) {
        TraceCanvas canvas = new TraceCanvas();
        canvas.colour(COLOURS);
        canvas.size(TRACE_WIDE, high, 1);
        canvas.show(trace);
        return canvas;
    }

    private static boolean isLike(Color wanted, WritableImage image, int x, int y) {
        Color there = image.getPixelReader().getColor(x, y);
        return Math.abs(there.getRed() - wanted.getRed()) < 0.12
                && Math.abs(there.getGreen() - wanted.getGreen()) < 0.12
                && Math.abs(there.getBlue() - wanted.getBlue()) < 0.12;
    }
}
