package fifthform.curves.proof;

import fifthform.curves.crystal.Fat;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What this chocolate in this cup would show with more and more seed: the line of slopes and bend temperatures that a
 * sample is held against, and the edges of the classes on it.
 *
 * <p>No band of a published tube was read; the edges are seeds of our own model (its section 10), run with this
 * chocolate's fat share and milk fat and this cup's time constant.
 *
 * @param marks from no seed to {@value #MOST_SEED} of the fat
 */
public record TemperScale(List<Mark> marks) {
    static final double NONE_BELOW = 0.001;
    static final double UNDER_BELOW = 0.005;
    static final double OVER_ABOVE = 0.06;
    static final double MOST_SEED = 0.2;

    private static final double[] SEEDS = {
        0,
        0.0003,
        0.0006,
        NONE_BELOW,
        0.0015,
        0.0025,
        0.0035,
        UNDER_BELOW,
        0.0075,
        0.012,
        0.02,
        0.035,
        OVER_ABOVE,
        0.09,
        0.13,
        MOST_SEED
    };
    /** Between two marks the line is taken as straight, in this many pieces. */
    private static final int PIECES = 8;
    /** Of the excess' range: good to a hundredth. */
    private static final int HALVINGS = 6;

    /**
     * One seed and its bend.
     *
     * @param seedFraction of the fat
     * @param kelvinPerMinute slope at the bend
     * @param celsius temperature there
     */
    public record Mark(double seedFraction, double kelvinPerMinute, double celsius) {}

    public TemperScale {
        marks = List.copyOf(marks);
        if (marks.size() < 2) throw new IllegalArgumentException("marks must be two or more, were " + marks);
    }

    /** Runs the model; takes some tenths of a second. */
    public static TemperScale of(Fat fat, CupTraits cup, double bathCelsius) {
        Objects.requireNonNull(fat, "fat");
        ReferenceTube tube = ReferenceTube.of(fat, cup, Math.max(0, Math.min(5, bathCelsius)));
        List<Mark> marks = new ArrayList<>();
        for (double seed : SEEDS) {
            CoolingCurve curve = tube.curve(seed);
            Optional<Bend> bend = Course.of(curve, tube.bathCelsius()).flatMap(Course::bend);
            bend.ifPresent(b -> marks.add(new Mark(seed, b.kelvinPerMinute(), b.celsius())));
        }
        return new TemperScale(marks);
    }

    /**
     * The line for a cup that was calibrated. How far the axis stays behind shows in the shape of the first minute, but
     * weakly; without seed the bend lies the warmer the later the axis is, but it also differs from butter to butter. So the
     * mean of what both say is taken.
     *
     * @param cup as the line of the melted chocolate has it
     * @param noTemper where that chocolate bent
     */
    public static TemperScale of(Fat fat, CupTraits cup, Bend noTemper, double bathCelsius) {
        double low = 1;
        double high = CupTraits.MOST_EXCESS;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            ReferenceTube tube = ReferenceTube.of(fat, new CupTraits(cup.tauMinutes(), middle), 0);
            Optional<Bend> bend = Course.of(tube.curve(0), 0).flatMap(Course::bend);
            if (bend.filter(b -> b.celsius() > noTemper.celsius()).isPresent()) high = middle;
            else low = middle;
        }
        double excess = (cup.axisExcess() + (low + high) / 2) / 2;
        return of(fat, new CupTraits(cup.tauMinutes(), excess), bathCelsius).withNoTemper(noTemper);
    }

    /**
     * The same line with its seedless end where this cup and chocolate really showed it, fading out towards the edge of
     * "in temper": II and IV, which bend a curve without seed, differ from butter to butter.
     */
    TemperScale withNoTemper(Bend measured) {
        Mark first = marks.get(0);
        if (first.seedFraction() > 0) return this;
        double slope = measured.kelvinPerMinute() - first.kelvinPerMinute();
        double celsius = measured.celsius() - first.celsius();
        List<Mark> moved = new ArrayList<>();
        for (Mark mark : marks) {
            double share = Math.max(0, 1 - mark.seedFraction() / UNDER_BELOW);
            moved.add(new Mark(
                    mark.seedFraction(), mark.kelvinPerMinute() + share * slope, mark.celsius() + share * celsius));
        }
        return new TemperScale(moved);
    }

    /** The mark nearest to this seed. */
    public Mark at(double seedFraction) {
        Mark best = marks.get(0);
        for (Mark mark : marks) {
            boolean nearer =
                    Math.abs(mark.seedFraction() - seedFraction) < Math.abs(best.seedFraction() - seedFraction);
            if (nearer) best = mark;
        }
        return best;
    }

    /** The seedless end. */
    public Mark noTemper() {
        return marks.get(0);
    }

    /**
     * How far a bend lies from each class' part of the line, in units of what separates such bends by chance.
     *
     * @param slopeKelvinPerMinute one such unit of slope
     * @param bendKelvin one such unit of temperature
     */
    Map<TemperClass, Double> distances(Bend bend, double slopeKelvinPerMinute, double bendKelvin) {
        Map<TemperClass, Double> least = new EnumMap<>(TemperClass.class);
        for (int i = 1; i < marks.size(); i++) {
            Mark a = marks.get(i - 1);
            Mark b = marks.get(i);
            TemperClass part = TemperClass.ofSeed((a.seedFraction() + b.seedFraction()) / 2);
            for (int piece = 0; piece <= PIECES; piece++) {
                double w = (double) piece / PIECES;
                double slope = a.kelvinPerMinute() + w * (b.kelvinPerMinute() - a.kelvinPerMinute());
                double celsius = a.celsius() + w * (b.celsius() - a.celsius());
                double off = (bend.celsius() - celsius) / bendKelvin;
                // Beyond the ends of the line there is nothing else to be mistaken for.
                if (i == 1 && piece == 0 && off < 0) off = 0;
                if (i == marks.size() - 1 && piece == PIECES && off > 0) off = 0;
                double tilt = (bend.kelvinPerMinute() - slope) / slopeKelvinPerMinute;
                least.merge(part, Math.sqrt(off * off + tilt * tilt), Math::min);
            }
        }
        return least;
    }
}
