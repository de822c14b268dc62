package fifthform.curves.setting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.setting.SetEvent.Kind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Moulds in a fridge, a cupboard and a warm room. */
class SettingWatchTest {
    private static final Instant START = Instant.parse("2026-02-01T18:00:00Z");
    private static final Optional<Condensation> ROOM = Optional.of(Condensation.in(22, 55));

    private SettingWatch watch;
    private final List<SetEvent> heard = new ArrayList<>();
    private double second;

    private void in(CoolingPlace place, double celsius, Optional<Condensation> air) {
        watch = SettingWatch.of(SetPlan.of(place, OptionalDouble.of(celsius), SetTime.Air.STILL, 8, air));
    }

    /** Reads twice a second's curve for so many minutes; the curve is by the minute. */
    private void read(double minutes, DoubleUnaryOperator celsius) {
        double from = second;
        for (; second < from + 60 * minutes; second += 2) {
            hear(new SetInput.Reading(at(), celsius.applyAsDouble((second - from) / 60)));
        }
    }

    private Instant at() {
        return START.plusMillis(Math.round(1000 * second));
    }

    private void hear(SetInput input) {
        SettingWatch.Step step = watch.next(input);
        heard.addAll(step.events());
        watch = step.after();
    }

    private List<Kind> kinds() {
        return heard.stream().map(SetEvent::kind).toList();
    }

    private static DoubleUnaryOperator falling(double from, double to, double tauMinutes) {
        return minutes -> to + (from - to) * Math.exp(-minutes / tauMinutes);
    }

    @Test
    void aFridgeIsLedFromTheWayInToTheBarsThatMayBeOpened() {
        in(CoolingPlace.FRIDGE, 10, ROOM);
        read(22, falling(24, 10, 4));
        assertEquals(List.of(Kind.BEGUN, Kind.LOOK, Kind.COME_OUT), kinds());
        hear(new SetInput.Said(at(), SetInput.Act.PULLS_AWAY));
        hear(new SetInput.Said(at(), SetInput.Act.TAKEN_OUT));
        SetEvent closed = heard.get(heard.size() - 1);
        assertEquals(Kind.KEEP_CLOSED, closed.kind());
        assertEquals(13.54, closed.limitCelsius().orElseThrow(), 0.01);
        assertFalse(watch.isOver());
        double minutes = closed.time().orElseThrow().toSeconds() / 60.0;
        // The tip is warm long before a bar is: the time counts as well.
        read(minutes - 1, falling(10, 22, 1));
        assertFalse(kinds().contains(Kind.MAY_OPEN), kinds().toString());
        read(2, m -> 21.5);
        assertTrue(kinds().contains(Kind.MAY_OPEN), kinds().toString());
        assertTrue(watch.isOver());
        assertEquals(Optional.of(true), watch.record().cameOutWet());
    }

    @Test
    void theWayOutIsSeenWhereNobodySaysIt() {
        in(CoolingPlace.FRIDGE, 9, ROOM);
        read(15, falling(24, 9, 4));
        read(4, falling(9, 21, 2));
        assertTrue(kinds().contains(Kind.KEEP_CLOSED), kinds().toString());
    }

    @Test
    void aDoorThatIsOpenedIsNoWayOut() {
        in(CoolingPlace.FRIDGE, 9, ROOM);
        read(15, falling(24, 9, 4));
        read(1, m -> 11.5);
        read(2, m -> 9);
        assertFalse(kinds().contains(Kind.KEEP_CLOSED), kinds().toString());
    }

    @Test
    void aFreezerIsToldAtOnceAndAWarmRoomAfterAQuarterOfAnHour() {
        in(CoolingPlace.FRIDGE, 4, ROOM);
        read(10, falling(22, -10, 4));
        assertTrue(kinds().contains(Kind.TOO_COLD), kinds().toString());
        assertTrue(kinds().contains(Kind.TOO_FAST), kinds().toString());
        assertTrue(watch.record().fastestKelvinPerMinute() > 3);
        heard.clear();
        second = 0;
        in(CoolingPlace.ROOM, 20, Optional.empty());
        read(14, m -> 26);
        assertEquals(List.of(Kind.BEGUN), kinds());
        read(3, m -> 26);
        assertTrue(kinds().contains(Kind.TOO_WARM), kinds().toString());
        assertEquals(17, watch.record().warm().toSeconds() / 60.0, 0.1);
    }

    @Test
    void withoutTheHumidityNobodyKnowsWhetherWaterComes() {
        in(CoolingPlace.FRIDGE, 9, Optional.empty());
        read(12, falling(22, 9, 4));
        hear(new SetInput.Said(at(), SetInput.Act.TAKEN_OUT));
        assertEquals(Kind.MAYBE_WET, heard.get(heard.size() - 1).kind());
        assertEquals(Optional.empty(), watch.record().cameOutWet());
    }

    @Test
    void silenceIsToldOnceAndEnds() {
        in(CoolingPlace.COOL, 15, ROOM);
        read(2, m -> 20);
        second += 90;
        hear(new SetInput.Passed(at()));
        hear(new SetInput.Passed(at()));
        read(1, m -> 19);
        assertEquals(List.of(Kind.BEGUN, Kind.SILENT, Kind.READS_AGAIN), kinds());
        assertEquals(Duration.ZERO, watch.record().warm());
    }
}
