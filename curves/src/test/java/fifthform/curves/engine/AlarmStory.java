package fifthform.curves.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.alarm.AlarmBank;
import fifthform.curves.alarm.AlarmState;
import fifthform.curves.alarm.AlarmTable;
import fifthform.curves.alarm.Condition;
import fifthform.curves.alarm.Finding;
import fifthform.curves.alarm.Priority;
import fifthform.curves.input.AlarmId;
import fifthform.curves.recipe.Phase;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * One alarm's life, told second by second: what its condition says or the maker does, then what has become of it and
 * what the maker was told. States by the words of the design page, events by name, alarm and (where raised) priority.
 */
final class AlarmStory {
    private static final Instant START = Instant.parse("2026-01-10T10:00:00Z");

    private final AlarmId about;
    private final Map<AlarmId, Finding> findings = new EnumMap<>(AlarmId.class);
    private Phase phase;
    private State state;
    private List<Event> events = List.of();

    private AlarmStory(AlarmId about, Phase phase) {
        this.about = about;
        this.phase = phase;
        this.state = Engine.start(TestRecipes.setup(), START);
        for (AlarmId id : AlarmId.values()) says(id, Condition.OVER);
    }

    static AlarmStory about(AlarmId id, Phase phase) {
        return new AlarmStory(id, phase);
    }

    /** From the next look on, this alarm's condition says so. */
    AlarmStory says(AlarmId id, Condition condition) {
        return says(id, condition, AlarmTable.of(id).usualPriority());
    }

    AlarmStory says(AlarmId id, Condition condition, Priority priority) {
        findings.put(id, new Finding(condition, priority, OptionalDouble.empty()));
        return this;
    }

    AlarmStory enters(Phase other) {
        phase = other;
        return this;
    }

    AlarmStory at(double seconds, Condition condition) {
        return says(about, condition).at(seconds);
    }

    AlarmStory at(double seconds, Condition condition, Priority priority) {
        return says(about, condition, priority).at(seconds);
    }

    AlarmStory at(double seconds) {
        return look(seconds, state.alarms());
    }

    AlarmStory seen(double seconds) {
        return look(seconds, state.alarms().seen(about, time(seconds)));
    }

    AlarmStory chosen(double seconds) {
        return look(seconds, state.alarms().chosen());
    }

    AlarmStory setAside(double seconds, Duration duration) {
        return setAside(seconds, about, duration);
    }

    AlarmStory setAside(double seconds, AlarmId id, Duration duration) {
        return look(seconds, state.alarms().shelved(id, duration, time(seconds)));
    }

    /** What became of the alarm the story is about, and everything the maker was told at the last look. */
    AlarmStory is(String expected, String... told) {
        assertEquals(expected, of(about));
        assertEquals(List.of(told), events.stream().map(AlarmStory::words).toList());
        return this;
    }

    String of(AlarmId id) {
        return word(state.alarms().of(id).state());
    }

    Priority priority() {
        return state.alarms().of(about).priority();
    }

    private AlarmStory look(double seconds, AlarmBank bank) {
        State heard = state.heard(time(seconds));
        State after = heard.withAlarms(bank.next(findings::get, phase, heard.at()));
        events = Changes.between(state, after);
        state = after;
        return this;
    }

    private static Instant time(double seconds) {
        return START.plusMillis(Math.round(1000 * seconds));
    }

    private static String word(AlarmState state) {
        if (state instanceof AlarmState.Normal) return "quiet";
        if (state instanceof AlarmState.Pending) return "pending";
        if (state instanceof AlarmState.Unacknowledged) return "new";
        if (state instanceof AlarmState.Acknowledged) return "known";
        if (state instanceof AlarmState.ReturnedUnacknowledged) return "passed";
        if (state instanceof AlarmState.Shelved) return "set aside";
        if (state instanceof AlarmState.Suppressed s)
            return "held back: " + s.reason().name();
        throw new AssertionError("a state without a word: " + state);
    }

    private static String words(Event event) {
        if (event instanceof Event.AlarmRaised e)
            return "raised " + e.alarm().word() + " " + e.priority().word();
        if (event instanceof Event.AlarmSeen e) return "seen " + e.alarm().word();
        if (event instanceof Event.AlarmCleared e) return "cleared " + e.alarm().word();
        throw new AssertionError("no event of an alarm: " + event);
    }
}
