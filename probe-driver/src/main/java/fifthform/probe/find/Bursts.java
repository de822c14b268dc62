package fifthform.probe.find;

import fifthform.probe.link.Arrival;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How often something comes, whatever it means: a garbled reading comes as often as a good one. */
final class Bursts {
    /** Longer than a byte takes at 1200 bit/s, shorter than any adapter's pause. */
    static final Duration PAUSE = Duration.ofMillis(30);
    /** A stream without pauses counts as one reading for so many bytes. */
    private static final int BYTES_WITHOUT_PAUSE = 64;

    private static final int STREAM = 3;
    private static final Duration STREAM_INTERVAL = Duration.ofMillis(100);

    private final List<Instant> starts = new ArrayList<>();
    private Optional<Instant> lastByte = Optional.empty();
    private int sinceStart;
    private int count;

    void heard(Arrival arrival) {
        if (arrival.isSilence()) return;
        Instant at = arrival.at();
        boolean after = lastByte.filter(last -> Duration.between(last, at).compareTo(PAUSE) < 0)
                .isEmpty();
        if (after) starts.add(at);
        if (after || sinceStart >= BYTES_WITHOUT_PAUSE) {
            count++;
            sinceStart = 0;
        }
        sinceStart += arrival.bytes().length;
        lastByte = Optional.of(at);
    }

    int count() {
        return count;
    }

    /** Those after which a pause has come. */
    int ended(Instant now) {
        boolean underWay = lastByte.filter(last -> Duration.between(last, now).compareTo(PAUSE) < 0)
                .isPresent();
        return underWay ? count - 1 : count;
    }

    /** The middle one of the times between; empty before the second. A stream without pauses repeats itself all the time. */
    Optional<Duration> interval() {
        List<Duration> gaps = new ArrayList<>();
        for (int i = 1; i < starts.size(); i++) gaps.add(Duration.between(starts.get(i - 1), starts.get(i)));
        gaps.sort(null);
        if (gaps.isEmpty() && count >= STREAM) return Optional.of(STREAM_INTERVAL);
        return gaps.isEmpty() ? Optional.empty() : Optional.of(gaps.get(gaps.size() / 2));
    }
}
