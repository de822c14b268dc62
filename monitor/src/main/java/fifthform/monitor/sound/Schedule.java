package fifthform.monitor.sound;

import fifthform.curves.alarm.Priority;
import fifthform.curves.alarm.Side;
import fifthform.curves.cue.CueId;
import fifthform.curves.input.AlarmId;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * When what sounds. Pure: times are handed in. Only the most pressing alarms sound; the others wait until those are
 * acknowledged. Clearing never makes a sound.
 *
 * @param heard alarms that have sounded at their present priority and still ring
 * @param priority of the sound last made for an alarm that still rings
 * @param times how often it has sounded
 * @param last when it last sounded
 */
public record Schedule(Set<Ringing> heard, Optional<Priority> priority, int times, Instant last) {
    private static final Duration URGENT_GAP = Duration.ofSeconds(3);
    private static final Duration PROMPT_GAP = Duration.ofSeconds(10);
    private static final Duration LATER_PROMPT_GAP = Duration.ofSeconds(30);
    private static final int QUICK_PROMPTS = 3;

    /** Nothing has sounded yet. */
    public static final Schedule SILENT = new Schedule(Set.of(), Optional.empty(), 0, Instant.EPOCH);

    public Schedule {
        heard = Set.copyOf(heard);
        Objects.requireNonNull(priority, "priority");
        Objects.requireNonNull(last, "last");
    }

    /** An alarm that nobody has seen yet. */
    public record Ringing(AlarmId alarm, Priority priority, Side side) {
        public Ringing {
            Objects.requireNonNull(alarm, "alarm");
            Objects.requireNonNull(priority, "priority");
            Objects.requireNonNull(side, "side");
        }
    }

    /** What to play now, in this order, and the schedule to ask next time. */
    public record Step(Schedule after, List<Call> play) {
        public Step {
            play = List.copyOf(play);
        }
    }

    /**
     * @param ringing every alarm in state new, most urgent first
     * @param begun cues that began since the last call
     * @param now time of this call, not before the last one's
     */
    public Step next(List<Ringing> ringing, List<CueId> begun, Instant now) {
        List<Call> play = new ArrayList<>();
        Schedule after = alarms(ringing, now, play);
        begun.forEach(cue -> play.add(Call.CUE));
        return new Step(after, play.stream().distinct().toList());
    }

    private Schedule alarms(List<Ringing> ringing, Instant now, List<Call> play) {
        Set<Ringing> still = new HashSet<>(heard);
        still.retainAll(ringing);
        Optional<Priority> top = ringing.stream().map(Ringing::priority).max(Comparator.naturalOrder());
        if (top.isEmpty()) return new Schedule(still, Optional.empty(), 0, last);
        List<Ringing> loudest =
                ringing.stream().filter(alarm -> alarm.priority() == top.get()).toList();
        Optional<Ringing> fresh =
                loudest.stream().filter(alarm -> !still.contains(alarm)).findFirst();
        boolean same = priority.equals(top);
        int played = same ? times : 0;
        boolean again = played > 0
                && gap(top.get(), played)
                        .filter(wait -> !now.isBefore(last.plus(wait)))
                        .isPresent();
        if (fresh.isEmpty() && !again) {
            // Back from a louder alarm: its own repeats begin anew, after a whole gap.
            boolean returned = !same && gap(top.get(), 1).isPresent();
            return new Schedule(still, top, returned ? 1 : played, returned ? now : last);
        }
        Ringing sounding = fresh.orElse(loudest.get(0));
        play.add(Call.of(sounding.priority(), sounding.side()));
        still.addAll(loudest);
        return new Schedule(still, top, fresh.isPresent() ? 1 : played + 1, now);
    }

    private static Optional<Duration> gap(Priority priority, int played) {
        return switch (priority) {
            case URGENT -> Optional.of(URGENT_GAP);
            case PROMPT -> Optional.of(played < QUICK_PROMPTS ? PROMPT_GAP : LATER_PROMPT_GAP);
            case ADVISE -> Optional.empty();
        };
    }
}
