package fifthform.monitor.adapters;

import fifthform.curves.check.Require;
import fifthform.curves.probecheck.Point;
import fifthform.curves.setup.Correction;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One check of one probe, as it is kept for ever.
 *
 * @param at when it ended
 * @param channel the adapter's channel, 0 or more
 * @param points what the probe said at known temperatures
 * @param correction what it led to; empty where the check was not passed
 * @param words what was found, for people
 */
public record KeptCheck(Instant at, int channel, List<Point> points, Optional<Correction> correction, String words) {
    public KeptCheck {
        Objects.requireNonNull(at, "at");
        Require.within(channel, 0, Integer.MAX_VALUE, "channel");
        points = List.copyOf(points);
        Objects.requireNonNull(correction, "correction");
        Objects.requireNonNull(words, "words");
    }
}
