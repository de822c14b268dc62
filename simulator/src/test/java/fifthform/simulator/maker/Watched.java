package fifthform.simulator.maker;

import fifthform.curves.alarm.Priority;
import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event.AlarmRaised;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.Input;
import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A maker at work before a thermometer that shows what the test says, looked at eight times a second. */
final class Watched {
    static final Habits HABITS = habits(Plan.USUAL);
    static final Instant START = Instant.parse("2026-01-10T09:00:00Z");

    final List<Acts> acts = new ArrayList<>();
    final List<Input> presses = new ArrayList<>();
    Maker maker;
    Instant now = START;

    Watched(Maker maker) {
        this.maker = maker;
    }

    static Habits habits(Plan plan) {
        return new Habits(
                Duration.ofMillis(2500), 0.35, 47, 28, Duration.ofMinutes(5), 31.5, Duration.ofMinutes(6), plan);
    }

    /** The spot after some seconds in which the thermometer shows this. */
    Spot after(double seconds, double shownCelsius) {
        look(shownCelsius);
        for (int eighths = 0; eighths < seconds * 8; eighths++) {
            now = now.plusMillis(125);
            look(shownCelsius);
        }
        return last().hands().spot();
    }

    Acts last() {
        return acts.get(acts.size() - 1);
    }

    private void look(double shownCelsius) {
        Next next = maker.next(new KitchenView(now, OptionalDouble.of(shownCelsius)));
        maker = next.after();
        acts.add(next.acts());
        presses.addAll(next.acts().presses());
    }

    void tell(CueId cue, double figure) {
        maker = maker.told(new CueGiven(now, cue, OptionalDouble.of(figure)));
    }

    /** A cue that names no number. */
    void tell(CueId cue) {
        maker = maker.told(new CueGiven(now, cue, OptionalDouble.empty()));
    }

    void raise(AlarmId alarm) {
        maker = maker.told(new AlarmRaised(now, alarm, Priority.URGENT, OptionalDouble.empty()));
    }

    /** Seconds until the bowl stands there, the thermometer showing this; at most an hour. */
    double secondsUntil(Spot spot, double shownCelsius) {
        Instant from = now;
        while (after(0.125, shownCelsius) != spot) {
            if (Duration.between(from, now).toMinutes() > 60) throw new AssertionError("never at " + spot);
        }
        return Duration.between(from, now).toMillis() / 1000.0;
    }

    /** Goes on by cues to the warm bath. */
    Watched warming() {
        after(1, 40);
        for (CueId cue : List.of(CueId.MELTED, CueId.STOP_COOLING, CueId.CRYSTALS_ENOUGH)) {
            tell(cue);
            after(60, 30);
        }
        if (last().hands().spot() != Spot.WARM_BATH) throw new AssertionError("at " + last());
        return this;
    }
}
