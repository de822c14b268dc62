package fifthform.curves.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.crystal.Fat;
import fifthform.curves.recipe.CelsiusRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Each way of spoiling a good curve is told by its name. */
class FitnessTest {
    private static final Circumstances GOOD = new Circumstances(
            new CelsiusRange(28, 34.3), OptionalDouble.of(0.1), Optional.of(true), Optional.of(CupTraits.REFERENCE));

    @Test
    void goodCurvesAreFit() {
        for (double seed : new double[] {0, 0.001, 0.005, 0.02, 0.06, 0.12})
            assertEquals(List.of(), of(Samples.quiet(seed), GOOD), "seed " + seed);
        assertEquals(List.of(), of(Samples.read(0.02, 4, 0.08, 0.25, 2), GOOD));
    }

    @Test
    void theStartIsLookedAt() {
        List<CurvePoint> cold = new ArrayList<>(Samples.quiet(0.02));
        cold.removeIf(p -> p.seconds() < 80);
        assertEquals(Unfit.START_COLD, first(cold, GOOD));
        Circumstances cooler =
                new Circumstances(new CelsiusRange(25, 30), GOOD.bathCelsius(), GOOD.iceLeft(), GOOD.cup());
        assertEquals(Unfit.START_HOT, first(Samples.quiet(0.02), cooler));
    }

    @Test
    void theBathIsLookedAt() {
        assertEquals(Unfit.WARM_BATH, first(Samples.quiet(0.02), GOOD.withBath(4)));
        assertEquals(Unfit.ICE_GONE, first(Samples.quiet(0.02), GOOD.withIceLeft(false)));
        List<CurvePoint> room = new ArrayList<>();
        for (int t = 0; t < 600; t++) room.add(new CurvePoint(t, 22 + 9 * StrictMath.exp(-t / 900.0)));
        assertEquals(Unfit.NOT_IN_ICE, first(room, GOOD));
    }

    @Test
    void stirringShowsAsUnrestAndAJumpAsAMove() {
        SplittableRandom random = new SplittableRandom(5);
        List<CurvePoint> stirred = Samples.changed(
                Samples.quiet(0.02), p -> new CurvePoint(p.seconds(), p.celsius() + 0.4 * Samples.gauss(random)));
        assertEquals(Unfit.STIRRED, first(stirred, GOOD));
        List<CurvePoint> moved = Samples.changed(
                Samples.quiet(0.02), p -> new CurvePoint(p.seconds(), p.celsius() - (p.seconds() > 150 ? 1.5 : 0)));
        assertEquals(Unfit.MOVED, first(moved, GOOD));
    }

    @Test
    void aCupThatFallsUnlikeItselfIsNoticed() {
        List<CurvePoint> curve = Samples.quiet(0.02);
        assertEquals(Unfit.AT_WALL, first(curve, GOOD.withCup(new CupTraits(4.5, 1))));
        assertEquals(Unfit.TOO_SLOW, first(curve, GOOD.withCup(new CupTraits(1.6, 1))));
    }

    @Test
    void theRecordingIsLookedAt() {
        List<CurvePoint> all = Samples.quiet(0.02);
        assertEquals(Unfit.TOO_SHORT, first(all.subList(0, 250), GOOD));
        assertEquals(Unfit.TOO_FEW, first(Samples.read(0.02, 20, 0.03, 0.01, 1), GOOD));
        List<CurvePoint> gap = new ArrayList<>(all);
        gap.removeIf(p -> p.seconds() > 160 && p.seconds() < 220);
        assertEquals(Unfit.GAP, first(gap, GOOD));
        assertEquals(Optional.of(Unfit.COARSE), Fitness.ofReadings(Samples.read(0.02, 1, 0.03, 1, 1)));
        List<CurvePoint> back = new ArrayList<>(all);
        back.add(new CurvePoint(100, 9));
        assertEquals(Optional.of(Unfit.TIMES_GO_BACK), Fitness.ofReadings(back));
    }

    /** The line of the model and the rings of a cup with a late axis pass as well. */
    @Test
    void aCupWithALateAxisIsFit() {
        CupTraits late = new CupTraits(4, 1.25);
        List<CurvePoint> points = Samples.read(ReferenceTube.of(Fat.DARK, late, 0), 0.02, 1, 0.03, 0.01, 1);
        assertEquals(List.of(), of(points, GOOD.withCup(late)));
    }

    private static Unfit first(List<CurvePoint> points, Circumstances around) {
        return of(points, around).get(0);
    }

    private static List<Unfit> of(List<CurvePoint> points, Circumstances around) {
        return Fitness.of(Samples.curve(points), around);
    }
}
