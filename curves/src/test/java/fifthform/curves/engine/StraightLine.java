package fifthform.curves.engine;

import fifthform.curves.input.Sample;
import fifthform.curves.setup.Setup;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Readings of the bowl on a straight line, one a second: what batches told with keys are made of. */
public final class StraightLine {
    private StraightLine() {}

    /** From this temperature, which was read last, to that one, °C. */
    public static List<Sample> of(Setup setup, Instant begun, double fromCelsius, double toCelsius, double minutes) {
        int seconds = (int) Math.round(60 * minutes);
        return IntStream.rangeClosed(1, seconds)
                .mapToObj(second -> new Sample(
                        begun.plusSeconds(second),
                        setup.bowlProbe().id(),
                        fromCelsius + (toCelsius - fromCelsius) * second / seconds,
                        0.03,
                        OptionalDouble.empty(),
                        OptionalDouble.empty()))
                .toList();
    }
}
