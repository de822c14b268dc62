package fifthform.monitor.proofs;

import fifthform.curves.check.Require;
import fifthform.curves.crystal.Fat;
import fifthform.curves.proof.Bend;
import fifthform.curves.proof.CupTraits;
import fifthform.curves.proof.GoodCurves;
import fifthform.curves.proof.Measure;
import fifthform.curves.proof.TauFit;
import fifthform.curves.proof.TemperScale;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known of one chocolate in one cup.
 *
 * @param chocolate the recipe's id
 * @param cup the maker's name for the cup, as in files: lower-case letters, digits, hyphens
 * @param grams of a sample, where told
 * @param runs coolings of melted chocolate, oldest first
 * @param curves judged samples, oldest first
 */
public record KeptCup(String chocolate, String cup, OptionalDouble grams, List<CupRun> runs, List<KeptCurve> curves) {
    /** Two level teaspoons. Source: the project's crystal model, section 10. */
    public static final double USUAL_GRAMS = 12;
    /** Two runs that differ by more were not held alike. Source: as above. */
    public static final double MOST_DIFFERENCE = 0.10;

    public KeptCup {
        if (!isId(chocolate)) throw new IllegalArgumentException("chocolate must be an id, was " + chocolate);
        if (!isId(cup)) throw new IllegalArgumentException("cup must be an id, was " + cup);
        Require.within(grams, 4, 30, "grams");
        runs = List.copyOf(runs);
        curves = List.copyOf(curves);
    }

    /** A cup of which nothing is known. */
    public static KeptCup named(String chocolate, String cup) {
        return new KeptCup(chocolate, cup, OptionalDouble.empty(), List.of(), List.of());
    }

    public static boolean isId(String id) {
        return id.matches("[a-z0-9][a-z0-9-]{0,59}");
    }

    public KeptCup withGrams(double sample) {
        return new KeptCup(chocolate, cup, OptionalDouble.of(sample), runs, curves);
    }

    public KeptCup with(CupRun run) {
        List<CupRun> more = new ArrayList<>(runs);
        more.add(run);
        return new KeptCup(chocolate, cup, grams, more, curves);
    }

    public KeptCup with(KeptCurve curve) {
        List<KeptCurve> more = new ArrayList<>(curves);
        more.add(curve);
        return new KeptCup(chocolate, cup, grams, runs, more);
    }

    /** With this mark on the curve of that recording. */
    public KeptCup marked(String proof, KeptCurve.Mark mark) {
        List<KeptCurve> marked = curves.stream()
                .map(c -> c.proof().equals(proof) ? c.marked(mark) : c)
                .toList();
        return new KeptCup(chocolate, cup, grams, runs, marked);
    }

    /** How far the last two runs are apart, as a share of their mean; empty where there are fewer. */
    public OptionalDouble difference() {
        if (runs.size() < 2) return OptionalDouble.empty();
        double one = runs.get(runs.size() - 2).tauMinutes();
        double other = runs.get(runs.size() - 1).tauMinutes();
        return OptionalDouble.of(2 * Math.abs(one - other) / (one + other));
    }

    /** The mean of the last two runs where they agree. */
    public Optional<CupTraits> traits() {
        if (difference().isEmpty() || difference().getAsDouble() > MOST_DIFFERENCE) return Optional.empty();
        CupRun one = runs.get(runs.size() - 2);
        CupRun other = runs.get(runs.size() - 1);
        return new TauFit(
                        (one.tauMinutes() + other.tauMinutes()) / 2, (one.axisExcess() + other.axisExcess()) / 2, 0, 0)
                .cup();
    }

    /** Curves that were marked good and have a bend. */
    public List<Bend> goodBends() {
        return curves.stream()
                .filter(c -> c.mark() == KeptCurve.Mark.GOOD)
                .flatMap(c -> c.bend().stream())
                .toList();
    }

    /** What a sample of this fat is judged by. */
    public Measure measure(Fat fat, double bathCelsius) {
        Objects.requireNonNull(fat, "fat");
        Optional<CupTraits> traits = traits();
        CupTraits cools = traits.orElseGet(() -> CupTraits.ofMass(grams.orElse(USUAL_GRAMS)));
        Optional<Bend> noTemper = runs.stream().flatMap(r -> r.bend().stream()).reduce((a, b) -> b);
        TemperScale scale = traits.isPresent() && noTemper.isPresent()
                ? TemperScale.of(fat, cools, noTemper.get(), bathCelsius)
                : TemperScale.of(fat, cools, bathCelsius);
        List<Bend> good = goodBends();
        return new Measure(
                scale,
                traits.isPresent() ? Measure.Basis.CALIBRATED : Measure.Basis.FROM_MASS,
                good.size() >= GoodCurves.ENOUGH ? Optional.of(GoodCurves.of(good)) : Optional.empty());
    }
}
