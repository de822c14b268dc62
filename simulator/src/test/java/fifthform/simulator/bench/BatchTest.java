package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.Event;
import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bench.Batch.Passed;
import fifthform.simulator.bench.BatchRun.Presses;
import fifthform.simulator.bench.WhatIf.Furthest;
import fifthform.simulator.bench.WhatIf.Labels;
import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.scenario.Landed;
import fifthform.simulator.scenario.MakerKind;
import fifthform.simulator.scenario.Scenario;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** A batch as a function from moment to moment, and what would have come of other ways. */
class BatchTest {
    private static final Scenario SCENARIO = BatchRunTest.scenario("first-light");
    private static final Recipe DARK = RecipeShelf.recipe("dark");
    private static final Batch BATCH = new Batch(SCENARIO.kitchen());

    private static Moment beginning() {
        Program engine = EngineProgram.beginning(SCENARIO, DARK, BatchRun.BEGINS);
        return Batch.beginning(SCENARIO, new Luck(5), engine);
    }

    /** All moments and events from here on, to the end or for so many steps. */
    private static List<Passed> following(Moment from, int steps) {
        List<Passed> all = new ArrayList<>();
        Moment moment = from;
        while (!moment.maker().done() && all.size() < steps) {
            Passed passed = BATCH.next(moment);
            all.add(passed);
            moment = passed.after();
        }
        return all;
    }

    private static Moment first(Moment from, Predicate<Moment> wanted) {
        Moment moment = from;
        while (!wanted.test(moment)) {
            if (moment.maker().done()) throw new AssertionError("never");
            moment = BATCH.next(moment).after();
        }
        return moment;
    }

    private static Moment warming() {
        return first(
                beginning(),
                m -> m.hands().spot() == Spot.WARM_BATH && m.kitchen().bulkCelsius() > 29.5);
    }

    /** From any moment the rest of the batch follows again, to the bit, kitchen, maker, program, noise and events. */
    @Test
    void goingOnFromAMomentEqualsRunningThrough() {
        List<Passed> whole = following(beginning(), Integer.MAX_VALUE);
        int middle = whole.size() / 2;
        Moment branch = whole.get(middle).after();
        List<Passed> again = following(branch, Integer.MAX_VALUE);
        assertEquals(whole.subList(middle + 1, whole.size()), again);
        assertTrue(again.stream().mapToLong(p -> p.events().size()).sum() > 5, "nothing was said");
        assertNotEquals(
                again,
                following(branch.inHandsOf(MakerKind.OWN_WAY.with(SCENARIO.habits(), new Luck(6))), Integer.MAX_VALUE));
    }

    /** The label of a moment is what happens when the bowl is really lifted then and stirred on. */
    @Test
    void theLabelOfALiftIsWhatTheLiftDoes() {
        Moment moment = warming();
        KitchenState state = moment.kitchen();
        double highest = state.bulkCelsius();
        for (int halves = 0; halves < 600; halves++) {
            state = SCENARIO.kitchen().advance(state, Hands.stirringAt(Spot.TABLE), Batch.STEP);
            highest = Math.max(highest, state.bulkCelsius());
        }
        Furthest lifted = new WhatIf(SCENARIO.kitchen()).ifLifted(moment.kitchen(), moment.hands());
        assertEquals(highest, lifted.celsius());
        assertTrue(lifted.celsius() > moment.kitchen().bulkCelsius() + 0.1, "no coast");
        assertTrue(lifted.after().toSeconds() > 3 && lifted.after().toSeconds() < 180, lifted.toString());
    }

    @Test
    void leftOnTheBathItGoesFurtherThanLifted() {
        Moment moment = warming();
        Labels labels = new WhatIf(SCENARIO.kitchen()).labels(moment);
        assertTrue(labels.ifLeft().celsius() > labels.ifLifted().celsius() + 1, labels.toString());
        assertEquals(WhatIf.LEFT_FOR, labels.ifLeft().after(), "still rising at the end");
        KitchenState left = SCENARIO.kitchen()
                .advance(
                        moment.kitchen(),
                        new Hands(Spot.WARM_BATH, moment.hands().stirVigourFraction(), Hands.Towel.LEFT),
                        WhatIf.LEFT_FOR);
        assertEquals(left.bulkCelsius(), labels.ifLeft().celsius(), 1e-6);
    }

    @Test
    void outOfColdWaterTheFurthestIsTheLowest() {
        Moment moment = first(
                beginning(),
                m -> m.hands().spot() == Spot.COLD_WATER && m.kitchen().bulkCelsius() < 31);
        Labels labels = new WhatIf(SCENARIO.kitchen()).labels(moment);
        assertTrue(labels.ifLifted().celsius() < moment.kitchen().bulkCelsius(), labels.toString());
        assertTrue(labels.ifLeft().celsius() < labels.ifLifted().celsius() - 1, labels.toString());
    }

    /** The furthest on the way on which it is: what the engine's forecast means by it as well. */
    @Test
    void leftOnTheTableItGoesOnTheWayItIsGoing() {
        Kitchen kitchen = SCENARIO.kitchen();
        Hands table = Hands.stirringAt(Spot.TABLE);
        KitchenState warm = KitchenState.melted(31, new KitchenState.Baths(45, 45, 16));
        Furthest falling = new WhatIf(kitchen).ifLeft(warm, table);
        assertEquals(WhatIf.LEFT_FOR, falling.after());
        assertEquals(kitchen.advance(warm, table, WhatIf.LEFT_FOR).bulkCelsius(), falling.celsius(), 1e-6);
        Moment lifted = warming();
        Furthest coasting = new WhatIf(kitchen).ifLeft(lifted.kitchen(), table);
        assertEquals(new WhatIf(kitchen).ifLifted(lifted.kitchen(), table), coasting);
    }

    /** Asking what if leaves the moment as it was. */
    @Test
    void askingChangesNothing() {
        Moment moment = warming();
        List<Passed> before = following(moment, 100);
        new WhatIf(SCENARIO.kitchen()).labels(moment);
        assertEquals(before, following(moment, 100));
    }

    /** The way without bytes and the way through adapter and decoder lead to about the same batch. */
    @Test
    void withoutBytesItEndsAsWithThem() {
        Ending plain = BATCH.run(beginning(), DARK);
        Ending bytes = PracticeReport.run(SCENARIO, 5, Fleet.Advice.engine(RecipeShelf::recipe));
        assertEquals(Landed.IN_RANGE, plain.landed());
        assertEquals(Landed.IN_RANGE, bytes.landed());
        double minutes = Duration.between(
                                BatchRun.BEGINS,
                                BatchRun.BEGINS.plus(plain.outcome().lasted()))
                        .toSeconds()
                / 60.0;
        assertEquals(bytes.outcome().lasted().toSeconds() / 60.0, minutes, 3);
        // The pot is turned down by what is read, and half a second between two ways of reading is some tenths of a
        // kelvin.
        assertEquals(bytes.outcome().highestMeltCelsius(), plain.outcome().highestMeltCelsius(), 1.5);
    }

    /** Streamed, the outcome is what the whole record gives. */
    @Test
    void theProgramHearsReadingsBathAndTicks() {
        List<Event> events = new ArrayList<>();
        following(beginning(), Integer.MAX_VALUE).forEach(p -> events.addAll(p.events()));
        assertTrue(
                events.stream().anyMatch(e -> e instanceof Event.CueGiven), "no cue in " + events.size() + " events");
        BatchRecord silent = BatchRun.run(SCENARIO, 1, input -> List.of(), Presses.FORGOTTEN);
        assertEquals(silent.outcome(), Outcome.of(silent.truth()));
    }
}
