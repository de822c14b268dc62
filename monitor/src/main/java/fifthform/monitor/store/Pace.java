package fifthform.monitor.store;

import java.time.Duration;

/**
 * How often the journal's thread does what.
 *
 * @param force between check lines, each followed by a force to the disk
 * @param retry between attempts after a failure
 * @param behind from a line's arrival until it counts as late
 * @param patience how long closing waits for a disk that refuses
 */
record Pace(Duration force, Duration retry, Duration behind, Duration patience) {
    static final Pace USUAL =
            new Pace(Duration.ofMillis(500), Duration.ofSeconds(1), Duration.ofSeconds(5), Duration.ofSeconds(5));
}
