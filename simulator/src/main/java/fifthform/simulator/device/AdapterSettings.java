package fifthform.simulator.device;

import fifthform.curves.check.Require;
import java.time.Duration;
import java.util.List;
import java.util.Objects;

/**
 * How a pretend adapter measures and talks: it reads {@code gain · tip + offset + drift · time + noise}.
 *
 * @param language what it speaks
 * @param resolutionKelvin step of its numbers, 0.001 to 5 K; converters that are imitated to the bit have their own
 * @param noiseKelvin standard deviation of its noise, 0 to 5 K
 * @param gain 0.9 to 1.1
 * @param offsetKelvin how much it reads too high at 0 °C, −10 to 10 K
 * @param driftKelvinPerHour how much more it reads too high with each hour, −10 to 10 K/h
 * @param junctionCelsius temperature of its board and so of the cold junction, 0 to 60 °C
 * @param interval between two readings: a multiple of {@link RunningKitchen#TICK}, at most 10 s
 * @param faults what goes wrong and when
 */
public record AdapterSettings(
        Language language,
        double resolutionKelvin,
        double noiseKelvin,
        double gain,
        double offsetKelvin,
        double driftKelvinPerHour,
        double junctionCelsius,
        Duration interval,
        List<PlannedFault> faults) {
    /** A board beside a stove, some kelvin above the room; a guess. */
    public static final double USUAL_JUNCTION_CELSIUS = 26;

    /** A line a second at 0.1 K, as cheap bath thermometers give; common practice, no source. */
    public static final AdapterSettings USUAL_BATH =
            new AdapterSettings(0.1, 0.03, 0, Duration.ofSeconds(1), List.of());

    private static final double SECONDS_PER_HOUR = 3600;

    public AdapterSettings {
        Objects.requireNonNull(language, "language");
        Require.within(resolutionKelvin, 0.001, 5, "resolutionKelvin");
        Require.within(noiseKelvin, 0, 5, "noiseKelvin");
        Require.within(gain, 0.9, 1.1, "gain");
        Require.within(offsetKelvin, -10, 10, "offsetKelvin");
        Require.within(driftKelvinPerHour, -10, 10, "driftKelvinPerHour");
        Require.within(junctionCelsius, 0, 60, "junctionCelsius");
        Objects.requireNonNull(interval, "interval");
        long ticks = interval.toNanos() / RunningKitchen.TICK.toNanos();
        if (ticks < 1 || ticks > 80 || !RunningKitchen.TICK.multipliedBy(ticks).equals(interval)) {
            throw new IllegalArgumentException(
                    "interval must be a multiple of " + RunningKitchen.TICK + " up to 10 s, was " + interval);
        }
        faults = List.copyOf(faults);
        for (PlannedFault fault : faults) {
            if (!language.troubles().contains(fault.trouble())) {
                throw new IllegalArgumentException("an adapter that speaks " + language + " cannot be "
                        + fault.trouble().word());
            }
        }
    }

    /** One that speaks in text lines, and errs by its offset only. */
    public AdapterSettings(
            double resolutionKelvin,
            double noiseKelvin,
            double offsetKelvin,
            Duration interval,
            List<PlannedFault> faults) {
        this(
                Language.TEXT_LINES,
                resolutionKelvin,
                noiseKelvin,
                1,
                offsetKelvin,
                0,
                USUAL_JUNCTION_CELSIUS,
                interval,
                faults);
    }

    /** The same adapter with another language. */
    public AdapterSettings speaking(Language other) {
        return new AdapterSettings(
                other,
                resolutionKelvin,
                noiseKelvin,
                gain,
                offsetKelvin,
                driftKelvinPerHour,
                junctionCelsius,
                interval,
                faults);
    }

    /**
     * What it finds before noise and rounding, °C.
     *
     * @param sinceStart how long it has been in use
     */
    public double findsCelsius(double tipCelsius, Duration sinceStart) {
        double hours = sinceStart.toMillis() / 1000.0 / SECONDS_PER_HOUR;
        return gain * tipCelsius + offsetKelvin + driftKelvinPerHour * hours;
    }

    Wire wire() {
        return language.wire(resolutionKelvin, junctionCelsius);
    }
}
