package fifthform.simulator.bench;

import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.BarLook.Sureness;
import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Outcome;
import fifthform.curves.learning.TriedBatch;
import fifthform.simulator.maker.Luck;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A maker whose harm limit is known, and what looks at the bars of so many batches say. Doses come from simulated batches
 * ({@code learning/doses.csv}). What the heat does and when marks show is not what the learning supposes: a normal harm
 * curve and not a logistic one, marks after a log-normal time, lapses of other sizes, looks left out. All invented.
 *
 * @param published the published limit, °C
 * @param limit the dose at which half of those that heat can harm are harmed, °C
 * @param batches those that count, oldest first
 */
record KnownHarm(double published, double limit, List<TriedBatch> batches) {
    static final double PUBLISHED_CELSIUS = 33.8;

    /** Own limits lie evenly so far below and above the published one, K. */
    private static final double BELOW_KELVIN = 1.2;

    private static final double ABOVE_KELVIN = 1.5;

    private static final List<Double> ADVISED = doses("home");
    private static final List<Double> OWN_WAY = doses("careless");

    /** Where a maker's doses come from. */
    enum Doses {
        /** Some batches by the program's advice, some not, each maker with a share of its own. */
        MIXED,
        /** All as the careless fleet has them. */
        CARELESS,
        /** Normal about 0.6 K below the published limit, spread 0.9 K: what is left where nobody knows the makers. */
        PLAIN
    }

    /** The maker of a number: same number, same maker, whose first batches are the same for any count. */
    static KnownHarm maker(long number, int batches, Doses doses) {
        Luck luck = new Luck(61).branch(number);
        double limit = PUBLISHED_CELSIUS
                - BELOW_KELVIN
                + (BELOW_KELVIN + ABOVE_KELVIN) * luck.branch(0).uniform();
        return of(limit, luck, batches, doses);
    }

    /** The same with a limit that is given. */
    static KnownHarm maker(long number, double limitCelsius, int batches, Doses doses) {
        return of(limitCelsius, new Luck(62).branch(number), batches, doses);
    }

    private static KnownHarm of(double limit, Luck luck, int batches, Doses doses) {
        Traits traits = new Traits(
                limit,
                0.1 + 0.5 * luck.branch(1).uniform(),
                0.15 * luck.branch(2).uniform(),
                0.08 * luck.branch(3).uniform(),
                0.1 + 0.8 * luck.branch(4).uniform());
        List<TriedBatch> tried = new ArrayList<>();
        for (long day = 0; tried.size() < batches; day++)
            traits.batch(luck.branch(100 + day), doses).ifPresent(tried::add);
        return new KnownHarm(PUBLISHED_CELSIUS, limit, tried);
    }

    /** What differs from maker to maker. */
    private record Traits(double limit, double spread, double lostAnyhow, double keptAnyhow, double ownWayShare) {
        Optional<TriedBatch> batch(Luck luck, Doses doses) {
            double dose = dose(luck.branch(0), doses);
            double which = luck.branch(1).uniform();
            boolean heat = dose + spread * luck.branch(2).normal() > limit;
            boolean lost = which < lostAnyhow || (heat && which < 1 - keptAnyhow);
            double showsAt = showsAt(luck.branch(3), lost);
            List<BarLook> looks = new ArrayList<>();
            if (luck.branch(4).uniform() < 0.85) looks.add(look(luck.branch(5), 20, 30, showsAt));
            if (luck.branch(6).uniform() < 0.7) looks.add(look(luck.branch(7), 150, 200, showsAt));
            return Outcome.of(looks).outcome().map(outcome -> new TriedBatch(dose, outcome));
        }

        private double dose(Luck luck, Doses doses) {
            double top = PUBLISHED_CELSIUS - 1.8;
            if (doses == Doses.PLAIN) return Math.max(top, PUBLISHED_CELSIUS - 0.6 + 0.9 * luck.normal());
            boolean ownWay = doses == Doses.CARELESS || luck.branch(0).uniform() < ownWayShare;
            List<Double> from = ownWay ? OWN_WAY : ADVISED;
            return PUBLISHED_CELSIUS + from.get((int) (luck.branch(1).uniform() * from.size()));
        }

        private static double showsAt(Luck luck, boolean lost) {
            double other = luck.branch(0).uniform() < 0.02 ? 10 : luck.branch(1).exponential(3000);
            if (!lost || luck.branch(2).uniform() < 0.02) return other;
            return Math.min(other, 14 * StrictMath.exp(0.8 * luck.branch(3).normal()));
        }

        private static BarLook look(Luck luck, double from, double to, double showsAt) {
            double age = from + (to - from) * luck.branch(0).uniform();
            boolean unsure = luck.branch(1).uniform() < 0.1;
            boolean mistaken = luck.branch(2).uniform() < (unsure ? 0.15 : 0.02);
            Bloom bloom = (age >= showsAt) != mistaken ? Bloom.STREAKS : Bloom.NONE;
            return new BarLook(
                    age,
                    List.of(bloom),
                    List.of(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    unsure ? Sureness.UNSURE : Sureness.SURE);
        }
    }

    /** Doses of one fleet, K from the published limit. */
    private static List<Double> doses(String fleet) {
        try (InputStream in = KnownHarm.class.getResourceAsStream("/learning/doses.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.startsWith(fleet + ","))
                    .map(line -> Double.valueOf(line.split(",")[2]))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** How often limits lie within what was learned. */
    record Tally(int makers, int within, int said, int withinOfSaid, double widthKelvin, double errorKelvin) {
        static Tally of(int makers, int batches, Doses doses) {
            return of(IntStream.range(0, makers)
                    .mapToObj(n -> maker(n, batches, doses))
                    .toList());
        }

        static Tally of(List<KnownHarm> all) {
            List<LearnedLimit> learned = all.stream().map(LearnedLimit::of).toList();
            List<LearnedLimit> said =
                    learned.stream().filter(LearnedLimit::isSaid).toList();
            return new Tally(
                    all.size(),
                    (int) learned.stream().filter(LearnedLimit::isWithin).count(),
                    said.size(),
                    (int) said.stream().filter(LearnedLimit::isWithin).count(),
                    said.stream()
                            .mapToDouble(LearnedLimit::widthKelvin)
                            .average()
                            .orElse(0),
                    said.stream()
                            .mapToDouble(LearnedLimit::errorKelvin)
                            .average()
                            .orElse(0));
        }

        double share() {
            return (double) within / makers;
        }

        double shareOfSaid() {
            return (double) withinOfSaid / said;
        }
    }
}
