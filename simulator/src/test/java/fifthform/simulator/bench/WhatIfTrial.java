package fifthform.simulator.bench;

import fifthform.curves.engine.Engine;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.Setup;
import fifthform.curves.whatif.Answer;
import fifthform.curves.whatif.Change;
import fifthform.curves.whatif.PastBatch;
import fifthform.curves.whatif.PastLift;
import fifthform.curves.whatif.Rerun;
import fifthform.curves.whatif.Trail;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.scenario.Scenario;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What-ifs of one simulated batch, each held against the same kitchen and hands with the changed act. Temperatures are on
 * the scale of the batch's own probe: no program can know its offset.
 */
final class WhatIfTrial {
    /** Moments after the changed lift at which the curve is compared, s. */
    static final int[] MOMENTS = {15, 60, 180, 420};

    /** A lift that the engine found further from the true one is another lift. */
    private static final Duration SAME_LIFT = Duration.ofSeconds(30);

    /** What the setup knows of the kitchen beside its chocolate. */
    enum Told {
        /** Bowl, amount and a probe in the bath. */
        MUCH,
        /** Nothing: no material, no amount, no bath probe. */
        NOTHING
    }

    /**
     * One answer and the truth.
     *
     * @param number of the batch
     * @param kind of the change, for tables
     * @param turnCelsius the true turning point, °C
     * @param moments truth and answer at the {@link #MOMENTS} that lie in the answer
     */
    record Held(long number, String kind, Answer.Simulated answer, double turnCelsius, List<Compared> moments) {
        boolean turnHeld() {
            return answer.turn().lowerCelsius() <= turnCelsius
                    && turnCelsius <= answer.turn().upperCelsius();
        }

        double turnOffKelvin() {
            return turnCelsius - answer.turn().celsius();
        }

        double turnHalfWidthKelvin() {
            return answer.turn().upperCelsius() - answer.turn().celsius();
        }
    }

    /** The answer at a moment and the truth there. */
    record Compared(int afterSeconds, Answer.Moment said, double celsius) {
        boolean held() {
            return said.lowerCelsius() <= celsius && celsius <= said.upperCelsius();
        }
    }

    /** A refusal. */
    record Not(long number, String kind, Answer.Refused refused) {}

    private final List<Held> held = new ArrayList<>();
    private final List<Not> refused = new ArrayList<>();
    private int missed;

    List<Held> held() {
        return held;
    }

    List<Not> refused() {
        return refused;
    }

    /** True rewarm lifts that the engine did not see. */
    int missed() {
        return missed;
    }

    /** The engine, with everything it does noted. */
    private record Noting(Setup setup, State state, Trail trail) implements Program {
        @Override
        public Heard hear(Input input) {
            Step step = Engine.step(setup, state, input);
            trail.take(state, step);
            return new Heard(new Noting(setup, step.after(), trail), step.events());
        }

        @Override
        public OptionalDouble turnIfLiftedCelsius() {
            return OptionalDouble.empty();
        }
    }

    /** All what-ifs of the lift that ended the longest stay over the warm water in the batch with this number. */
    static WhatIfTrial of(Fleet fleet, long number, Told told) {
        Scenario scenario = fleet.draw(number);
        Recipe recipe = RecipeShelf.recipe(scenario.chocolate());
        Setup known = EngineProgram.beginning(scenario, recipe, BatchRun.BEGINS).setup();
        Setup setup = told == Told.MUCH
                ? known
                : new Setup(
                        recipe,
                        Bowl.ANY,
                        List.of(known.bowlProbe()),
                        Setup.USUAL_REACTION,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        known.origin(),
                        known.approach(),
                        known.seedGrams(),
                        Beginning.WHOLE,
                        Optional.empty());
        Trail trail = new Trail(setup);
        Program program = new Noting(setup, Engine.start(setup, BatchRun.BEGINS), trail);
        Luck luck = new Luck(fleet.seed()).branch(number).branch(1);
        DoneBatch done = DoneBatch.of(new Batch(scenario.kitchen()), Batch.beginning(scenario, luck, program));
        WhatIfTrial trial = new WhatIfTrial();
        trial.ask(number, scenario, done, trail.batch());
        return trial;
    }

    private void ask(long number, Scenario scenario, DoneBatch done, PastBatch batch) {
        OptionalInt truly = OptionalInt.empty();
        for (int i = 0; i < done.lifts().size(); i++) {
            if (done.liftedFrom(i) != Spot.WARM_BATH) continue;
            boolean longer = truly.isEmpty() || done.stay(i).compareTo(done.stay(truly.getAsInt())) > 0;
            if (longer) truly = OptionalInt.of(i);
        }
        if (truly.isEmpty()) return;
        int lift = truly.getAsInt();
        Instant at = done.lifts().get(lift);
        PastLift seen = null;
        for (PastLift each : batch.lifts()) {
            boolean near = Duration.between(at, each.at()).abs().compareTo(SAME_LIFT) <= 0;
            boolean nearest = seen == null
                    || Duration.between(at, each.at())
                                    .abs()
                                    .compareTo(Duration.between(at, seen.at()).abs())
                            < 0;
            if (each.from() == Place.BATH && each.phase() != Phase.MELT && near && nearest) seen = each;
        }
        if (seen == null) {
            missed++;
            return;
        }
        Scale scale = Scale.of(scenario);
        int n = seen.number();
        for (int later : new int[] {-20, -8, 10, 25}) {
            ask(number, "lift", new Change.LiftMoved(n, later), done, batch, lift, scale);
        }
        for (int hotter : new int[] {-5, 4}) {
            ask(number, "bath", new Change.BathShifted(n, hotter), done, batch, lift, scale);
        }
    }

    private void ask(long number, String kind, Change change, DoneBatch done, PastBatch batch, int lift, Scale scale) {
        Answer answer = Rerun.of(batch, change);
        if (answer instanceof Answer.Refused no) {
            refused.add(new Not(number, kind, no));
            return;
        }
        Answer.Simulated said = (Answer.Simulated) answer;
        double later = change instanceof Change.LiftMoved moved ? moved.laterSeconds() : 0;
        Instant lifted = done.lifts().get(lift).plusMillis(Math.round(1000 * later));
        Duration reach = Duration.between(lifted, said.until());
        DoneBatch.Way way = change instanceof Change.BathShifted bath
                ? done.bathHotter(lift, bath.hotterKelvin(), reach)
                : done.liftedLater(lift, Duration.ofMillis(Math.round(1000 * later)), reach);
        double turn = Double.NEGATIVE_INFINITY;
        for (Instant t = lifted; !t.isAfter(said.until()); t = t.plus(Batch.STEP)) turn = Math.max(turn, way.at(t));
        List<Compared> moments = new ArrayList<>();
        for (int after : MOMENTS) {
            Instant t = said.lift().at().plusMillis(Math.round(1000 * (later + after)));
            if (t.isAfter(said.until())) continue;
            Answer.Moment nearest = said.curve().get(0);
            for (Answer.Moment m : said.curve()) if (!m.at().isAfter(t)) nearest = m;
            moments.add(new Compared(after, nearest, scale.shows(way.at(nearest.at()))));
        }
        held.add(new Held(number, kind, said, scale.shows(turn), moments));
    }

    /** What the batch's own probe shows at rest; as Tip has it. */
    private record Scale(double gain, double offsetKelvin, double stemFraction, double roomCelsius) {
        static Scale of(Scenario scenario) {
            var tip = scenario.kitchen().tip();
            return new Scale(
                    scenario.bowlAdapter().gain(),
                    scenario.bowlAdapter().offsetKelvin(),
                    1 / StrictMath.cosh(tip.depthMillimetres() / tip.stemMillimetres()),
                    scenario.kitchen().roomCelsius());
        }

        double shows(double bulkCelsius) {
            return gain * (bulkCelsius - stemFraction * (bulkCelsius - roomCelsius)) + offsetKelvin;
        }
    }
}
