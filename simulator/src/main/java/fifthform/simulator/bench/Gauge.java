package fifthform.simulator.bench;

import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.simulator.device.AdapterSettings;
import fifthform.simulator.maker.Luck;
import java.time.Instant;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A probe and its adapter without the bytes, at one moment: noise, gain, offset and rounding of its numbers; no
 * drift, no faults.
 *
 * @param probe whose numbers they are
 * @param settings how it measures
 * @param luck for the noise of its next number
 */
public record Gauge(ProbeId probe, AdapterSettings settings, Luck luck) {
    /** No number is surer than this, whatever its last digit; as the reader of a real line judges. */
    private static final double LEAST_SIGMA_KELVIN = 0.001;

    public Gauge {
        Objects.requireNonNull(probe, "probe");
        Objects.requireNonNull(settings, "settings");
        Objects.requireNonNull(luck, "luck");
    }

    /** The number it shows for this tip, °C. */
    double shows(double tipCelsius) {
        double noisy = settings.gain() * tipCelsius + settings.offsetKelvin();
        if (settings.noiseKelvin() > 0) noisy += settings.noiseKelvin() * luck.normal();
        return settings.resolutionKelvin() * Math.round(noisy / settings.resolutionKelvin());
    }

    /** Once that number has been shown. */
    Gauge after() {
        return new Gauge(probe, settings, luck.after());
    }

    /** A rounded number may lie anywhere within its step: step/√12 (rectangular distribution, JCGM 100:2008 4.3.7). */
    Sample sample(Instant at, double shownCelsius) {
        double sigmaKelvin = Math.max(LEAST_SIGMA_KELVIN, settings.resolutionKelvin() / Math.sqrt(12));
        return new Sample(at, probe, shownCelsius, sigmaKelvin, OptionalDouble.empty(), OptionalDouble.empty());
    }
}
