package fifthform.curves.proof;

import fifthform.curves.crystal.Fat;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;

/** Curves of the reference tube as a probe would tell them: twenty seconds before the dip, noise, steps, an interval. */
final class Samples {
    static final double WAIT_SECONDS = 20;

    private Samples() {}

    static List<CurvePoint> read(
            double seed, double intervalSeconds, double noiseKelvin, double stepKelvin, long luck) {
        return read(
                ReferenceTube.of(Fat.DARK, CupTraits.REFERENCE, 0),
                seed,
                intervalSeconds,
                noiseKelvin,
                stepKelvin,
                luck);
    }

    static List<CurvePoint> read(
            ReferenceTube tube, double seed, double intervalSeconds, double noiseKelvin, double stepKelvin, long luck) {
        SplittableRandom random = new SplittableRandom(luck);
        CoolingCurve curve = tube.curve(seed);
        List<CurvePoint> points = new ArrayList<>();
        for (double t = 0; t < WAIT_SECONDS + curve.lastSeconds(); t += intervalSeconds) {
            double celsius = at(curve, t - WAIT_SECONDS) + noiseKelvin * gauss(random);
            points.add(new CurvePoint(t, Math.round(celsius / stepKelvin) * stepKelvin));
        }
        return points;
    }

    static List<CurvePoint> quiet(double seed) {
        return read(seed, 1, 0.03, 0.01, 1);
    }

    /** Each reading changed. */
    static List<CurvePoint> changed(List<CurvePoint> points, UnaryOperator<CurvePoint> change) {
        return points.stream().map(change).toList();
    }

    static CoolingCurve curve(List<CurvePoint> points) {
        return CoolingCurve.of(points, Fitness.stepKelvin(points));
    }

    private static double at(CoolingCurve curve, double seconds) {
        if (seconds <= 0) return curve.celsius(0);
        int i = Math.min(curve.size() - 2, (int) seconds);
        return curve.celsius(i) + (seconds - i) * (curve.celsius(i + 1) - curve.celsius(i));
    }

    /** Sum of twelve even deviates: near enough to normal for noise. */
    static double gauss(SplittableRandom random) {
        double sum = -6;
        for (int i = 0; i < 12; i++) sum += random.nextDouble();
        return sum;
    }
}
