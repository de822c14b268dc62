package fifthform.curves.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.StoryMaker.Keys;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.ProbeTakenOut;
import fifthform.curves.phase.Melted;
import fifthform.curves.recipe.Phase;
import fifthform.curves.situation.ProbePlace;
import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Alarms of heat rest on what was done to the crystals, melted and then cooled below the working range, not on keys that
 * may be forgotten nor on a phase that may be wrong.
 */
class HeatAlarmsWithoutPhasesTest {
    private static final double LIMIT_CELSIUS = TestRecipes.dark().meltOut().limitCelsius();
    private static final Set<AlarmId> OF_HEAT =
            EnumSet.of(AlarmId.HEADING_OVER, AlarmId.OVER_RANGE, AlarmId.NEAR_MELT_OUT, AlarmId.MELT_OUT);

    private static StoryMaker hotKitchen(double celsius) {
        StoryKitchen kitchen = new StoryKitchen(StoryMaker.START, celsius, 200, 0.2, 4);
        kitchen.put(Place.BATH, 54);
        return new StoryMaker(kitchen, TestRecipes.setup(), Keys.SILENT);
    }

    private static List<AlarmId> ofHeat(StoryMaker maker) {
        return maker.raised().stream()
                .map(Event.AlarmRaised::alarm)
                .filter(OF_HEAT::contains)
                .toList();
    }

    @ParameterizedTest
    @ValueSource(doubles = {24, 31, 31.6, 33})
    void aMeltIsNoRewarmHoweverWarmItBegins(double celsius) {
        StoryMaker maker = hotKitchen(celsius);
        maker.watchesUntil(46);
        assertEquals(List.of(), maker.phases());
        assertEquals(List.of(), ofHeat(maker));
    }

    /** Twenty seconds in the air of a cool kitchen, and no key says so. */
    @ParameterizedTest
    @ValueSource(doubles = {33, 37, 42})
    void aProbeThatIsOutForAMomentDuringTheMeltIsNoCooling(double celsius) {
        StoryMaker maker = hotKitchen(24);
        maker.watchesUntil(celsius);
        double tip = celsius;
        for (int i = 0; i < 40; i++) {
            tip += (21 - tip) / 96;
            maker.feeds(StoryKitchen.reading(maker.kitchen.read().at(), tip));
        }
        maker.watches(Duration.ofMinutes(1));
        maker.watchesUntil(46);
        assertEquals(Phase.MELT, maker.state.batch().phase());
        assertEquals(List.of(), ofHeat(maker));
    }

    /** The keys say cold water and nothing more; the bowl goes back over a hot bath, and nobody lifts it. */
    @ParameterizedTest
    @EnumSource
    void aRewarmThatNoKeyToldOfIsWarnedOf(Keys keys) {
        StoryMaker maker = hotKitchen(24);
        maker.watchesUntil(47);
        maker.kitchen.put(Place.COLD_WATER, 16);
        if (keys == Keys.PRESSED) maker.feeds(new BowlMoved(maker.kitchen.at(), Place.COLD_WATER));
        while (maker.kitchen.chocolateCelsius() > 29.5) maker.feeds(maker.kitchen.read());
        assertEquals(Phase.COOL, maker.state.batch().phase(), "never as cold as it should have been");
        maker.kitchen.put(Place.BATH, 41);
        maker.watchesUntil(LIMIT_CELSIUS);
        maker.watches(Duration.ofSeconds(10));
        assertEquals(Melted.COOLED_SINCE, maker.state.batch().melted());
        assertTrue(ofHeat(maker).contains(AlarmId.MELT_OUT), maker.raised().toString());
    }

    @Test
    void aProbeThatNobodySaidToBeBackIsSeenToBeBack() {
        StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.SILENT);
        maker.feeds(new ProbeTakenOut(maker.kitchen.at()));
        maker.watches(Duration.ofSeconds(20), read -> maker.feeds(StoryKitchen.reading(read.at(), 22)));
        assertEquals(ProbePlace.OUT, maker.state.probe());
        maker.watches(Duration.ofSeconds(40));
        assertEquals(
                ProbePlace.OUT, maker.state.probe(), "for less than three quarters of a minute nothing is believed");
        maker.watches(Duration.ofSeconds(20));
        assertEquals(ProbePlace.IN_THE_CHOCOLATE, maker.state.probe());
        maker.watchesUntil(LIMIT_CELSIUS);
        maker.watches(Duration.ofSeconds(10));
        assertTrue(ofHeat(maker).contains(AlarmId.MELT_OUT), maker.raised().toString());
    }

    /** A cup of warm water runs cool, and air is as warm as the room. */
    @ParameterizedTest
    @ValueSource(doubles = {21, 23.5})
    void aProbeThatLiesInTheAirStaysOut(double celsius) {
        StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.SILENT);
        maker.feeds(new ProbeTakenOut(maker.kitchen.at()));
        maker.watches(Duration.ofMinutes(5), read -> maker.feeds(StoryKitchen.reading(read.at(), celsius)));
        assertEquals(ProbePlace.OUT, maker.state.probe());
        assertFalse(ofHeat(maker).contains(AlarmId.MELT_OUT));
    }

    /** A small bowl over steam: so fast that its readings are doubted until it is far above melt-out. */
    @Test
    void heatThatWasDoubtedOnItsWayUpIsNoNewMelt() {
        StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.PRESSED);
        double[] tip = {30};
        maker.watches(Duration.ofSeconds(20), read -> maker.feeds(StoryKitchen.reading(read.at(), tip[0])));
        maker.watches(Duration.ofSeconds(25), read -> maker.feeds(StoryKitchen.reading(read.at(), tip[0] += 0.13)));
        assertTrue(tip[0] > LIMIT_CELSIUS + 2, "at " + tip[0]);
        assertFalse(ofHeat(maker).contains(AlarmId.MELT_OUT), "doubted all the way");
        maker.watches(Duration.ofSeconds(60), read -> maker.feeds(StoryKitchen.reading(read.at(), tip[0] += 0.004)));
        assertTrue(ofHeat(maker).contains(AlarmId.MELT_OUT), maker.raised().toString());
    }

    @Test
    void everyAlarmOfHeatSaysWhyInFigures() {
        StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.SILENT);
        maker.watchesUntil(LIMIT_CELSIUS + 0.5);
        for (AlarmId id : List.of(AlarmId.HEADING_OVER, AlarmId.NEAR_MELT_OUT, AlarmId.MELT_OUT)) {
            Event.AlarmRaised raised = maker.raised().stream()
                    .filter(e -> e.alarm() == id)
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(id + " not among " + maker.raised()));
            assertTrue(raised.reason().orElseThrow().figures().size() >= 4, raised.toString());
        }
    }

    /** Two answers of 1.5 s, one to the cue out of the cold water and one to the lift. */
    @Test
    void handsAreMeasuredByTheirAnswers() {
        StoryMaker quick = StoryMaker.melting(200, 0.2, Keys.PRESSED);
        quick.handsTake(Duration.ofMillis(1500));
        quick.obeysUntil(s -> s.batch().phase() == Phase.WORK, Duration.ofHours(2));
        Duration known = quick.state.batch().reaction().time(quick.setup.reactionTime());
        assertTrue(known.toMillis() < 2900, "measured " + known);
    }
}
