package fifthform.simulator.device;

import fifthform.curves.check.Require;
import java.time.Duration;
import java.util.List;
import java.util.Objects;

/**
 * How a pretend adapter measures and talks.
 *
 * @param resolutionKelvin step of its numbers, 0.001 to 5 K
 * @param noiseKelvin standard deviation of its noise, 0 to 5 K
 * @param offsetKelvin how much it reads too high, −10 to 10 K
 * @param interval between two lines: a multiple of {@link RunningKitchen#TICK}, at most 10 s
 * @param faults what goes wrong and when
 */
public record AdapterSettings(
        double resolutionKelvin,
        double noiseKelvin,
        double offsetKelvin,
        Duration interval,
        List<PlannedFault> faults) {
    /** A line a second at 0.1 K, as cheap bath thermometers give; common practice, no source. */
    public static final AdapterSettings USUAL_BATH =
            new AdapterSettings(0.1, 0.03, 0, Duration.ofSeconds(1), List.of());

    public AdapterSettings {
        Require.within(resolutionKelvin, 0.001, 5, "resolutionKelvin");
        Require.within(noiseKelvin, 0, 5, "noiseKelvin");
        Require.within(offsetKelvin, -10, 10, "offsetKelvin");
        Objects.requireNonNull(interval, "interval");
        long ticks = interval.toNanos() / RunningKitchen.TICK.toNanos();
        if (ticks < 1 || ticks > 80 || !RunningKitchen.TICK.multipliedBy(ticks).equals(interval)) {
            throw new IllegalArgumentException(
                    "interval must be a multiple of " + RunningKitchen.TICK + " up to 10 s, was " + interval);
        }
        faults = List.copyOf(faults);
    }
}
