package fifthform.monitor.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.alarm.Priority;
import fifthform.curves.alarm.Side;
import fifthform.curves.cue.CueId;
import fifthform.curves.input.AlarmId;
import fifthform.monitor.sound.Schedule.Ringing;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;

/** Repeats as the design's table has them, with times handed in. */
class ScheduleTest {
    private static final Instant START = Instant.parse("2026-01-01T10:00:00Z");
    private static final Ringing URGENT = new Ringing(AlarmId.NEAR_MELT_OUT, Priority.URGENT, Side.TOO_HOT);
    private static final Ringing PROMPT = new Ringing(AlarmId.HEADING_OVER, Priority.PROMPT, Side.TOO_HOT);
    private static final Ringing OTHER_PROMPT = new Ringing(AlarmId.BATH_HOT, Priority.PROMPT, Side.TOO_HOT);
    private static final Ringing ADVISE = new Ringing(AlarmId.HEADING_UNDER, Priority.ADVISE, Side.TOO_COLD);

    @Test
    void urgentEveryThreeSeconds() {
        assertEquals(List.of(0, 3, 6, 9), heard(10, second -> List.of(URGENT)));
    }

    @Test
    void promptEveryTenSecondsThenEveryThirty() {
        assertEquals(List.of(0, 10, 20, 50, 80), heard(100, second -> List.of(PROMPT)));
    }

    @Test
    void adviseOnce() {
        assertEquals(List.of(0), heard(300, second -> List.of(ADVISE)));
    }

    @Test
    void seenOrGoneIsSilentAtOnceAndNewRingsAgain() {
        assertEquals(
                List.of(0, 3, 10, 13), heard(15, second -> second < 5 || second >= 10 ? List.of(URGENT) : List.of()));
    }

    @Test
    void aSecondAlarmOfTheSamePrioritySoundsAtOnce() {
        assertEquals(
                List.of(0, 4, 14, 24, 54),
                heard(60, second -> second < 4 ? List.of(PROMPT) : List.of(PROMPT, OTHER_PROMPT)));
    }

    @Test
    void theLessPressingWaitsAndIsNotForgotten() {
        assertEquals(List.of(0, 3, 5), heard(12, second -> second < 5 ? List.of(URGENT, ADVISE) : List.of(ADVISE)));
    }

    @Test
    void anAdviseHeardBeforeALouderAlarmIsNotHeardAgain() {
        assertEquals(
                List.of(0, 2, 5),
                heard(12, second -> second >= 2 && second < 6 ? List.of(URGENT, ADVISE) : List.of(ADVISE)));
    }

    @Test
    void aPromptHeardBeforeALouderAlarmWaitsAWholeGap() {
        assertEquals(
                List.of(0, 2, 5, 16),
                heard(20, second -> second >= 2 && second < 6 ? List.of(URGENT, PROMPT) : List.of(PROMPT)));
    }

    @Test
    void aRiseInPrioritySoundsAtOnce() {
        Ringing risen = new Ringing(AlarmId.HEADING_OVER, Priority.URGENT, Side.TOO_HOT);
        assertEquals(List.of(0, 4, 7), heard(10, second -> List.of(second < 4 ? PROMPT : risen)));
    }

    @Test
    void aCueSoundsOnceAfterTheAlarm() {
        Schedule.Step step = Schedule.SILENT.next(List.of(URGENT), List.of(CueId.LIFT_NOW), START);
        assertEquals(List.of(Call.of(Priority.URGENT, Side.TOO_HOT), Call.CUE), step.play());
        assertEquals(
                List.of(),
                step.after()
                        .next(List.of(URGENT), List.of(), START.plusSeconds(1))
                        .play());
    }

    /** Seconds at which something sounded, asked each second. */
    private static List<Integer> heard(int seconds, IntFunction<List<Ringing>> ringing) {
        List<Integer> heard = new ArrayList<>();
        Schedule schedule = Schedule.SILENT;
        for (int second = 0; second < seconds; second++) {
            Schedule.Step step = schedule.next(ringing.apply(second), List.of(), START.plusSeconds(second));
            schedule = step.after();
            for (int i = 0; i < step.play().size(); i++) heard.add(second);
        }
        return heard;
    }
}
