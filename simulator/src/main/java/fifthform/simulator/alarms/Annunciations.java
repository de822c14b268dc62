package fifthform.simulator.alarms;

import fifthform.curves.alarm.Priority;
import fifthform.curves.engine.Event.AlarmRaised;
import fifthform.curves.input.AlarmId;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the maker's ears got in one batch: how many alarms, how close together, how many for nothing. */
final class Annunciations {
    private static final Duration TEN_MINUTES = Duration.ofMinutes(10);

    /** Chatter: the same alarm three times in a minute, as alarm management counts it. */
    private static final Duration MINUTE = Duration.ofMinutes(1);

    private static final int CHATTER = 3;

    private final List<AlarmRaised> raised = new ArrayList<>();
    private final Map<AlarmId, Instant> holding = new EnumMap<>(AlarmId.class);
    private final Map<AlarmId, Instant> lastNews = new EnumMap<>(AlarmId.class);
    private final Set<AlarmId> stood = EnumSet.noneOf(AlarmId.class);
    private Instant lastAct = Instant.MIN;
    private long fleeting;

    /** The hands did something about the bowl. */
    void acted(Instant at) {
        lastAct = at;
    }

    void raised(AlarmRaised event) {
        raised.add(event);
        holding.putIfAbsent(event.alarm(), event.at());
        lastNews.put(event.alarm(), event.at());
    }

    void seen(AlarmId alarm, Instant at) {
        lastNews.put(alarm, at);
    }

    /** Fleeting: gone within a minute although nobody did anything since it came, or just before. */
    void cleared(AlarmId alarm, Instant at) {
        Instant since = holding.remove(alarm);
        lastNews.remove(alarm);
        if (since == null) return;
        boolean soon = Duration.between(since, at).compareTo(MINUTE) < 0;
        if (soon && lastAct.isBefore(since)) fleeting++;
    }

    /** Alarms that have stood unchanged for more than ten minutes by now. */
    void tick(Instant at) {
        lastNews.forEach((alarm, since) -> {
            if (Duration.between(since, at).compareTo(TEN_MINUTES) > 0) stood.add(alarm);
        });
    }

    int count() {
        return raised.size();
    }

    int mostInTenMinutes() {
        return most(raised, TEN_MINUTES);
    }

    int chattering() {
        int found = 0;
        for (AlarmId id : AlarmId.values()) {
            List<AlarmRaised> same =
                    raised.stream().filter(r -> r.alarm() == id).toList();
            if (most(same, MINUTE) >= CHATTER) found++;
        }
        return found;
    }

    private static int most(List<AlarmRaised> all, Duration window) {
        int most = 0;
        int first = 0;
        for (int i = 0; i < all.size(); i++) {
            while (Duration.between(all.get(first).at(), all.get(i).at()).compareTo(window) > 0) first++;
            most = Math.max(most, i - first + 1);
        }
        return most;
    }

    long fleeting() {
        return fleeting;
    }

    int standing() {
        return stood.size();
    }

    Map<Priority, Long> byPriority() {
        Map<Priority, Long> counts = new EnumMap<>(Priority.class);
        for (AlarmRaised each : raised) counts.merge(each.priority(), 1L, Long::sum);
        return counts;
    }

    Map<AlarmId, Long> byAlarm() {
        Map<AlarmId, Long> counts = new EnumMap<>(AlarmId.class);
        for (AlarmRaised each : raised) counts.merge(each.alarm(), 1L, Long::sum);
        return counts;
    }
}
