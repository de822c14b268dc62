package fifthform.simulator.tube;

/**
 * One reading of the pretended probe.
 *
 * @param seconds since the recording began, s
 * @param celsius as an adapter says it
 */
public record TubeReading(double seconds, double celsius) {}
