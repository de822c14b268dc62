package fifthform.monitor.replay;

import fifthform.monitor.replay.SecondPass.Computed;
import fifthform.monitor.texts.ReplayText;
import java.util.List;

/** Whether all that was told then is told now, line by line, to the byte. */
final class Agreed {
    private final Recording recording;
    private final SecondPass pass;
    private int compared;
    private int firstDifference = -1;

    Agreed(Recording recording, SecondPass pass) {
        this.recording = recording;
        this.pass = pass;
    }

    String words(Clock clock) {
        List<String> then = recording.toldLines();
        List<Computed> now = pass.computed();
        boolean through = pass.doneNanos() == Long.MAX_VALUE;
        for (; firstDifference < 0 && compared < Math.min(then.size(), now.size()); compared++)
            if (!then.get(compared).equals(now.get(compared).line())) firstDifference = compared;
        if (firstDifference < 0 && through && then.size() != now.size() && !isCutOff(then, now))
            firstDifference = Math.min(then.size(), now.size());
        if (firstDifference >= 0)
            return ReplayText.AGREEMENT_DIFFERS.say(
                    Integer.toString(firstDifference + 1),
                    Integer.toString(then.size()),
                    clock.time(at(firstDifference, now)));
        if (!through) {
            long percent = Math.round(100.0 * pass.doneNanos() / Math.max(1, recording.endNanos()));
            return ReplayText.AGREEMENT_UNDER_WAY.say(Long.toString(Math.min(99, percent)));
        }
        return ReplayText.AGREEMENT_SAME.say(Integer.toString(then.size()));
    }

    boolean differs() {
        return firstDifference >= 0;
    }

    private long at(int place, List<Computed> now) {
        if (place < now.size()) return recording.nanos(now.get(place).event().at());
        return place < recording.told().size()
                ? recording.nanos(recording.told().get(place).event().at())
                : recording.endNanos();
    }

    /** Killed between a reading and what it led to: that was not told any more. */
    private boolean isCutOff(List<String> then, List<Computed> now) {
        return !recording.isClosed()
                && then.size() < now.size()
                && now.subList(then.size(), now.size()).stream()
                        .allMatch(c -> c.sequence() == recording.lastSequence());
    }
}
