package fifthform.curves.setting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.setting.StoreEvent.Kind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Cupboards, by the hour. */
class StoreWatchTest {
    private static final Instant START = Instant.parse("2026-06-01T00:00:00Z");

    private StoreWatch watch = StoreWatch.START;
    private final List<StoreEvent> heard = new ArrayList<>();
    private final List<StoreMinute> log = new ArrayList<>();
    private long second;

    private void read(double hours, DoubleUnaryOperator celsiusAtHour) {
        long until = second + Math.round(3600 * hours);
        for (; second < until; second += 20) {
            hear(new SetInput.Reading(START.plusSeconds(second), celsiusAtHour.applyAsDouble(second / 3600.0)));
        }
    }

    private void hear(SetInput input) {
        take(watch.next(input));
    }

    private void take(StoreWatch.Step step) {
        heard.addAll(step.events());
        step.minute().ifPresent(log::add);
        watch = step.after();
    }

    private List<Kind> kinds() {
        return heard.stream().map(StoreEvent::kind).toList();
    }

    @Test
    void aSteadyCupboardSaysNothing() {
        read(72, h -> 17.5 + 0.8 * Math.sin(2 * Math.PI * h / 24) + 0.05 * Math.sin(500 * h));
        assertEquals(List.of(), heard);
        assertEquals(72 * 60 - 1, log.size());
        assertEquals(1.6, watch.record().largestSwingKelvin(), 0.1);
        assertEquals(72, watch.record().watched().toMinutes() / 60.0, 0.1);
    }

    @Test
    void aClimbIsToldBeforeTwentyFourWithTheTimeThatIsLeft() {
        read(3, h -> 20);
        read(8, h -> 20 + 0.8 * (h - 3));
        assertEquals(List.of(Kind.NEARLY_WARM, Kind.SWINGS, Kind.WARM), kinds());
        StoreEvent near = heard.get(0);
        StoreEvent warm = heard.get(2);
        Duration told = near.time().orElseThrow();
        Duration was = Duration.between(near.at(), warm.at());
        assertTrue(was.toMinutes() >= 100, was.toString());
        assertEquals(was.toMinutes(), told.toMinutes(), 12);
    }

    @Test
    void aRoomThatCreepsIsToldOneKelvinBefore() {
        read(40, h -> 21 + 0.08 * h);
        assertEquals(Kind.NEARLY_WARM, heard.get(0).kind());
        assertEquals(23, heard.get(0).celsius().orElseThrow(), 0.05);
    }

    @Test
    void hoursAboveEachLimitAreCountedAndItIsOverWhenItIsCool() {
        read(2, h -> 19);
        read(3, h -> 26);
        read(0.5, h -> 29);
        read(4, h -> 19);
        assertEquals(3.5, watch.record().aboveLimit().toMinutes() / 60.0, 0.05);
        assertEquals(3.5, watch.record().aboveRecommended().toMinutes() / 60.0, 0.05);
        assertEquals(0.5, watch.record().melting().toMinutes() / 60.0, 0.05);
        assertEquals(1, kinds().stream().filter(k -> k == Kind.WARM).count(), kinds().toString());
        assertTrue(kinds().contains(Kind.MELTING));
        assertEquals(Kind.COOL_AGAIN, kinds().get(kinds().size() - 1));
    }

    @Test
    void aSwingWithinADayIsToldAndASlowSeasonIsNot() {
        read(48, h -> 17 + 2 * Math.sin(2 * Math.PI * h / 24));
        assertTrue(kinds().contains(Kind.SWINGS), kinds().toString());
        heard.clear();
        watch = StoreWatch.START;
        second = 0;
        read(96, h -> 16 + 0.04 * h);
        assertFalse(kinds().contains(Kind.SWINGS), kinds().toString());
    }

    @Test
    void aFridgeIsToldForTheWaterThatComesWhenItIsOpened() {
        read(1, h -> 6);
        assertEquals(List.of(Kind.COLD), kinds());
    }

    @Test
    void aPauseIsToldAndCountsNowhere() {
        read(2, h -> 25);
        long before = watch.record().aboveLimit().toMinutes();
        second += 5 * 3600;
        hear(new SetInput.Passed(START.plusSeconds(second)));
        hear(new SetInput.Passed(START.plusSeconds(second)));
        read(0.2, h -> 25);
        assertEquals(1, kinds().stream().filter(k -> k == Kind.SILENT).count());
        assertTrue(kinds().contains(Kind.READS_AGAIN));
        assertTrue(watch.record().aboveLimit().toMinutes() - before < 15);
        assertEquals(5, watch.record().unread().toMinutes() / 60.0, 0.1);
    }

    @Test
    void aLogOfMinutesSaysTheSameWhenItIsReadAgain() {
        read(3, h -> 20);
        read(6, h -> 20 + 0.9 * (h - 3));
        read(2, h -> 18);
        take(watch.end());
        StoreWatch again = StoreWatch.START;
        List<StoreEvent> said = new ArrayList<>();
        for (StoreMinute minute : log) {
            StoreWatch.Step step = again.next(minute);
            said.addAll(step.events());
            again = step.after();
        }
        assertEquals(heard, said);
        assertEquals(watch.record(), again.record());
    }
}
