package fifthform.curves.probecheck;

import fifthform.curves.check.Require;
import fifthform.curves.probecheck.CheckInput.Reading;
import fifthform.curves.setup.Correction;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;

/**
 * Two probes in one stirred bath: a pure function of state and readings.
 *
 * @param one newest readings of the first
 * @param other newest readings of the second
 */
public record SideBySide(Steadiness one, Steadiness other) {
    /** Before anything was read. */
    public static final SideBySide START = new SideBySide(Steadiness.NOTHING, Steadiness.NOTHING);

    /** Two places of one stirred pot; own estimate, no source. */
    private static final double BATH_KELVIN = 0.1;
    /** A bath that cools this fast still lets two tips of unlike lag differ by 0.05 K at most; own choice. */
    private static final double STEADY_KELVIN_PER_MINUTE = 0.6;

    private static final double CALM_KELVIN = 0.3;
    private static final Duration LOOK = Duration.ofSeconds(30);
    private static final int FEWEST = 10;

    public SideBySide {
        Objects.requireNonNull(one, "one");
        Objects.requireNonNull(other, "other");
    }

    public SideBySide withOne(Reading reading) {
        return new SideBySide(one.with(reading).newest(LOOK, FEWEST), other);
    }

    public SideBySide withOther(Reading reading) {
        return new SideBySide(one, other.with(reading).newest(LOOK, FEWEST));
    }

    /** The verdict, once both have been steady for half a minute. */
    public Optional<Agreement> agreement(Correction ofOne, Correction ofOther) {
        if (!isSteady(one) || !isSteady(other)) return Optional.empty();
        double measured = root(one.meanSigmaKelvin(), other.meanSigmaKelvin(), BATH_KELVIN);
        double whole = root(measured, ofOne.sigmaKelvin(), ofOther.sigmaKelvin());
        return Optional.of(new Agreement(
                ofOne.apply(one.meanCelsius()),
                ofOther.apply(other.meanCelsius()),
                Require.finite(measured, "measured"),
                2 * whole));
    }

    private static boolean isSteady(Steadiness readings) {
        return readings.size() >= FEWEST
                && readings.span().compareTo(LOOK.minusSeconds(2)) >= 0
                && Math.abs(readings.slopeKelvinPerMinute())
                        <= STEADY_KELVIN_PER_MINUTE + 2 * readings.slopeSigmaKelvinPerMinute()
                && readings.scatterKelvin() <= CALM_KELVIN + 2 * readings.stepSigmaKelvin();
    }

    private static double root(double a, double b, double c) {
        return Math.sqrt(a * a + b * b + c * c);
    }
}
