package fifthform.curves.estimate;

import fifthform.curves.check.Require;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.signal.Track;
import fifthform.curves.signal.Trend;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * Where the chocolate is.
 *
 * @param at the time of the reading it rests on
 * @param chocolateCelsius temperature around the tip, the tip's lag undone, °C
 * @param sigmaKelvin random part of its standard uncertainty; what a probe check left stands in the set-up
 * @param rateKelvinPerMinute its rate
 * @param rateSigmaKelvinPerMinute standard uncertainty of the rate
 * @param trend the filter behind it, for whoever looks ahead
 * @param freshness whether it speaks of now
 */
public record Estimate(
        Instant at,
        double chocolateCelsius,
        double sigmaKelvin,
        double rateKelvinPerMinute,
        double rateSigmaKelvinPerMinute,
        Trend trend,
        Freshness freshness) {
    public Estimate {
        Objects.requireNonNull(at, "at");
        Require.finite(chocolateCelsius, "chocolateCelsius");
        Require.within(sigmaKelvin, 0, 1e6, "sigmaKelvin");
        Require.finite(rateKelvinPerMinute, "rateKelvinPerMinute");
        Require.within(rateSigmaKelvinPerMinute, 0, 1e6, "rateSigmaKelvinPerMinute");
        Objects.requireNonNull(trend, "trend");
        Objects.requireNonNull(freshness, "freshness");
    }

    /**
     * The estimate from a probe's track; empty before the first reading.
     *
     * <p>A tip follows what it measures with a first-order lag, so {@code chocolate = tip + τ · d(tip)/dt}: a bias that
     * is undone, not noise. Source: step response of a first-order system (τ is the time to 63.2 %); from memory.
     */
    public static Optional<Estimate> of(Track track, ProbeSetup probe, Instant now) {
        return track.trend().map(trend -> {
            double lag = probe.lagSeconds();
            return new Estimate(
                    track.lastGood(),
                    trend.level() + lag * trend.slope(),
                    Math.sqrt(trend.varianceAhead(lag)),
                    60 * trend.slope(),
                    60 * Math.sqrt(trend.slopeVariance()),
                    trend,
                    freshness(track, now));
        });
    }

    /** Whether temperature alarms and forecasts may rest on it. */
    public boolean isUsable() {
        return freshness == Freshness.FRESH;
    }

    private static Freshness freshness(Track track, Instant now) {
        if (!track.freshAt(now)) return Freshness.OLD;
        return track.doubt().isPresent() ? Freshness.DOUBTFUL : Freshness.FRESH;
    }
}
