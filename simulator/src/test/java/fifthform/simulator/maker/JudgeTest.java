package fifthform.simulator.maker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.alarm.Priority;
import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event.AlarmRaised;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.engine.Event.PhaseChanged;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.recipe.Phase;
import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Who judges a forecast hears what is asked and nothing else. */
class JudgeTest {
    private static final Instant START = Instant.parse("2026-01-10T09:00:00Z");
    private static final Habits HABITS = new Habits(
            Duration.ofSeconds(2), 0.3, 47, 28, Duration.ofMinutes(3), 31.5, Duration.ofMinutes(6), Plan.USUAL);

    private Judging judge;
    private Instant at = START;
    private Spot spot = Spot.TABLE;
    private final List<Input> presses = new ArrayList<>();

    private JudgeTest() {}

    private void begin(Manner manner, Keys keys, long luck) {
        Rewarm rewarm = new Rewarm(manner, keys, Spot.WARM_BATH, 31, Duration.ofMinutes(10));
        judge = Makers.judge(rewarm, HABITS, new Luck(luck));
        at = START;
        presses.clear();
        see(48, 3);
        see(27, 181);
        // Who goes by touches first waits three minutes to be asked.
        see(28, manner == Manner.TOUCHES ? 185 : 5);
        assertEquals(Spot.WARM_BATH, spot);
        assertEquals(Phase.REWARM, judge.phase());
    }

    private void see(double celsius, double seconds) {
        for (int i = 0; i < 2 * seconds; i++) {
            Next next = judge.next(new KitchenView(at, OptionalDouble.of(celsius)));
            judge = (Judging) next.after();
            spot = next.acts().hands().spot();
            presses.addAll(next.acts().presses());
            at = at.plusMillis(500);
        }
    }

    private double secondsUntil(Spot wanted, double celsius) {
        Instant from = at;
        while (spot != wanted && Duration.between(from, at).toMinutes() < 20) see(celsius, 0.5);
        return Duration.between(from, at).toMillis() / 1000.0;
    }

    private void say(CueId cue, double figure) {
        judge = judge.told(new CueGiven(at, cue, OptionalDouble.of(figure)));
    }

    @Test
    void liftsOneToFourSecondsAfterItIsTold() {
        double shortest = 60;
        double longest = 0;
        for (int luck = 0; luck < 30; luck++) {
            begin(Manner.ONE_LIFT, Keys.NONE, luck);
            say(CueId.LIFT_NOW, 31.5);
            double seconds = secondsUntil(Spot.TABLE, 30);
            shortest = Math.min(shortest, seconds);
            longest = Math.max(longest, seconds);
        }
        assertTrue(shortest >= 1 && shortest < 2.5, "shortest " + shortest);
        assertTrue(longest <= 4.5 && longest > 3, "longest " + longest);
    }

    @Test
    void takesNoNoticeOfAnythingElse() {
        begin(Manner.ONE_LIFT, Keys.NONE, 1);
        say(CueId.GET_READY, 5);
        judge = judge.told(new AlarmRaised(at, AlarmId.HEADING_OVER, Priority.URGENT, OptionalDouble.of(33)));
        see(31, 60);
        assertEquals(Spot.WARM_BATH, spot);
        assertEquals(540, secondsUntil(Spot.TABLE, 31), 10, "patience of ten minutes");
    }

    @Test
    void whoStaysStaysWhateverIsSaid() {
        begin(Manner.STAYS_ON, Keys.NONE, 1);
        say(CueId.LIFT_NOW, 31.5);
        see(32, 30);
        assertEquals(Spot.WARM_BATH, spot);
        see(36.1, 1);
        assertEquals(Spot.TABLE, spot);
    }

    @Test
    void putsBackForAsLongAsItIsTold() {
        begin(Manner.TOUCHES, Keys.NONE, 3);
        say(CueId.LIFT_NOW, 31.5);
        secondsUntil(Spot.TABLE, 30);
        see(30, 20);
        say(CueId.PUT_BACK, 9);
        secondsUntil(Spot.WARM_BATH, 30);
        assertEquals(9, secondsUntil(Spot.TABLE, 30), 0.6);
    }

    private void hold(Manner manner) {
        Rewarm rewarm = new Rewarm(manner, Keys.NONE, Spot.WARM_BATH, 31, Duration.ofMinutes(10));
        judge = Makers.judge(rewarm, HABITS, new Luck(3));
        at = START;
        see(48, 3);
        see(27, 5);
        assertEquals(Spot.TABLE, spot);
        assertEquals(Phase.SEED, judge.phase());
    }

    @Test
    void whoIsToldToGoBackWhileItCoolsGoesBackIntoTheCold() {
        hold(Manner.TOUCHES);
        judge = judge.told(new PhaseChanged(at, Phase.MELT, Phase.COOL));
        say(CueId.PUT_BACK, 8);
        secondsUntil(Spot.COLD_WATER, 29);
        assertEquals(8, secondsUntil(Spot.TABLE, 29), 0.6);
        assertEquals(Phase.SEED, judge.phase());
        judge = judge.told(new PhaseChanged(at, Phase.COOL, Phase.SEED));
        say(CueId.CRYSTALS_ENOUGH, 5);
        assertTrue(secondsUntil(Spot.WARM_BATH, 28) < 5);
        assertEquals(Phase.WORK, judge.phase());
    }

    @Test
    void whoIsToldHowLongToStirOnDoesSoAndThenWaitsToBeAsked() {
        hold(Manner.TOUCHES);
        say(CueId.STIR_ON, 6);
        assertEquals(9 * 60, secondsUntil(Spot.WARM_BATH, 28), 10);
        hold(Manner.ONE_LIFT);
        say(CueId.STIR_ON, 6);
        assertEquals(3 * 60, secondsUntil(Spot.WARM_BATH, 28), 10);
    }

    @Test
    void keysComeLateAndOneInSevenNever() {
        int moves = 0;
        int told = 0;
        for (int luck = 0; luck < 60; luck++) {
            begin(Manner.ONE_LIFT, Keys.LATE, luck);
            moves += 4;
            told += (int) presses.stream().filter(p -> p instanceof BowlMoved).count();
        }
        assertEquals(6 / 7.0, told / (double) moves, 0.07);
    }
}
