package fifthform.monitor.sound;

import fifthform.curves.alarm.Standing;
import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.State;
import fifthform.curves.input.AlarmId;
import fifthform.monitor.model.Sides;
import fifthform.monitor.session.SessionListener;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.sound.Schedule.Ringing;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;

/** Makes a session heard: asks the schedule at every step and hands its calls to the speaker. */
public final class SoundDesk implements SessionListener {
    private final Consumer<Call> speaker;
    private final InstantSource clock;
    private Schedule schedule = Schedule.SILENT;

    /**
     * A desk.
     *
     * @param speaker takes a call and returns at once
     * @param clock time as people hear it: practice runs faster than life, repeats of an alarm must not
     */
    public SoundDesk(Consumer<Call> speaker, InstantSource clock) {
        this.speaker = Objects.requireNonNull(speaker, "speaker");
        this.clock = Objects.requireNonNull(clock, "clock");
    }

    @Override
    public void stepped(SessionSnapshot snapshot, List<Event> events) {
        List<CueId> begun = events.stream()
                .filter(Event.CueGiven.class::isInstance)
                .map(e -> ((Event.CueGiven) e).cue())
                .toList();
        Schedule.Step step = schedule.next(ringing(snapshot.state()), begun, clock.instant());
        schedule = step.after();
        step.play().forEach(speaker);
    }

    private static List<Ringing> ringing(State state) {
        return state.alarms().standing().stream()
                .filter(id -> state.alarms().of(id).state().isNew())
                .map(id -> ringing(id, state.alarms().of(id)))
                .sorted(Comparator.comparing(Ringing::priority).reversed())
                .toList();
    }

    private static Ringing ringing(AlarmId id, Standing standing) {
        return new Ringing(id, standing.priority(), Sides.of(id));
    }
}
