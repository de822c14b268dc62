package fifthform.curves.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Whether a curve may be judged at all. The limits are our own choice, tuned on simulated tubes, where no source is named.
 */
public final class Fitness {
    /** A probe may be off by a kelvin and the water be half a kelvin warm; from 2 °C on a bend moves by 0.4 K. */
    static final double WARMEST_BATH_CELSIUS = 2.5;

    private static final double SLOWEST_SECONDS = 10;
    private static final int FEWEST = 20;
    private static final double LONGEST_GAP_SECONDS = 25;
    private static final double COARSEST_KELVIN = 0.6;
    /** Middle scatter about the local parabola; that of fit simulated samples is below 0.12 K, stirred ones begin at 0.17. */
    private static final double UNREST_KELVIN = 0.15;
    /** Greatest scatter; noise and steps of a quarter kelvin do not reach it. */
    private static final double JUMP_KELVIN = 0.145;
    /** With a quiet probe a smaller one shows as well. */
    private static final double SMALL_JUMP_KELVIN = 0.1;

    private static final double JUMP_TIMES_NOISE = 4.5;
    private static final double HALF_SECONDS = 15;
    /**
     * The steepest fall tells a time constant, (T − Tb)/|T'|. Over that of the cup it is 0.96 to 1.64 in fit simulated
     * samples, whatever their seed, and 0.51 to 0.94 with the tip at the wall.
     */
    private static final double FASTEST = 0.94;

    private static final double SLOWEST = 2.0;

    private Fitness() {}

    /** What is against these raw readings themselves, before they make a curve. */
    public static Optional<Unfit> ofReadings(List<CurvePoint> readings) {
        for (int i = 1; i < readings.size(); i++)
            if (readings.get(i).seconds() < readings.get(i - 1).seconds()) return Optional.of(Unfit.TIMES_GO_BACK);
        if (readings.size() < FEWEST) return Optional.of(Unfit.TOO_FEW);
        if (stepKelvin(readings) > COARSEST_KELVIN) return Optional.of(Unfit.COARSE);
        return Optional.empty();
    }

    /** Width of the last digit as the numbers themselves show it, K: the least difference between two that differ. */
    public static double stepKelvin(List<CurvePoint> readings) {
        double[] sorted =
                readings.stream().mapToDouble(CurvePoint::celsius).sorted().toArray();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < sorted.length; i++) {
            double apart = sorted[i] - sorted[i - 1];
            if (apart > 1e-6) least = Math.min(least, apart);
        }
        return Double.isInfinite(least) ? 0 : Math.min(10, least);
    }

    /** Everything against a curve that has ended, the weightiest first; none where it may be judged. */
    public static List<Unfit> of(CoolingCurve curve, Circumstances around) {
        List<Unfit> against = new ArrayList<>();
        if (curve.intervalSeconds() > SLOWEST_SECONDS || curve.size() < FEWEST) against.add(Unfit.TOO_FEW);
        if (curve.stepKelvin() > COARSEST_KELVIN) against.add(Unfit.COARSE);
        if (around.bathCelsius().isPresent() && around.bathCelsius().getAsDouble() > WARMEST_BATH_CELSIUS)
            against.add(Unfit.WARM_BATH);
        if (around.iceLeft().isPresent() && !around.iceLeft().get()) against.add(Unfit.ICE_GONE);
        if (!against.isEmpty()) return against;
        Optional<Course> course = Course.of(curve, around.bathOrIceCelsius());
        if (course.isEmpty())
            return List.of(unrest(curve, curve.seconds(0))
                    .filter(u -> u == Unfit.STIRRED)
                    .orElse(Unfit.NOT_IN_ICE));
        ofCourse(curve, course.get(), around, against);
        return against;
    }

    private static void ofCourse(CoolingCurve curve, Course course, Circumstances around, List<Unfit> against) {
        if (course.startCelsius() < around.start().lowCelsius()) against.add(Unfit.START_COLD);
        if (course.startCelsius() > around.start().highCelsius()) against.add(Unfit.START_HOT);
        if (hasGap(curve, course)) against.add(Unfit.GAP);
        unrest(curve, course.dipSeconds()).ifPresent(against::add);
        around.cup()
                .flatMap(cup -> pace(course, cup, around.bathOrIceCelsius()))
                .ifPresent(against::add);
        if (!course.isWhole()) against.add(Unfit.TOO_SHORT);
    }

    private static boolean hasGap(CoolingCurve curve, Course course) {
        for (int i = Math.max(1, curve.indexAt(course.dipSeconds())); i < curve.size(); i++)
            if (curve.seconds(i) - curve.seconds(i - 1) > LONGEST_GAP_SECONDS) return true;
        return false;
    }

    /** Scatter everywhere is stirring; scatter in one place is a jump. The corner of the dip itself is left out. */
    private static Optional<Unfit> unrest(CoolingCurve curve, double fromSeconds) {
        double[] scatters = new double[curve.size()];
        int count = 0;
        int readings = LocalFit.FEWEST;
        double reach = Math.max(HALF_SECONDS, LocalFit.FEWEST / 2 * curve.intervalSeconds());
        for (int i = curve.indexAt(fromSeconds + 2 * reach); i < curve.size(); i++) {
            Optional<LocalFit> fit = LocalFit.around(curve, i, HALF_SECONDS);
            if (fit.isEmpty()) continue;
            scatters[count++] = fit.get().scatterKelvin();
            readings = fit.get().readings();
        }
        if (count == 0) return Optional.empty();
        double[] sorted = Arrays.copyOf(scatters, count);
        Arrays.sort(sorted);
        double middle = sorted[count / 2];
        double most = sorted[count - 1];
        if (middle > UNREST_KELVIN) return Optional.of(Unfit.STIRRED);
        // The scatter of few readings scatters itself.
        double limit = JUMP_KELVIN * (1 + 1.2 / Math.sqrt(readings));
        boolean jumps = most > limit || most > SMALL_JUMP_KELVIN && most > JUMP_TIMES_NOISE * middle;
        return jumps ? Optional.of(Unfit.MOVED) : Optional.empty();
    }

    /** Whether it falls as this cup does. */
    private static Optional<Unfit> pace(Course course, CupTraits cup, double bathCelsius) {
        double minutes = (course.steepestCelsius() - bathCelsius) / -course.steepestKelvinPerMinute();
        double ratio = minutes / cup.tauMinutes();
        if (ratio < FASTEST) return Optional.of(Unfit.AT_WALL);
        return ratio > SLOWEST ? Optional.of(Unfit.TOO_SLOW) : Optional.empty();
    }
}
