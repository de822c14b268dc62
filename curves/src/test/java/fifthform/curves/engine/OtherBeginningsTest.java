package fifthform.curves.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.crystal.SeedWord;
import fifthform.curves.cue.CueId;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.SampleProved;
import fifthform.curves.input.MakerAction.StirringSaid;
import fifthform.curves.recipe.Phase;
import fifthform.curves.review.Tally;
import fifthform.curves.review.Verdict;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Holding.Warmth;
import fifthform.curves.setup.Setup;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Bars of a failed batch, chocolate that is in temper, and an hour in the working range. */
class OtherBeginningsTest {
    private static final Instant START = StoryMaker.START;

    /** Inputs one after the other, with what was told. */
    private static final class Watched {
        private final Setup setup;
        private final Set<CueId> given = EnumSet.noneOf(CueId.class);
        private final Set<AlarmId> raised = EnumSet.noneOf(AlarmId.class);
        private State state;
        private Tally tally;
        private Instant at = START;
        private double celsius;

        Watched(Setup setup, double celsius) {
            this.setup = setup;
            this.celsius = celsius;
            state = Engine.start(setup, START);
            tally = Tally.start(state);
        }

        void feed(Input input) {
            State before = state;
            Step step = Engine.step(setup, state, input);
            state = step.after();
            tally = tally.with(setup.recipe(), before, step);
            for (Event event : step.events()) {
                if (event instanceof Event.CueGiven cue) given.add(cue.cue());
                if (event instanceof Event.AlarmRaised alarm) raised.add(alarm.alarm());
            }
        }

        /** A straight line, two readings a second, a little noise so that nothing looks stuck. */
        void goes(double kelvinPerMinute, Duration time) {
            for (long i = 0; i < 2 * time.toSeconds(); i++) {
                at = at.plusMillis(500);
                celsius += kelvinPerMinute / 120;
                feed(StoryKitchen.reading(at, celsius + 0.01 * (i % 3 - 1)));
            }
        }

        SeedWord word() {
            return state.crystals().orElseThrow().watch().spoken().word().orElseThrow();
        }
    }

    private static Setup beginning(Beginning beginning) {
        return TestRecipes.setup().withBeginning(beginning);
    }

    private static Watched held(Warmth warmth) {
        Holding hour = new Holding(Duration.ofMinutes(60), warmth);
        Watched held = new Watched(TestRecipes.setup().withHolding(Optional.of(hour)), 31.6);
        held.feed(new PhaseConfirmed(START, Phase.WORK));
        held.goes(0, Duration.ofMinutes(1));
        assertTrue(held.state.cues().held().since().isPresent());
        return held;
    }

    @Test
    void whatIsInTemperIsOnlyWarmedAndNobodyCallsItEnoughAtOnce() {
        Watched kept = new Watched(beginning(new Beginning.InTemper()), 28.6);
        kept.feed(new StirringSaid(START, StirringSaid.Stirring.STIRRED));
        kept.goes(-0.4, Duration.ofMinutes(1));
        assertEquals(Phase.REWARM, kept.state.batch().phase());
        assertTrue(kept.given.contains(CueId.WARM_UP));
        assertFalse(kept.raised.contains(AlarmId.OVER_COOLED));
        assertEquals(SeedWord.DOUBTFUL, kept.word());
        kept.feed(new SampleProved(kept.at, SampleProved.Verdict.IN_TEMPER));
        kept.goes(0, Duration.ofSeconds(20));
        assertEquals(SeedWord.ENOUGH, kept.word());
    }

    /** In temper, on the table for a minute as it came, then over warm water. */
    private static Watched overTheBath() {
        Watched kept = new Watched(beginning(new Beginning.InTemper()), 28);
        kept.feed(new BowlMoved(START, Place.TABLE));
        kept.goes(-0.3, Duration.ofMinutes(1));
        kept.feed(new BowlMoved(kept.at, Place.BATH));
        return kept;
    }

    @Test
    void waterThatHasGrownTooCoolForAStayIsSaidUntilItIsWarmed() {
        Watched kept = overTheBath();
        kept.goes(0.8, Duration.ofMinutes(2));
        kept.goes(0.1, Duration.ofSeconds(90));
        assertFalse(kept.given.contains(CueId.WEAK_BATH), "before a thick wall could have answered");
        kept.goes(0.1, Duration.ofMinutes(3));
        assertTrue(kept.state.cues().isOpen(CueId.WEAK_BATH), kept.given.toString());
        assertEquals(
                0.1, kept.state.cues().open().get(CueId.WEAK_BATH).figure().orElseThrow(), 0.02, "kelvin in a minute");
        kept.goes(0.6, Duration.ofSeconds(70));
        assertFalse(kept.state.cues().isOpen(CueId.WEAK_BATH), "warmed, and said all the same");
    }

    @Test
    void aSlowStayThatComesToTheRangeIsLeftAlone() {
        Watched kept = overTheBath();
        kept.goes(0.4, Duration.ofMinutes(9));
        assertFalse(kept.given.contains(CueId.WEAK_BATH), kept.given.toString());
        assertTrue(kept.celsius > kept.setup.recipe().work().range().lowCelsius());
    }

    @Test
    void heatThatCostsItIsWarnedOfFromTheFirstReadings() {
        Watched kept = new Watched(beginning(new Beginning.InTemper()), 31);
        kept.goes(2.5, Duration.ofSeconds(75));
        assertTrue(kept.raised.contains(AlarmId.MELT_OUT), kept.raised.toString());
        Watched whole = new Watched(TestRecipes.setup(), 31);
        whole.goes(2.5, Duration.ofSeconds(75));
        assertEquals(Set.of(), whole.raised);
    }

    @Test
    void neverCooledIsNoFaultOfWhatCameInTemper() {
        Watched kept = new Watched(beginning(new Beginning.InTemper()), 29.5);
        kept.goes(1, Duration.ofMinutes(2));
        assertEquals(Verdict.IN_RANGE, kept.tally.verdict(kept.setup.recipe()));
    }

    @Test
    void barsThatFailedAreNotTakenForABatchThatCoolsAlready() {
        Watched again = new Watched(beginning(new Beginning.Again("2026-01-31-101500-dark")), 37.5);
        Watched whole = new Watched(TestRecipes.setup(), 37.5);
        again.goes(-1.5, Duration.ofMinutes(2));
        whole.goes(-1.5, Duration.ofMinutes(2));
        assertEquals(Phase.MELT, again.state.batch().phase());
        assertEquals(Phase.COOL, whole.state.batch().phase());
    }

    @Test
    void sentIntoTheColdTooSoonTheyAreCalledBack() {
        Watched again = new Watched(beginning(new Beginning.Again("2026-01-31-101500-dark")), 38);
        again.goes(0.5, Duration.ofMinutes(1));
        again.feed(new BowlMoved(again.at, Place.COLD_WATER));
        again.goes(-1, Duration.ofSeconds(20));
        assertTrue(again.given.contains(CueId.MELT_FIRST), again.given.toString());
    }

    @Test
    void aBoxThatIsTooCoolIsToBeTurnedUpAndNoTouchIsAskedFor() {
        Watched box = held(Warmth.BOX);
        box.goes(-0.05, Duration.ofMinutes(9));
        assertTrue(box.given.contains(CueId.BOX_WARMER), box.given.toString());
        assertFalse(box.given.contains(CueId.TOUCH_OF_WARMTH));
    }

    @Test
    void warmAirIsAskedForInSecondsAndWhatItGaveIsLearnedApart() {
        Watched air = held(Warmth.AIR);
        for (int i = 0; i < 60 && !air.given.contains(CueId.TOUCH_OF_WARM_AIR); i++)
            air.goes(-0.2, Duration.ofSeconds(3));
        assertTrue(air.given.contains(CueId.TOUCH_OF_WARM_AIR), air.given.toString());
        assertFalse(air.given.contains(CueId.TOUCH_OF_WARMTH));
        air.goes(0, Duration.ofSeconds(4));
        air.goes(2, Duration.ofSeconds(15));
        air.goes(-0.2, Duration.ofSeconds(40));
        assertEquals(1, air.state.cues().dips().air().dips());
        assertEquals(0, air.state.cues().dips().response().dips());
    }

    @Test
    void theHourEndsWithAWord() {
        Watched box = held(Warmth.BOX);
        box.goes(0, Duration.ofMinutes(60));
        assertTrue(box.given.contains(CueId.HOLD_OVER));
        assertEquals(1, box.state.cues().held().insideFraction(), 1e-9);
        assertFalse(box.given.contains(CueId.BOX_WARMER) || box.given.contains(CueId.BOX_COOLER));
    }
}
