package fifthform.curves.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** How a curve is read, on the reference tube with 2 % of seed: 0.24 K/min at 19.2 °C. */
class CourseTest {
    private static final double TRUE_SLOPE = 0.24;

    /** The project's crystal model, section 10: without the refit +0.07 K/min at 0.05 K noise, +0.1 to +0.24 with steps. */
    @Test
    void theRefitTakesTheUpwardBiasAway() {
        assertEquals(TRUE_SLOPE, meanSlope(1, 0.05, 0.01), 0.04);
        assertEquals(TRUE_SLOPE, meanSlope(1, 0.05, 0.25), 0.06);
        assertEquals(TRUE_SLOPE, meanSlope(4, 0.05, 0.01), 0.06);
    }

    private static double meanSlope(double interval, double noise, double step) {
        return IntStream.range(0, 40)
                .mapToDouble(luck -> course(Samples.read(0.02, interval, noise, step, luck))
                        .bend()
                        .orElseThrow()
                        .kelvinPerMinute())
                .average()
                .orElseThrow();
    }

    @Test
    void theDipIsFoundWhereTheFallBegins() {
        Course course = course(Samples.quiet(0.02));
        assertEquals(Samples.WAIT_SECONDS, course.dipSeconds(), 6);
        assertEquals(31, course.startCelsius(), 0.2);
        assertTrue(course.isWhole());
    }

    /** On its way from bowl to cup the tip goes through the air; that is no dip. */
    @Test
    void aTipThatGoesThroughTheAirIsNotDipped() {
        List<CurvePoint> points = new ArrayList<>();
        for (int t = 0; t < 60; t++) points.add(new CurvePoint(t, t < 30 ? 31.5 : t < 45 ? 27 : 31));
        for (CurvePoint p : Samples.quiet(0.02)) points.add(new CurvePoint(p.seconds() + 60, p.celsius()));
        assertEquals(60 + Samples.WAIT_SECONDS, course(points).dipSeconds(), 6);
    }

    @Test
    void nearTheBathAFlatteningIsNoBend() {
        List<CurvePoint> points = new ArrayList<>();
        for (int t = 0; t < 600; t++) points.add(new CurvePoint(t, 31 * StrictMath.exp(-t / 200.0)));
        Course course = course(points);
        assertEquals(Optional.empty(), course.bend());
        assertTrue(course.isWhole());
        assertFalse(course.isPassed());
    }

    /** Section 10, step 6: not before the slope has fallen by 0.15 K/min, or a minute has passed. */
    @Test
    void aBendIsToldWhenItIsPassed() {
        List<CurvePoint> all = Samples.read(0.02, 1, 0, 0.001, 1);
        double bendAt = Samples.WAIT_SECONDS + 2.98 * 60;
        assertFalse(course(all.subList(0, (int) bendAt + 10)).isPassed());
        Course after = course(all.subList(0, (int) bendAt + 90));
        assertTrue(after.isPassed());
        assertFalse(after.isWhole());
    }

    @Test
    void whatDoesNotFallIsNoCourse() {
        List<CurvePoint> points = new ArrayList<>();
        for (int t = 0; t < 600; t++) points.add(new CurvePoint(t, 31 - t / 60.0));
        assertEquals(Optional.empty(), Course.of(Samples.curve(points), 0));
    }

    private static Course course(List<CurvePoint> points) {
        return Course.of(Samples.curve(points), 0).orElseThrow();
    }
}
