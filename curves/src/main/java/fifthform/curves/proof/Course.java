package fifthform.curves.proof;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * A curve as it is read: where it was dipped, how steeply it fell first, where it bent, and whether it has been seen long
 * enough.
 *
 * <p>Source of every number that is not called an own choice: the project's crystal model, section 10.
 *
 * @param dipSeconds when the sample went into the ice; empty where nothing falls
 * @param startCelsius what it had then
 * @param steepestKelvinPerMinute steepest fall within 90 s of it, negative
 * @param steepestCelsius temperature there
 * @param bend the bend; empty where there is none (yet)
 * @param isWhole whether the window has been left: {@value #MARGIN_KELVIN} K above the bath
 * @param isPassed whether the slope has fallen off again behind the bend, so that it may be told
 */
public record Course(
        double dipSeconds,
        double startCelsius,
        double steepestKelvinPerMinute,
        double steepestCelsius,
        Optional<Bend> bend,
        boolean isWhole,
        boolean isPassed) {
    /** Nearer to the bath every curve flattens for no other reason than being cold. */
    static final double MARGIN_KELVIN = 8;
    /** Slower than this is not in the ice. */
    static final double WEAKEST_KELVIN_PER_MINUTE = -2;

    private static final double HALF_SECONDS = 15;
    private static final double REFIT_SECONDS = 30;
    private static final double FIRST_SECONDS = 90;
    /** The slope's rise from steepest to bend, over the steepest: less is no bend. */
    private static final double BEND_SHARE = 0.3;

    private static final double PASSED_KELVIN_PER_MINUTE = 0.15;
    private static final double PASSED_SECONDS = 60;
    /** What falls on for this long was dipped; a tip that goes through the air comes back. Own choice. */
    private static final double SUSTAINED_SECONDS = 45;
    /** Noise and steps of a quarter kelvin do not reach it, a falling sample passes it within seconds. Own choice. */
    private static final double WARM_KELVIN = 0.35;
    /** The sample is still warm: chocolate, not the ice bath that is being measured. Own choice. */
    private static final double WARM_CELSIUS = 15;

    /** Reads a curve that cools towards {@code bathCelsius}; empty where nothing was dipped. */
    public static Optional<Course> of(CoolingCurve curve, double bathCelsius) {
        return of(curve, bathCelsius, REFIT_SECONDS);
    }

    /** @param refitSeconds how far to either side the last fit reaches */
    static Optional<Course> of(CoolingCurve curve, double bathCelsius, double refitSeconds) {
        if (curve.size() < LocalFit.FEWEST) return Optional.empty();
        double reach = Math.max(HALF_SECONDS, LocalFit.FEWEST / 2 * curve.intervalSeconds());
        double[] slopes = new double[curve.size()];
        double[] levels = new double[curve.size()];
        for (int i = 0; i < curve.size(); i++) {
            Optional<LocalFit> fit = LocalFit.around(curve, i, HALF_SECONDS, reach);
            slopes[i] = fit.map(LocalFit::kelvinPerMinute).orElse(Double.NaN);
            levels[i] = fit.map(LocalFit::celsius).orElse(Double.NaN);
        }
        OptionalInt first = firstFalling(curve, slopes, levels);
        return first.isEmpty()
                ? Optional.empty()
                : Optional.of(read(curve, bathCelsius, slopes, first.getAsInt(), reach, refitSeconds));
    }

    private static OptionalInt firstFalling(CoolingCurve curve, double[] slopes, double[] levels) {
        for (int i = 0; i < slopes.length; i++) {
            boolean falls = slopes[i] <= WEAKEST_KELVIN_PER_MINUTE && levels[i] > WARM_CELSIUS;
            if (falls && fallsOn(curve, slopes, i)) return OptionalInt.of(i);
        }
        return OptionalInt.empty();
    }

    private static boolean fallsOn(CoolingCurve curve, double[] slopes, int from) {
        for (int i = from; i < slopes.length && curve.seconds(i) <= curve.seconds(from) + SUSTAINED_SECONDS; i++) {
            if (slopes[i] > WEAKEST_KELVIN_PER_MINUTE / 2) return false;
        }
        return true;
    }

    private static Course read(
            CoolingCurve curve, double bathCelsius, double[] slopes, int first, double reach, double refitSeconds) {
        int dip = lastWarm(curve, curve.seconds(first) - reach - 5, curve.seconds(first) + reach);
        double dipSeconds = curve.seconds(dip);
        int cold = firstBelow(curve, first, bathCelsius + MARGIN_KELVIN);
        int i0 = first;
        for (int i = first; i < cold && curve.seconds(i) <= dipSeconds + FIRST_SECONDS + reach; i++)
            if (slopes[i] < slopes[i0]) i0 = i;
        int i1 = i0;
        for (int i = i0; i < cold; i++) if (slopes[i] > slopes[i1]) i1 = i;
        double endSeconds = cold < curve.size() ? curve.seconds(cold) : curve.lastSeconds();
        boolean atEnd = curve.seconds(i1) >= endSeconds - reach - curve.intervalSeconds();
        boolean isBend = !atEnd && slopes[i1] - slopes[i0] >= BEND_SHARE * Math.abs(slopes[i0]);
        Optional<Bend> bend =
                isBend ? Optional.of(refit(curve, slopes, i1, dipSeconds, refitSeconds)) : Optional.empty();
        return new Course(
                dipSeconds,
                curve.celsius(dip),
                slopes[i0],
                curve.celsius(i0),
                bend,
                cold < curve.size(),
                isBend && isPassed(curve, slopes, i1));
    }

    /**
     * The greatest of many noisy slopes is too great and stands a little aside of the bend, so a wider fit says how great
     * it is, and where nearby.
     */
    private static Bend refit(CoolingCurve curve, double[] slopes, int at, double dipSeconds, double refitSeconds) {
        double slope = slopes[at];
        double celsius = curve.celsius(at);
        double seconds = curve.seconds(at);
        double best = Double.NEGATIVE_INFINITY;
        double around = Math.max(0, refitSeconds - HALF_SECONDS);
        int to = curve.indexAt(curve.seconds(at) + around + 0.001);
        for (int i = curve.indexAt(curve.seconds(at) - around); i < to; i++) {
            Optional<LocalFit> wide = LocalFit.around(curve, i, refitSeconds);
            if (wide.isEmpty() || wide.get().kelvinPerMinute() <= best) continue;
            best = wide.get().kelvinPerMinute();
            slope = best;
            celsius = wide.get().celsius();
            seconds = curve.seconds(i);
        }
        return new Bend(slope, celsius, seconds - dipSeconds);
    }

    private static boolean isPassed(CoolingCurve curve, double[] slopes, int at) {
        for (int i = at; i < slopes.length; i++) {
            if (Double.isNaN(slopes[i])) break;
            if (slopes[i] < slopes[at] - PASSED_KELVIN_PER_MINUTE) return true;
            if (curve.seconds(i) > curve.seconds(at) + PASSED_SECONDS) return true;
        }
        return false;
    }

    /** The last that is still as warm as before the fall, but for noise. */
    private static int lastWarm(CoolingCurve curve, double fromSeconds, double toSeconds) {
        int from = curve.indexAt(fromSeconds);
        int to = Math.min(curve.size(), Math.max(from + 1, curve.indexAt(toSeconds)));
        double warmest = Double.NEGATIVE_INFINITY;
        for (int i = from; i < to; i++) warmest = Math.max(warmest, curve.celsius(i));
        int last = from;
        for (int i = from; i < to; i++) if (curve.celsius(i) >= warmest - WARM_KELVIN) last = i;
        return last;
    }

    private static int firstBelow(CoolingCurve curve, int from, double celsius) {
        for (int i = from; i < curve.size(); i++) if (curve.celsius(i) < celsius) return i;
        return curve.size();
    }
}
