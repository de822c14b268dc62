package fifthform.simulator.bench;

import fifthform.curves.crystal.StirWatch;
import fifthform.curves.input.MakerAction.StirringSaid.Stirring;
import fifthform.curves.phase.Evidence;
import fifthform.curves.recipe.Phase;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.scenario.Scenario;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.LongStream;

/**
 * What the engine makes of the spoon, minute by minute from the cool step on, against what the hands really did.
 *
 * @param right minutes whose word was right
 * @param wrong minutes whose word was wrong
 * @param unsure minutes in which nothing showed
 * @param assumedRight of those the minutes in which what is assumed was right
 */
record StirringSeen(long right, long wrong, long unsure, long assumedRight) {
    private static final StirringSeen NONE = new StirringSeen(0, 0, 0, 0);

    /** Mean vigour of a minute from which it is stirred, and up to which it is not; between, either word is right. */
    private static final double STIRRED = 0.3;

    private static final double STILL = 0.1;
    private static final int STEPS_A_MINUTE = (int) (Duration.ofMinutes(1).toMillis() / Batch.STEP.toMillis());

    long minutes() {
        return right + wrong + unsure;
    }

    /** Of the minutes with a word. */
    double rightFraction() {
        return right / (double) Math.max(1, right + wrong);
    }

    String words() {
        return String.format(
                Locale.ROOT,
                "%d minutes: a word in %.0f %%, right in %.1f %% of those; of the rest what is assumed is right in %.0f %%",
                minutes(),
                100.0 * (right + wrong) / Math.max(1, minutes()),
                100 * rightFraction(),
                100.0 * assumedRight / Math.max(1, unsure));
    }

    private StirringSeen plus(StirringSeen other) {
        return new StirringSeen(
                right + other.right, wrong + other.wrong, unsure + other.unsure, assumedRight + other.assumedRight);
    }

    /** The batches of these numbers; at every place, or at one. */
    static StirringSeen in(Fleet fleet, long from, long to, Optional<Spot> only) {
        return LongStream.range(from, to)
                .mapToObj(number -> batch(fleet, number, only))
                .reduce(NONE, StirringSeen::plus);
    }

    private static StirringSeen batch(Fleet fleet, long number, Optional<Spot> only) {
        Scenario scenario = fleet.draw(number);
        Moment moment = fleet.beginning(number, Fleet.Advice.engine(RecipeShelf::recipe));
        Batch batch = new Batch(scenario.kitchen());
        Instant last = moment.at().plus(Batch.LONGEST);
        StirringSeen seen = NONE;
        double vigour = 0;
        int stirred = 0;
        int still = 0;
        int assumed = 0;
        int steps = 0;
        while (!moment.maker().done() && moment.at().isBefore(last)) {
            moment = batch.next(moment).after();
            EngineProgram program = (EngineProgram) moment.program();
            boolean counts = program.state().batch().phase() != Phase.MELT
                    && only.filter(spot -> spot != at(program)).isEmpty();
            if (!counts) {
                steps = 0;
                vigour = 0;
                stirred = 0;
                still = 0;
                assumed = 0;
                continue;
            }
            StirWatch stir = program.state().crystals().orElseThrow().stir();
            vigour += moment.hands().stirVigourFraction();
            steps++;
            if (stir.evidence() == Evidence.ASSUMED) assumed++;
            else if (stir.stirring() == Stirring.STIRRED) stirred++;
            else still++;
            if (steps < STEPS_A_MINUTE) continue;
            seen = seen.plus(minute(vigour / steps, stirred, still, assumed, stir.stirring()));
            steps = 0;
            vigour = 0;
            stirred = 0;
            still = 0;
            assumed = 0;
        }
        return seen;
    }

    private static StirringSeen minute(double vigour, int stirred, int still, int assumed, Stirring says) {
        Stirring word = stirred + still > assumed ? stirred >= still ? Stirring.STIRRED : Stirring.STILL : says;
        boolean right = word == Stirring.STIRRED ? vigour > STILL : vigour < STIRRED;
        if (stirred + still <= assumed) return new StirringSeen(0, 0, 1, right ? 1 : 0);
        return right ? new StirringSeen(1, 0, 0, 0) : new StirringSeen(0, 1, 0, 0);
    }

    private static Spot at(EngineProgram program) {
        return switch (program.state().batch().place()) {
            case BATH -> Spot.WARM_BATH;
            case TABLE -> Spot.TABLE;
            case COLD_WATER -> Spot.COLD_WATER;
        };
    }
}
