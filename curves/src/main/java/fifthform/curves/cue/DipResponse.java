package fifthform.curves.cue;

import fifthform.curves.check.Require;

/**
 * How this bowl answers this bath: rise for each second over it, the coast included.
 *
 * <p>A dip of N seconds gives {@code g · (N + c)}: heat flows in for N seconds, and the film of water that comes along
 * is worth about c more. {@code ln g} is taken as normal; each dip whose peak was seen gives a value with a variance, and
 * the two are weighed. Long dips give less for a second than short ones, since wall and film fill up: g from shorter
 * dips is on the safe side.
 *
 * @param logPerSecond natural logarithm of g in K/s; of no meaning before the first dip
 * @param logSpread standard deviation of that
 * @param dips dips whose peaks were seen
 * @param lastSeconds how long the last one lasted, s
 * @param movedKelvin what the last {@value #REMEMBERED} moved the bowl by, K, forgotten geometrically
 */
public record DipResponse(double logPerSecond, double logSpread, int dips, double lastSeconds, double movedKelvin) {
    private static final int REMEMBERED = 3;

    /** Seconds over the bath that the clinging film and the late hands are worth. Own choice. */
    static final double FILM_SECONDS = 2;

    /** Stirring and the tip's place make one dip unlike the next, as a logarithm. Tuned on training kitchens. */
    private static final double ONE_DIP_SPREAD = 0.18;

    /** What a peak may be misread by, K. Own choice. */
    private static final double READ_SIGMA_KELVIN = 0.05;

    private static final double LEAST_RISE_KELVIN = 0.03;

    /** Bath and bowl change between two dips. Own choice. */
    private static final double DRIFT = 0.1;

    /** Nothing seen yet. */
    static final DipResponse NONE = new DipResponse(0, 0, 0, 0, 0);

    public DipResponse {
        Require.finite(logPerSecond, "logPerSecond");
        Require.within(logSpread, 0, 10, "logSpread");
        Require.within(dips, 0, 1e6, "dips");
        Require.within(lastSeconds, 0, 3600, "lastSeconds");
        Require.finite(movedKelvin, "movedKelvin");
    }

    boolean isKnown() {
        return dips > 0;
    }

    /** Rise for a second over the bath, K/s. */
    public double kelvinPerSecond() {
        return StrictMath.exp(logPerSecond);
    }

    /** Once a dip of {@code seconds} has given {@code riseKelvin}. */
    DipResponse seen(double seconds, double riseKelvin) {
        double rise = Math.max(LEAST_RISE_KELVIN, riseKelvin);
        double value = StrictMath.log(rise / (seconds + FILM_SECONDS));
        double misread = READ_SIGMA_KELVIN / rise;
        double variance = ONE_DIP_SPREAD * ONE_DIP_SPREAD + misread * misread;
        double moved = (1 - 1.0 / REMEMBERED) * movedKelvin + riseKelvin;
        if (!isKnown()) return new DipResponse(value, Math.sqrt(variance), 1, seconds, moved);
        double prior = logSpread * logSpread + DRIFT * DRIFT;
        double gain = prior / (prior + variance);
        return new DipResponse(
                logPerSecond + gain * (value - logPerSecond), Math.sqrt((1 - gain) * prior), dips + 1, seconds, moved);
    }

    /** How long a dip that gives {@code kelvin} would have to be by the middle of what is known, s. */
    double secondsFor(double kelvin) {
        return kelvin / kelvinPerSecond() - FILM_SECONDS;
    }

    /** How long a dip may be that gives more than {@code kelvin} only once in {@code tail}'s share of cases, s. */
    double secondsWithin(double kelvin, double standardDeviations) {
        double spread = Math.sqrt(logSpread * logSpread + ONE_DIP_SPREAD * ONE_DIP_SPREAD);
        return kelvin / (kelvinPerSecond() * StrictMath.exp(standardDeviations * spread)) - FILM_SECONDS;
    }

    /** What a dip of {@code seconds} gives at the most, K; more only as seldom as the standard deviations say. */
    double mostFrom(double seconds, double standardDeviations) {
        double spread = Math.sqrt(logSpread * logSpread + ONE_DIP_SPREAD * ONE_DIP_SPREAD);
        return kelvinPerSecond() * StrictMath.exp(standardDeviations * spread) * (seconds + FILM_SECONDS);
    }
}
