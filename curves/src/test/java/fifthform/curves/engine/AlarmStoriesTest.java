package fifthform.curves.engine;

import static fifthform.curves.alarm.Condition.BETWEEN;
import static fifthform.curves.alarm.Condition.MET;
import static fifthform.curves.alarm.Condition.OVER;
import static fifthform.curves.alarm.Condition.UNKNOWN;
import static fifthform.curves.alarm.Priority.ADVISE;
import static fifthform.curves.alarm.Priority.PROMPT;
import static fifthform.curves.alarm.Priority.URGENT;
import static fifthform.curves.input.AlarmId.BATH_HOT;
import static fifthform.curves.input.AlarmId.HEADING_OVER;
import static fifthform.curves.input.AlarmId.HEADING_UNDER;
import static fifthform.curves.input.AlarmId.MELT_OUT;
import static fifthform.curves.input.AlarmId.NEAR_MELT_OUT;
import static fifthform.curves.input.AlarmId.NOT_RECORDING;
import static fifthform.curves.input.AlarmId.NO_READING;
import static fifthform.curves.input.AlarmId.OVER_RANGE;
import static fifthform.curves.input.AlarmId.PROBE_FAULT;
import static fifthform.curves.input.AlarmId.READING_DOUBTFUL;
import static fifthform.curves.input.AlarmId.TOO_COOL;
import static fifthform.curves.recipe.Phase.COOL;
import static fifthform.curves.recipe.Phase.MELT;
import static fifthform.curves.recipe.Phase.REST;
import static fifthform.curves.recipe.Phase.REWARM;
import static fifthform.curves.recipe.Phase.SEED;
import static fifthform.curves.recipe.Phase.WORK;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.input.AlarmId;
import fifthform.curves.recipe.Phase;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every transition of an alarm, in steps "what happens → what it is now, what the maker was told". The scheme is
 * ISA-18.2's (IEC 62682) as the design page retells it; the delays are those of the alarm each story is about.
 */
class AlarmStoriesTest {
    private static final Duration FIVE_MINUTES = Duration.ofMinutes(5);

    /** {@code over-range}: raised after 3 s, cleared after 10 s. */
    private static AlarmStory overRange() {
        return AlarmStory.about(OVER_RANGE, REWARM);
    }

    private static AlarmStory raised(AlarmId id) {
        return AlarmStory.about(id, REWARM).at(0, MET).at(3, MET);
    }

    @Test
    void isRaisedOnceItsConditionHasHeldForTheOnDelay() {
        overRange()
                .at(0, OVER)
                .is("quiet")
                .at(1, MET)
                .is("pending")
                .at(3.9, MET)
                .is("pending")
                .at(4, MET)
                .is("new", "raised over-range prompt")
                .at(5, MET)
                .is("new");
    }

    @Test
    void aConditionThatWaversBeginsItsOnDelayAgain() {
        overRange()
                .at(0, MET)
                .is("pending")
                .at(2, BETWEEN)
                .is("quiet")
                .at(2.5, MET)
                .is("pending")
                .at(4, MET)
                .is("pending")
                .at(5.5, MET)
                .is("new", "raised over-range prompt");
    }

    @Test
    void isKnownOnceSeenAndSoundsNoMore() {
        raised(OVER_RANGE).is("new", "raised over-range prompt").seen(4).is("known", "seen over-range");
    }

    @Test
    void whatIsSeenTwiceIsToldOnce() {
        raised(OVER_RANGE).seen(4).seen(5).is("known");
    }

    @Test
    void clearsOnceItsConditionHasBeenOverForTheOffDelayNewOrKnown() {
        raised(OVER_RANGE)
                .at(10, OVER)
                .is("new")
                .at(19, OVER)
                .is("new")
                .at(20, OVER)
                .is("quiet", "cleared over-range");
        raised(OVER_RANGE).seen(4).at(10, OVER).is("known").at(20, OVER).is("quiet", "cleared over-range");
    }

    @Test
    void theDeadbandNeitherRaisesNorClears() {
        raised(OVER_RANGE).at(10, BETWEEN).is("new").at(100, BETWEEN).is("new");
        raised(OVER_RANGE)
                .at(10, OVER)
                .at(15, BETWEEN)
                .at(16, OVER)
                .at(25, OVER)
                .is("new")
                .at(26, OVER)
                .is("quiet", "cleared over-range");
    }

    @Test
    void aLatchingAlarmThatNobodySawIsPassedUntilSomebodyDoes() {
        raised(NEAR_MELT_OUT)
                .at(10, OVER)
                .at(20, OVER)
                .is("passed", "cleared near-melt-out")
                .at(500, OVER)
                .is("passed")
                .seen(501)
                .is("quiet");
    }

    @Test
    void aLatchingAlarmThatWasSeenClearsLikeAnyOther() {
        raised(NEAR_MELT_OUT).seen(4).at(10, OVER).at(20, OVER).is("quiet", "cleared near-melt-out");
    }

    @Test
    void aPassedAlarmWhoseConditionReturnsIsNewAtOnce() {
        raised(NEAR_MELT_OUT)
                .at(10, OVER)
                .at(20, OVER)
                .at(30, BETWEEN)
                .is("passed")
                .at(31, MET)
                .is("new", "raised near-melt-out urgent");
    }

    @Test
    void withoutAReadingATemperatureAlarmStaysAsItIs() {
        overRange().at(0, OVER).at(1, UNKNOWN).is("quiet").at(99, UNKNOWN).is("quiet");
        overRange().at(0, MET).at(60, UNKNOWN).is("pending");
        raised(OVER_RANGE).at(60, UNKNOWN).is("new");
        raised(OVER_RANGE).at(5, OVER).at(60, UNKNOWN).is("quiet", "cleared over-range");
        raised(OVER_RANGE).seen(4).at(60, UNKNOWN).is("known");
        raised(NEAR_MELT_OUT).at(10, OVER).at(20, OVER).at(60, UNKNOWN).is("passed");
    }

    @Test
    void aKnownUrgentAlarmIsRaisedAgainEveryMinuteThreeTimesAtMost() {
        AlarmStory story = raised(NEAR_MELT_OUT).seen(10);
        story.at(69, MET).is("known").at(70, MET).is("new", "raised near-melt-out urgent");
        story.seen(80).at(140, MET).is("new", "raised near-melt-out urgent");
        story.seen(150).at(210, MET).is("new", "raised near-melt-out urgent");
        story.seen(220).at(280, MET).is("known").at(3000, MET).is("known");
    }

    @Test
    void aKnownAlarmThatIsNotUrgentIsNotRaisedAgain() {
        raised(OVER_RANGE).seen(10).at(3000, MET).is("known");
    }

    @Test
    void aRiseInPriorityIsNewsAndAFallIsNot() {
        AlarmStory story = AlarmStory.about(HEADING_OVER, REWARM)
                .at(0, MET, PROMPT)
                .at(1, MET, PROMPT)
                .is("new", "raised heading-over prompt")
                .seen(2);
        story.at(3, MET, URGENT).is("new", "raised heading-over urgent").seen(4).is("known", "seen heading-over");
        story.at(5, MET, PROMPT).is("known").at(6, MET, URGENT).is("known");
        assertEquals(URGENT, story.priority(), "the highest it has had since it was raised");
    }

    /** The highest since it was last seen: who has seen it as prompt is told when it is urgent again. */
    @Test
    void whatIsSeenAtALowerPriorityShowsThatOneAndRisesAnew() {
        AlarmStory story =
                AlarmStory.about(HEADING_OVER, REWARM).at(0, MET, URGENT).at(1, MET, URGENT);
        story.at(2, MET, PROMPT).at(12, MET, PROMPT).is("new");
        assertEquals(URGENT, story.priority(), "not seen yet");
        story.seen(13).is("known", "seen heading-over");
        assertEquals(PROMPT, story.priority());
        story.at(14, MET, URGENT).is("new", "raised heading-over urgent");
    }

    @Test
    void aPriorityThatWaversIsToldOnce() {
        AlarmStory story =
                AlarmStory.about(HEADING_OVER, REWARM).at(0, MET, URGENT).at(1, MET, URGENT);
        story.at(2, MET, PROMPT).seen(3).at(4, MET, URGENT).is("known").at(5, MET, PROMPT);
        story.at(14.9, MET, PROMPT).at(15.1, MET, URGENT).is("known");
        assertEquals(URGENT, story.priority());
    }

    @Test
    void whatWasSetAsideAndBecomesUrgentComesBackAtOnce() {
        AlarmStory story = AlarmStory.about(HEADING_OVER, REWARM)
                .at(0, MET, PROMPT)
                .at(1, MET, PROMPT)
                .setAside(2, FIVE_MINUTES);
        story.at(3, MET, PROMPT).is("set aside").at(4, MET, URGENT).is("new", "raised heading-over urgent");
    }

    @Test
    void nothingIsSetAsideForLessThanAMinute() {
        raised(OVER_RANGE).setAside(10, Duration.ofSeconds(59)).is("new");
        raised(OVER_RANGE).setAside(10, Duration.ofMinutes(1)).is("set aside", "cleared over-range");
    }

    /** Neither time nor a wrong phase decides about the batch; a bowl cooled down to new crystals does. */
    @Test
    void aMeltOutOutlastsEveryPhaseButTheOneThatMakesNewCrystals() {
        AlarmStory story = raised(MELT_OUT).seen(5);
        for (Phase phase : List.of(MELT, COOL, REST, WORK))
            story.enters(phase).at(20, OVER).is("known");
        story.enters(SEED).at(30, OVER).is("held back: NOT_IN_THIS_PHASE", "cleared melt-out");
    }

    @Test
    void aRiseWhileStillNewIsToldWithItsPriority() {
        AlarmStory.about(HEADING_OVER, REWARM)
                .at(0, MET, PROMPT)
                .at(1, MET, PROMPT)
                .at(2, MET, URGENT)
                .is("new", "raised heading-over urgent");
    }

    @Test
    void comesBackAsNewWhenItsShelfRunsOutWhileTheConditionHolds() {
        AlarmStory story = raised(OVER_RANGE).setAside(10, FIVE_MINUTES).is("set aside", "cleared over-range");
        story.at(309, MET).is("set aside").at(310, MET).is("new", "raised over-range prompt");
    }

    @Test
    void isQuietWhenItsShelfRunsOutAndNothingIsWrong() {
        raised(OVER_RANGE).setAside(10, FIVE_MINUTES).at(20, OVER).at(310, OVER).is("quiet");
        raised(OVER_RANGE)
                .setAside(10, FIVE_MINUTES)
                .at(20, OVER)
                .at(310, UNKNOWN)
                .is("quiet");
    }

    @Test
    void isKnownWhenTheMakerTakesItBackFromTheShelf() {
        raised(OVER_RANGE)
                .setAside(10, FIVE_MINUTES)
                .setAside(20, Duration.ZERO)
                .is("known");
        raised(OVER_RANGE)
                .setAside(10, FIVE_MINUTES)
                .at(15, OVER)
                .setAside(20, Duration.ZERO)
                .is("quiet");
    }

    @Test
    void anUrgentAlarmIsNeverSetAside() {
        raised(NEAR_MELT_OUT).setAside(10, FIVE_MINUTES).is("new");
        raised(MELT_OUT).seen(5).setAside(10, FIVE_MINUTES).is("known");
    }

    @Test
    void isSetAsideForAQuarterOfAnHourAtMost() {
        raised(OVER_RANGE).setAside(10, Duration.ofMinutes(15)).is("set aside", "cleared over-range");
        raised(OVER_RANGE).setAside(10, Duration.ofMinutes(15).plusSeconds(1)).is("new");
    }

    @Test
    void whatIsQuietCannotBeSetAside() {
        overRange().at(0, OVER).setAside(1, FIVE_MINUTES).is("quiet");
    }

    @Test
    void onlyTwoAreSetAsideAtOnce() {
        AlarmStory story = AlarmStory.about(TOO_COOL, WORK)
                .says(NOT_RECORDING, MET)
                .says(HEADING_UNDER, MET)
                .at(0, MET)
                .at(10, MET);
        story.setAside(11, NOT_RECORDING, FIVE_MINUTES).setAside(12, HEADING_UNDER, FIVE_MINUTES);
        assertEquals("set aside", story.of(NOT_RECORDING));
        assertEquals("set aside", story.of(HEADING_UNDER));
        story.setAside(13, FIVE_MINUTES).is("new");
        story.setAside(14, NOT_RECORDING, Duration.ZERO)
                .setAside(15, FIVE_MINUTES)
                .is("set aside", "cleared too-cool");
    }

    @Test
    void aPhaseItIsNotMeantForClosesIt() {
        raised(OVER_RANGE).enters(COOL).at(10, MET).is("held back: NOT_IN_THIS_PHASE", "cleared over-range");
    }

    @Test
    void aPhaseItIsMeantForBeginsFromScratchWithTheWholeOnDelay() {
        raised(OVER_RANGE)
                .enters(COOL)
                .at(10, MET)
                .enters(REWARM)
                .at(100, MET)
                .is("pending")
                .at(102.9, MET)
                .is("pending")
                .at(103, MET)
                .is("new", "raised over-range prompt");
    }

    @ParameterizedTest
    @EnumSource(names = {"NEAR_MELT_OUT", "MELT_OUT"})
    void theWorseAlarmSpeaksForOverRangeAndHeadingOver(AlarmId worse) {
        AlarmStory story = raised(OVER_RANGE).says(HEADING_OVER, MET).at(5, MET);
        assertEquals("pending", story.of(HEADING_OVER));
        story.says(worse, MET).at(6).at(7);
        assertEquals("held back: WORSE_ALARM_STANDS", story.of(OVER_RANGE));
        assertEquals("held back: WORSE_ALARM_STANDS", story.of(HEADING_OVER));
    }

    @Test
    void aPassedAlarmSpeaksForNobody() {
        AlarmStory story = AlarmStory.about(NEAR_MELT_OUT, REWARM)
                .says(OVER_RANGE, MET)
                .at(0, MET)
                .at(3, MET);
        assertEquals("held back: WORSE_ALARM_STANDS", story.of(OVER_RANGE));
        story.at(10, OVER).at(20, OVER).is("passed", "cleared near-melt-out");
        assertEquals("pending", story.of(OVER_RANGE));
        story.at(23, OVER).is("passed", "raised over-range prompt");
    }

    /** The latch keeps a melt-out on the screen until the maker chooses; it must not silence the next overshoot. */
    @Test
    void aMeltOutThatIsLongOverSpeaksForNobodyEither() {
        AlarmStory story = AlarmStory.about(MELT_OUT, REWARM)
                .says(HEADING_OVER, MET)
                .at(0, MET)
                .seen(1);
        assertEquals("held back: WORSE_ALARM_STANDS", story.of(HEADING_OVER));
        story.at(10, OVER).at(19, OVER);
        assertEquals("held back: WORSE_ALARM_STANDS", story.of(HEADING_OVER));
        story.at(20, OVER).at(21, OVER).is("known", "raised heading-over prompt");
    }

    @Test
    void theWayDownFromAMeltOutIsNoNewsUntilItRisesAnew() {
        AlarmStory story = AlarmStory.about(MELT_OUT, REWARM)
                .says(OVER_RANGE, MET)
                .at(0, MET)
                .seen(1);
        story.at(10, OVER).at(20, OVER).at(60, OVER).is("known");
        assertEquals("held back: WORSE_ALARM_STANDS", story.of(OVER_RANGE));
        story.says(OVER_RANGE, OVER).at(70, OVER).says(OVER_RANGE, MET).at(80, OVER);
        story.at(83, OVER).is("known", "raised over-range prompt");
    }

    @Test
    void nothingAsksForWarmthUntilAMeltOutIsDecidedAbout() {
        AlarmStory story = AlarmStory.about(MELT_OUT, WORK)
                .says(TOO_COOL, MET)
                .says(HEADING_UNDER, MET)
                .at(0, MET)
                .at(10, OVER)
                .at(60, OVER);
        assertEquals("held back: WORSE_ALARM_STANDS", story.of(TOO_COOL));
        assertEquals("held back: WORSE_ALARM_STANDS", story.of(HEADING_UNDER));
        story.chosen(61).at(62, OVER).at(80, OVER);
        assertEquals("new", story.of(TOO_COOL));
        assertEquals("new", story.of(HEADING_UNDER));
    }

    @ParameterizedTest
    @EnumSource(names = {"PROBE_FAULT", "NO_READING", "READING_DOUBTFUL"})
    void noForecastAlarmWhileAMeasurementAlarmStands(AlarmId measurement) {
        AlarmStory story =
                AlarmStory.about(HEADING_UNDER, WORK).says(HEADING_OVER, MET).says(TOO_COOL, MET);
        story.at(0, MET).at(10, MET);
        assertEquals("new", story.of(HEADING_OVER));
        story.says(measurement, MET).at(11).at(13);
        story.is(
                "held back: NO_TRUE_READING",
                measurement == READING_DOUBTFUL
                        ? new String[] {
                            "cleared heading-over", "cleared heading-under", "raised reading-doubtful prompt"
                        }
                        : new String[0]);
        assertEquals("held back: NO_TRUE_READING", story.of(HEADING_OVER));
        assertEquals("new", story.of(TOO_COOL), "what was measured before stays");
    }

    @Test
    void aMeltOutEndsByChoiceOnly() {
        raised(MELT_OUT).at(10, OVER).at(1000, OVER).is("new").seen(1001).is("known", "seen melt-out");
        raised(MELT_OUT)
                .seen(5)
                .at(10, OVER)
                .at(1000, OVER)
                .is("known")
                .chosen(1001)
                .is("quiet", "cleared melt-out");
        raised(MELT_OUT).at(10, OVER).chosen(20).is("quiet", "cleared melt-out");
    }

    @Test
    void aChoiceEndsNoOtherAlarm() {
        raised(NEAR_MELT_OUT).chosen(5).is("new");
    }

    /** Its condition still holds: the choice is kept, and the alarm says once more that it is too hot. */
    @Test
    void aMeltOutChosenWhileStillTooHotIsRaisedAgain() {
        raised(MELT_OUT).chosen(5).is("new", "raised melt-out urgent");
    }

    @Test
    void anInstrumentAlarmHoldsInEveryPhase() {
        AlarmStory story =
                AlarmStory.about(PROBE_FAULT, COOL).says(NO_READING, OVER).at(0, MET);
        story.is("new", "raised probe-fault prompt").enters(REWARM).at(1, MET, URGENT);
        story.is("new", "raised probe-fault urgent");
    }

    @Test
    void aHotBathIsAdviceUntilTheRewarmLeavesLessTime() {
        AlarmStory story = AlarmStory.about(BATH_HOT, WORK).at(0, MET, ADVISE).at(10, MET, ADVISE);
        story.is("new", "raised bath-hot advise").seen(11).at(12, MET, PROMPT).is("new", "raised bath-hot prompt");
    }
}
