package fifthform.curves.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.TestRecipes;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.ProbePutBack;
import fifthform.curves.input.MakerAction.ProbeTakenOut;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.whatif.Answer.Refused;
import fifthform.curves.whatif.Answer.Simulated;
import fifthform.curves.whatif.Answer.Why;
import fifthform.curves.whatif.Change.BathShifted;
import fifthform.curves.whatif.Change.LiftMoved;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * A bowl of two bodies whose equations are solved here by small explicit steps, gone through with another lift or another
 * bath: the truth that the re-run must find from the readings alone.
 */
class RerunTest {
    private static final Instant START = Instant.parse("2026-01-10T09:00:00Z");
    private static final double ENTRY = 180;
    private static final double LIFT = 260;
    private static final double END = 700;

    /** Chocolate once a half second: 27.5 °C on the table, then a bath, then the table. */
    private static double[] bowl(double entry, double lift, double bathCelsius) {
        double[] chocolate = new double[(int) (END * 2) + 1];
        double c = 27.5;
        double w = 27.5;
        double h = 0.01;
        for (int i = 0; i < chocolate.length; i++) {
            chocolate[i] = c;
            for (int j = 0; j < 50; j++) {
                double t = i * 0.5 + j * h;
                boolean wet = t >= entry && t < lift;
                double toChocolate = 0.007 * (w - c);
                double toWall = (wet ? 0.009 * (bathCelsius - w) : 0) - toChocolate;
                c += h * (toChocolate - 5e-4 * (c - 21));
                w += h * toWall / 0.25;
            }
        }
        return chocolate;
    }

    private static double highest(double[] chocolate) {
        double highest = Double.NEGATIVE_INFINITY;
        for (double each : chocolate) highest = Math.max(highest, each);
        return highest;
    }

    private static Instant at(double seconds) {
        return START.plusMillis(Math.round(1000 * seconds));
    }

    /** What the program was told; the tip follows with 4 s and shows tenths. */
    private static List<Input> told(double[] chocolate, double from, double to) {
        List<Input> inputs = new ArrayList<>();
        inputs.add(new PhaseConfirmed(at(0), Phase.SEED));
        double tip = chocolate[0];
        for (int i = 0; i < chocolate.length; i++) {
            double t = i * 0.5;
            tip += (chocolate[i] - tip) * (1 - Math.exp(-0.5 / 4));
            if (t == ENTRY) inputs.add(new BowlMoved(at(t), Place.BATH));
            if (t == LIFT) inputs.add(new BowlMoved(at(t), Place.TABLE));
            if (t == from) inputs.add(new ProbeTakenOut(at(t)));
            if (t == to) inputs.add(new ProbePutBack(at(t)));
            boolean out = t >= from && t < to;
            if (!out) {
                double shown = Math.round(10 * tip) / 10.0;
                inputs.add(new Sample(
                        at(t), new ProbeId("bowl"), shown, 0.03, OptionalDouble.empty(), OptionalDouble.empty()));
            }
        }
        return inputs;
    }

    private static PastBatch batch() {
        return PastBatch.of(TestRecipes.setup(), START, told(bowl(ENTRY, LIFT, 45), -1, -1));
    }

    private static Simulated simulated(Change change) {
        return assertInstanceOf(Simulated.class, Rerun.of(batch(), change));
    }

    private static int lift() {
        return batch().mainLift().orElseThrow().number();
    }

    @Test
    void theLiftIsTheOneThatWasTold() {
        PastLift lift = batch().mainLift().orElseThrow();
        assertEquals(at(LIFT), lift.at());
        assertEquals(at(ENTRY), lift.enteredAt());
        assertEquals(Place.BATH, lift.from());
    }

    @Test
    void aLiftTenSecondsEarlierTurnsWhereThatBowlWouldHave() {
        double really = highest(bowl(ENTRY, LIFT - 10, 45));
        Simulated answer = simulated(new LiftMoved(lift(), -10));
        assertEquals(really, answer.turn().celsius(), 0.15);
        assertTrue(
                answer.turn().lowerCelsius() <= really
                        && really <= answer.turn().upperCelsius(),
                answer.toString());
        assertTrue(answer.turn().upperCelsius() - answer.turn().lowerCelsius() < 1, "a band that says something");
        assertEquals(at(LIFT - 10), answer.from());
    }

    @Test
    void aLiftTwentySecondsLaterGoesHigher() {
        double really = highest(bowl(ENTRY, LIFT + 20, 45));
        Simulated answer = simulated(new LiftMoved(lift(), 20));
        assertTrue(
                answer.turn().lowerCelsius() <= really
                        && really <= answer.turn().upperCelsius(),
                answer.toString());
        assertTrue(answer.turn().celsius() > answer.measuredTurnCelsius().orElseThrow() + 0.5);
    }

    @Test
    void aCoolerBathGivesLess() {
        double really = highest(bowl(ENTRY, LIFT, 40));
        Simulated answer = simulated(new BathShifted(lift(), -5));
        assertTrue(
                answer.turn().lowerCelsius() <= really
                        && really <= answer.turn().upperCelsius(),
                answer.toString());
        assertEquals(at(ENTRY), answer.from());
    }

    @Test
    void withoutAChangeItIsTheMeasuredCurve() {
        Simulated answer = simulated(new LiftMoved(lift(), 0));
        assertEquals(answer.measuredTurnCelsius().orElseThrow(), answer.turn().celsius(), 0.02);
        assertTrue(answer.fit().residualKelvin() < 0.1);
    }

    @Test
    void theSameQuestionGetsTheSameAnswerToTheBit() {
        assertEquals(simulated(new LiftMoved(lift(), -7)), simulated(new LiftMoved(lift(), -7)));
    }

    @Test
    void whoNeverLiftedIsTold() {
        List<Input> table = told(bowl(1e9, 1e9, 45), -1, -1).stream()
                .filter(i -> !(i instanceof BowlMoved))
                .filter(i -> i.at().isBefore(at(120)))
                .toList();
        refused(Why.NO_LIFT, PastBatch.of(TestRecipes.setup(), START, table), new LiftMoved(1, -5));
    }

    @Test
    void aLiftThatThereIsNotIsRefusedWithTheirNumber() {
        PastBatch batch = batch();
        Refused no = refused(Why.NO_SUCH_LIFT, batch, new LiftMoved(40, -5));
        assertEquals(batch.lifts().size(), no.figure().orElseThrow());
    }

    @Test
    void nobodyCanLiftBeforeTheBowlWasInTheWater() {
        Refused no = refused(Why.TOO_FAR, batch(), new LiftMoved(lift(), -100));
        assertEquals(LIFT - ENTRY, no.figure().orElseThrow(), 3);
    }

    @Test
    void aProbeThatWasOutHidesWhatHappened() {
        PastBatch batch = PastBatch.of(TestRecipes.setup(), START, told(bowl(ENTRY, LIFT, 45), 240, 285));
        Refused no = refused(
                Why.PROBE_NOT_IN_CHOCOLATE,
                batch,
                new LiftMoved(batch.mainLift().orElseThrow().number(), -5));
        assertTrue(no.figure().orElseThrow() >= 40, no.toString());
    }

    /** Readings of no kitchen: they swing by a kelvin up and down, once in 50 s. */
    @Test
    void whatNoKitchenDoesIsSeenByWhatIsLeftOver() {
        PastBatch batch = batch();
        Windows windows = new Windows(batch, batch.mainLift().orElseThrow());
        Window whole = windows.cut(false).window().orElseThrow();
        double[] swings = whole.tip().clone();
        for (int i = 0; i < swings.length; i++) swings[i] += Math.sin(whole.at()[i] / 8);
        Window window = new Window(whole.zero(), whole.course(), whole.at(), swings, whole.bathCelsius());
        Bodies bodies = new Bodies(21);
        Prior prior = Prior.of(batch.setup(), window, windows.stay(), windows.after());
        double left = KitchenFit.of(bodies, window, prior).orElseThrow().residualKelvin();
        assertTrue(left > Rerun.WORST_FIT_KELVIN, left + " K");
    }

    @Test
    void itIsFollowedNoLongerThanTenMinutes() {
        Duration reach =
                Duration.between(at(LIFT), simulated(new LiftMoved(lift(), -10)).until());
        assertTrue(reach.compareTo(Duration.ofMinutes(10)) <= 0, "followed no longer than ten minutes");
    }

    private static Refused refused(Why why, PastBatch batch, Change change) {
        Refused no = assertInstanceOf(Refused.class, Rerun.of(batch, change));
        assertEquals(why, no.why());
        return no;
    }
}
