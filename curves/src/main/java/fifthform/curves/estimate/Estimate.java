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
 * @param sigmaKelvin random part of its standard uncertainty, as of what is around the tip; what a probe check left
 *     stands in the set-up
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
    /** Where the tip stands in the bowl and what its stem leads away, K; see {@link #bulkSigmaKelvin}. */
    private static final double PLACE_KELVIN = 0.16;

    /** How late or early the tip's surroundings are against the bulk, and its lag against the one set, s. */
    private static final double PLACE_SECONDS = 28;

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

    /**
     * Standard uncertainty with which it speaks of the bulk, K: the random part, and what no curve shows. While the bowl
     * warms or cools, what is near the wall goes ahead of the bulk and what nobody stirs lags behind it, and a tip that is
     * slower or quicker than supposed is off by as many seconds; at rest a part remains.
     *
     * <p>The two figures make the interval score of the 90 % band (Gneiting and Raftery 2007, from memory) least within 1 %
     * over 120 batches of the training fleet (0 to 59 and 1000 to 1059), and the band hold 91 % of the time there (mean width 1.7 K);
     * {@code BulkBandTest} of the simulator tries other batches. The random part alone holds 37 % of the time.
     */
    public double bulkSigmaKelvin() {
        double moving = PLACE_SECONDS * rateKelvinPerMinute / 60;
        return Math.sqrt(sigmaKelvin * sigmaKelvin + PLACE_KELVIN * PLACE_KELVIN + moving * moving);
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
