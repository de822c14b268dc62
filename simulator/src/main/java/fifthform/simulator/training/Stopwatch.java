package fifthform.simulator.training;

import java.time.Duration;

/** The only one in the simulator who looks at a clock: a training may end early, a batch goes by its own time. */
final class Stopwatch {
    private final long from = System.nanoTime();

    Duration elapsed() {
        return Duration.ofNanos(System.nanoTime() - from);
    }

    /** In s. */
    double seconds() {
        return elapsed().toMillis() / 1000.0;
    }
}
