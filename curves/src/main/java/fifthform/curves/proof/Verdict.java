package fifthform.curves.proof;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What a fit curve says.
 *
 * @param temper the class
 * @param reason why this one
 * @param bend where it bent; empty where it did not
 * @param provisional whether it rests on a model instead of own good curves
 */
public record Verdict(TemperClass temper, Reason reason, Optional<Bend> bend, boolean provisional) {
    /** Why a class was given. */
    public enum Reason {
        /** The curve falls without a bend: hardly any crystal grew before the sample was cold. */
        NO_BEND,
        /** Slope and bend temperature lie where the model has them for this class. */
        NEAREST_ON_LINE,
        /** Slope and bend temperature lie on the edge between two classes. */
        BETWEEN_CLASSES,
        /** Slope and bend temperature do not belong together. */
        DISAGREE,
        /** It bends as the good batches did. */
        LIKE_GOOD,
        /** It bends colder than the good batches: less seed. */
        COLDER_THAN_GOOD,
        /** It bends where your chocolate bends without any seed. */
        LIKE_NO_TEMPER,
        /** It bends warmer than the good batches, with a lower slope: more seed. */
        WARMER_AND_FLATTER,
        /** It bends unlike the good batches, but neither as less nor as more seed does. */
        UNLIKE_GOOD
    }

    /** Further from the line than this, in units of chance, slope and bend do not belong to one sample. Own choice. */
    private static final double FARTHEST = 3.0;
    /** Two classes whose squared distances differ by less are not told apart. Own choice, tuned on simulated tubes. */
    private static final double TOO_CLOSE = 0.12;
    /** Nearer than this share of the way from the seedless bend to the good one, it is taken for seedless. Own choice. */
    private static final double NONE_SHARE = 0.2;

    public Verdict {
        Objects.requireNonNull(temper, "temper");
        Objects.requireNonNull(reason, "reason");
        Objects.requireNonNull(bend, "bend");
    }

    /** Judges a whole and fit curve. */
    public static Verdict of(Course course, Measure measure) {
        boolean provisional = measure.isProvisional();
        if (course.bend().isEmpty())
            return new Verdict(TemperClass.NO_TEMPER, Reason.NO_BEND, Optional.empty(), provisional);
        Bend bend = course.bend().get();
        return measure.good().map(good -> against(bend, good, measure.scale())).orElseGet(() -> against(bend, measure));
    }

    /** Source: the project's crystal model, section 10, step 3 of the calibration; the share is ours. */
    private static Verdict against(Bend bend, GoodCurves good, TemperScale scale) {
        double warmer = bend.celsius() - good.bendCelsius();
        double steeper = bend.kelvinPerMinute() - good.slopeKelvinPerMinute();
        boolean bendFits = Math.abs(warmer) <= good.bendReach();
        if (bendFits && Math.abs(steeper) <= good.slopeReach())
            return judged(TemperClass.IN_TEMPER, Reason.LIKE_GOOD, bend, false);
        if (warmer < -good.bendReach()) {
            double none = scale.noTemper().celsius();
            boolean seedless = bend.celsius() < none + NONE_SHARE * Math.max(0, good.bendCelsius() - none);
            return seedless
                    ? judged(TemperClass.NO_TEMPER, Reason.LIKE_NO_TEMPER, bend, false)
                    : judged(TemperClass.UNDER, Reason.COLDER_THAN_GOOD, bend, false);
        }
        if (warmer > good.bendReach() && steeper < 0)
            return judged(TemperClass.OVER, Reason.WARMER_AND_FLATTER, bend, false);
        return judged(TemperClass.UNCLEAR, Reason.UNLIKE_GOOD, bend, false);
    }

    private static Verdict against(Bend bend, Measure measure) {
        Measure.Basis basis = measure.basis();
        Map<TemperClass, Double> distances =
                new EnumMap<>(measure.scale().distances(bend, basis.slopeKelvinPerMinute, basis.bendKelvin));
        TemperClass nearest = nearest(distances);
        double near = distances.remove(nearest);
        if (near > FARTHEST) return judged(TemperClass.UNCLEAR, Reason.DISAGREE, bend, true);
        double next = distances.get(nearest(distances));
        boolean close = next * next - near * near < TOO_CLOSE;
        return close
                ? judged(TemperClass.UNCLEAR, Reason.BETWEEN_CLASSES, bend, true)
                : judged(nearest, Reason.NEAREST_ON_LINE, bend, true);
    }

    private static TemperClass nearest(Map<TemperClass, Double> distances) {
        TemperClass best = distances.keySet().iterator().next();
        for (Map.Entry<TemperClass, Double> entry : distances.entrySet())
            if (entry.getValue() < distances.get(best)) best = entry.getKey();
        return best;
    }

    private static Verdict judged(TemperClass temper, Reason reason, Bend bend, boolean provisional) {
        return new Verdict(temper, reason, Optional.of(bend), provisional);
    }
}
