package fifthform.simulator.proofs;

import fifthform.curves.crystal.Fat;
import fifthform.curves.proof.Bend;
import fifthform.curves.proof.Circumstances;
import fifthform.curves.proof.CoolingCurve;
import fifthform.curves.proof.Course;
import fifthform.curves.proof.CupTraits;
import fifthform.curves.proof.CurvePoint;
import fifthform.curves.proof.Fitness;
import fifthform.curves.proof.GoodCurves;
import fifthform.curves.proof.Measure;
import fifthform.curves.proof.TauFit;
import fifthform.curves.proof.TemperScale;
import fifthform.curves.proof.Unfit;
import fifthform.curves.proof.Verdict;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.simulator.maker.StandardNormal;
import fifthform.simulator.tube.FatMake;
import fifthform.simulator.tube.TubeCup;
import fifthform.simulator.tube.TubeReading;
import fifthform.simulator.tube.TubeSample;
import fifthform.simulator.tube.TubeTrial;
import fifthform.simulator.tube.TubeTrouble;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * A maker with one chocolate and one cup who calibrates it by two runs of melted chocolate, proves samples, and later
 * marks some curves as good. Mutable, for one thread.
 */
public final class ProofKitchen {
    private static final CelsiusRange START = new CelsiusRange(28, 34.3);
    private static final int GOOD_CURVES = 4;

    private final SplittableRandom random;
    private final TubeCup cup;
    private final FatMake fat;
    private final double fatFraction;
    private CupTraits traits;
    private Measure provisional;
    private Optional<Measure> own = Optional.empty();

    /** A kitchen as chance has it; dark in half of them, else with milk fat. */
    public ProofKitchen(long seed) {
        random = new SplittableRandom(seed);
        cup = TubeCup.drawn(random);
        double milkFat = random.nextDouble() < 0.5 ? 0 : 0.2 * random.nextDouble();
        fat = FatMake.drawn(milkFat, random);
        fatFraction = 0.29 + 0.12 * random.nextDouble();
        calibrate();
    }

    private void calibrate() {
        List<TauFit> fits = new ArrayList<>();
        List<Bend> bends = new ArrayList<>();
        while (fits.size() < 2) {
            TubeSample melted = new TubeSample(ofThisBowl(), fatFraction, 0, grams(), 33 + 2 * random.nextDouble());
            TubeTrial drawn = TubeTrial.drawn(cup, fat, fatFraction, 0, TubeTrouble.NONE, random);
            TubeTrial.Ran ran = new TubeTrial(
                            drawn.cup(), melted, drawn.adapter(), drawn.iceCelsius(), TubeTrouble.NONE)
                    .run(random);
            CoolingCurve curve = curve(ran.readings());
            Course course = Course.of(curve, ran.bathCelsius()).orElseThrow();
            fits.add(TauFit.of(curve, course, ran.bathCelsius()).orElseThrow());
            course.bend().ifPresent(bends::add);
        }
        double tau = (fits.get(0).tauMinutes() + fits.get(1).tauMinutes()) / 2;
        double excess = (fits.get(0).axisExcess() + fits.get(1).axisExcess()) / 2;
        traits = new TauFit(tau, excess, 0, 0).cup().orElseThrow();
        Fat known = new Fat(fat.milkFatFraction(), fatFraction);
        TemperScale scale = bends.isEmpty()
                ? TemperScale.of(known, traits, 0)
                : TemperScale.of(known, traits, bends.get(bends.size() - 1), 0);
        provisional = new Measure(scale, Measure.Basis.CALIBRATED, Optional.empty());
    }

    /** Keeps four curves of good bowls: 1.2 to 3 % of seed. */
    public void learn() {
        List<Bend> bends = new ArrayList<>();
        for (int tries = 0; bends.size() < GOOD_CURVES && tries < 20; tries++) {
            double seed = 0.012 * StrictMath.exp(random.nextDouble() * StrictMath.log(2.5));
            Proved proved = prove(seed, TubeTrouble.NONE, provisional);
            if (proved.unfit().isEmpty())
                proved.verdict().flatMap(Verdict::bend).ifPresent(bends::add);
        }
        own = Optional.of(
                new Measure(provisional.scale(), Measure.Basis.CALIBRATED, Optional.of(GoodCurves.of(bends))));
    }

    /**
     * What came of one sample.
     *
     * @param unfit why it was not judged; empty where it was
     * @param verdict the answer; empty where there is none
     * @param trueSlope slope at the bend of the tip itself, once a second without noise, K/min; NaN without a bend
     */
    public record Proved(List<Unfit> unfit, Optional<Verdict> verdict, double trueSlope) {
        public Proved {
            unfit = List.copyOf(unfit);
        }
    }

    /** Proves a sample with this much seed, by the model's line. */
    public Proved proveProvisionally(double seedFraction, TubeTrouble trouble) {
        return prove(seedFraction, trouble, provisional);
    }

    /** By own good curves; {@link #learn} comes first. */
    public Proved proveByOwn(double seedFraction, TubeTrouble trouble) {
        return prove(seedFraction, trouble, own.orElseThrow());
    }

    private Proved prove(double seedFraction, TubeTrouble trouble, Measure measure) {
        TubeTrial trial = TubeTrial.drawn(cup, ofThisBowl(), fatFraction, seedFraction, trouble, random);
        TubeTrial.Ran ran = trial.run(random);
        double bathReads = ran.bathCelsius() + 0.2 * StandardNormal.draw(random);
        List<CurvePoint> readings = points(ran.readings());
        Optional<Unfit> spoilt = Fitness.ofReadings(readings);
        if (spoilt.isPresent()) return new Proved(List.of(spoilt.get()), Optional.empty(), Double.NaN);
        CoolingCurve curve = curve(ran.readings());
        Circumstances around = new Circumstances(
                START, java.util.OptionalDouble.of(bathReads), Optional.of(ran.iceLeft()), Optional.of(traits));
        List<Unfit> unfit = Fitness.of(curve, around);
        if (!unfit.isEmpty()) return new Proved(unfit, Optional.empty(), Double.NaN);
        Course course = Course.of(curve, around.bathOrIceCelsius()).orElseThrow();
        double slope = Course.of(CoolingCurve.of(points(ran.truth()), 0), ran.bathCelsius())
                .flatMap(Course::bend)
                .map(Bend::kelvinPerMinute)
                .orElse(Double.NaN);
        return new Proved(List.of(), Optional.of(Verdict.of(course, measure)), slope);
    }

    /** The same butter in another bowl has seeds of another size. */
    private FatMake ofThisBowl() {
        double other = fat.seedsPerMass() * StrictMath.exp(0.15 * StandardNormal.draw(random));
        return fat.withSeedsPerMass(Math.max(0.01, Math.min(0.2, other)));
    }

    private double grams() {
        return cup.usualGrams() * (1 + 0.03 * StandardNormal.draw(random));
    }

    private static CoolingCurve curve(List<TubeReading> readings) {
        List<CurvePoint> points = points(readings);
        return CoolingCurve.of(points, Fitness.stepKelvin(points));
    }

    private static List<CurvePoint> points(List<TubeReading> readings) {
        return readings.stream()
                .map(r -> new CurvePoint(Math.max(0, r.seconds()), Math.max(-20, Math.min(150, r.celsius()))))
                .toList();
    }
}
