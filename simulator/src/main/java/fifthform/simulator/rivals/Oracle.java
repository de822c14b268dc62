package fifthform.simulator.rivals;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.Sample;
import fifthform.simulator.bench.Batch;
import fifthform.simulator.bench.BatchRun;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Luck;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Knows every number of the kitchen and of its probe, and is told exactly where the bowl stands, but sees the same
 * readings as everyone: what nobody who has only readings can beat. It does not know when and how the spoon goes, whether
 * the bowl is wiped, where the tip leans, nor what is still to be drawn: it keeps some guesses of these, weighs them by
 * the readings and draws the fitting ones again (a particle filter; Gordon, Salmond and Smith, IEE Proceedings F 140
 * (1993) 107; from memory).
 *
 * @param kitchen the true one
 * @param spot where the bowl stands
 * @param guesses how it may stand
 * @param said what it says of a lift now
 * @param lift whether a lift is due
 * @param luck for drawing again
 */
record Oracle(JudgedKitchen kitchen, Spot spot, List<Guess> guesses, Optional<Said> said, Lift lift, Luck luck)
        implements Rival {
    private static final int GUESSES = 16;
    private static final double REACTION_SECONDS = 2.5;
    /** Farther below the range nobody thinks of lifting, K. */
    private static final double BELOW_KELVIN = 3;
    /** What the guesses leave out, K: a tip that leans on the wall. */
    private static final double LEFT_OUT_KELVIN = 0.06;

    private static final double OUTLIER_FLOOR = 0.02;

    /** Whether a lift is due. */
    private enum Lift {
        NOT_COOLED,
        NOT_YET,
        REACHED,
        SAID
    }

    Oracle {
        Objects.requireNonNull(kitchen, "kitchen");
        Objects.requireNonNull(spot, "spot");
        guesses = List.copyOf(guesses);
        Objects.requireNonNull(said, "said");
        Objects.requireNonNull(lift, "lift");
        Objects.requireNonNull(luck, "luck");
    }

    /** At the beginning of a batch. */
    static Oracle beginning(JudgedKitchen kitchen) {
        Luck luck = new Luck(kitchen.number()).branch(11);
        List<Guess> guesses = new ArrayList<>();
        for (int i = 0; i < GUESSES; i++) {
            guesses.add(new Guess(kitchen.scenario().begins(), 0, 0, -1, 0, luck.branch(i)));
        }
        return new Oracle(kitchen, Spot.HOT_BATH, guesses, Optional.empty(), Lift.NOT_COOLED, luck.branch(GUESSES));
    }

    @Override
    public Heard hear(Input input) {
        if (input instanceof BowlMoved moved) return Rival.silent(standing(moved.to()));
        if (!(input instanceof Sample sample) || !sample.probe().equals(BatchRun.BOWL)) return Rival.silent(this);
        return read(sample.at(), sample.tipCelsius());
    }

    private Oracle standing(Place place) {
        boolean cooled = lift != Lift.NOT_COOLED;
        Lift next = place == Place.COLD_WATER && !cooled ? Lift.NOT_YET : lift;
        Spot now = switch (place) {
            case BATH -> cooled ? kitchen.water() : Spot.HOT_BATH;
            case COLD_WATER -> Spot.COLD_WATER;
            case TABLE -> Spot.TABLE;
        };
        return new Oracle(kitchen, now, guesses, said, next, luck);
    }

    private Heard read(Instant at, double celsius) {
        Kitchen physics = kitchen.scenario().kitchen();
        List<Guess> moved = new ArrayList<>(GUESSES);
        double before = 0;
        double after = 0;
        for (Guess guess : guesses) {
            Guess next = guess.after(physics, spot, share(), Batch.STEP);
            before += guess.state().bulkCelsius();
            after += next.state().bulkCelsius();
            moved.add(next.weighing(next.logWeight() + logLikelihood(next, celsius)));
        }
        double slope = (after - before) / GUESSES / (Batch.STEP.toMillis() / 1000.0);
        List<Guess> drawn = drawnAgain(moved);
        boolean asked =
                warming() && after / GUESSES > kitchen.recipe().work().range().lowCelsius() - BELOW_KELVIN;
        boolean now = at.getNano() == 0 && at.getEpochSecond() % 2 == 0; // every other second is enough
        Optional<Said> says = !asked ? Optional.empty() : now ? Optional.of(turn(drawn)) : said;
        return decided(new Oracle(kitchen, spot, drawn, says, lift, luck.after()), at, slope);
    }

    private boolean warming() {
        return lift != Lift.NOT_COOLED && spot == kitchen.water();
    }

    private Heard decided(Oracle next, Instant at, double kelvinPerSecond) {
        double aim = kitchen.recipe().work().range().midCelsius();
        boolean reached = next.said
                .filter(s -> s.celsius() + REACTION_SECONDS * kelvinPerSecond >= aim)
                .isPresent();
        return switch (lift) {
            case NOT_COOLED, SAID -> Rival.silent(next);
            case NOT_YET -> Rival.silent(next.with(reached ? Lift.REACHED : Lift.NOT_YET));
            case REACHED -> {
                if (!reached) yield Rival.silent(next.with(Lift.NOT_YET));
                double figure = next.said.orElseThrow().celsius();
                Event cue = new CueGiven(at, CueId.LIFT_NOW, OptionalDouble.of(figure));
                yield new Heard(next.with(Lift.SAID), List.of(cue));
            }
        };
    }

    private Oracle with(Lift other) {
        return new Oracle(kitchen, spot, guesses, said, other, luck);
    }

    private double share() {
        return kitchen.scenario().habits().plan().stirringShare();
    }

    private double logLikelihood(Guess guess, double celsius) {
        var adapter = kitchen.scenario().bowlAdapter();
        double expected = adapter.gain() * guess.state().tipCelsius() + adapter.offsetKelvin();
        double step = adapter.resolutionKelvin();
        double variance =
                adapter.noiseKelvin() * adapter.noiseKelvin() + step * step / 12 + LEFT_OUT_KELVIN * LEFT_OUT_KELVIN;
        double miss = celsius - expected;
        // What is left out lasts for many readings: each counts for a part only.
        return 0.3 * StrictMath.log(StrictMath.exp(-miss * miss / (2 * variance)) + OUTLIER_FLOOR);
    }

    /** The fitting guesses again, in proportion to their weights, where less than half of them count. */
    private List<Guess> drawnAgain(List<Guess> moved) {
        double most = moved.stream().mapToDouble(Guess::logWeight).max().orElse(0);
        double[] weights = moved.stream()
                .mapToDouble(g -> StrictMath.exp(g.logWeight() - most))
                .toArray();
        double sum = 0;
        double squares = 0;
        for (double w : weights) {
            sum += w;
            squares += w * w;
        }
        if (sum * sum / squares > GUESSES / 2.0) return moved;
        List<Guess> drawn = new ArrayList<>(GUESSES);
        double start = luck.uniform();
        double gone = 0;
        int next = 0;
        for (int i = 0; i < GUESSES; i++) {
            double upTo = (i + start) / GUESSES * sum;
            while (next < GUESSES - 1 && gone + weights[next] < upTo) gone += weights[next++];
            drawn.add(moved.get(next).branch(i));
        }
        return drawn;
    }

    private Said turn(List<Guess> from) {
        List<double[]> turns = new ArrayList<>();
        double most = from.stream().mapToDouble(Guess::logWeight).max().orElse(0);
        double sum = 0;
        for (Guess guess : from) {
            double turn = guess.turnCelsius(kitchen.scenario().kitchen(), share(), Batch.STEP);
            double weight = StrictMath.exp(guess.logWeight() - most);
            turns.add(new double[] {kitchen.scale().shows(turn), weight});
            sum += weight;
        }
        turns.sort((a, b) -> Double.compare(a[0], b[0]));
        return new Said(point(turns, 0.5 * sum), point(turns, 0.05 * sum), point(turns, 0.95 * sum));
    }

    private static double point(List<double[]> turns, double upTo) {
        double gone = 0;
        for (double[] each : turns) {
            gone += each[1];
            if (gone >= upTo) return each[0];
        }
        return turns.get(turns.size() - 1)[0];
    }
}
