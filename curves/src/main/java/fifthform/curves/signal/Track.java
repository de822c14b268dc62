package fifthform.curves.signal;

import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Role;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known of one probe: its curve, and how far its readings can be trusted. A replay judges again, since only
 * what the wire said is recorded.
 *
 * @param trend level and slope of the corrected readings; empty before the first and after a jump was accepted anew
 * @param lastGood time of the last reading that was used; the session's start before the first
 * @param lastCelsius that reading, corrected, °C
 * @param pace usual time between readings
 * @param strays readings in a row that did not fit the curve
 * @param doubtedUntil until when readings are doubted because of such
 * @param goodInARow used readings since the last fault, stray or silence
 * @param goodSince time of the first of those
 * @param fault why there is no temperature, while there is none
 * @param faultsInARow faults since the last reading
 * @param restNoiseVariance the smallest noise seen so far, K²
 * @param doubt why the present number should not be trusted
 */
public record Track(
        Optional<Trend> trend,
        Instant lastGood,
        OptionalDouble lastCelsius,
        Pace pace,
        int strays,
        Instant doubtedUntil,
        int goodInARow,
        Instant goodSince,
        Optional<Cause> fault,
        int faultsInARow,
        double restNoiseVariance,
        Optional<Doubt> doubt) {
    /** A reading further from the curve than this many standard deviations and {@link #STRAY_KELVIN} is a stray. */
    private static final double STRAY_SIGMAS = 6;

    private static final double STRAY_KELVIN = 1.0;

    /** After this many strays in a row the curve begins anew: the tip really is somewhere else now. */
    private static final int STRAYS_BELIEVED = 4;

    /** How long a stray casts doubt on its neighbours, and an absurd step that was believed on what follows. */
    private static final Duration STRAY_DOUBTED = Duration.ofSeconds(2);

    private static final Duration ABSURD_DOUBTED = Duration.ofSeconds(12);
    private static final double ABSURD_STEP_KELVIN = 30;

    /** Faster than any bowl of chocolate: 200 g of it in an ice bath fall by about 15 K/min (estimate, no source). */
    private static final double TOO_FAST_KELVIN_PER_SECOND = 40.0 / 60;

    /** Range of a cold junction in a kitchen, °C. Own choice. */
    private static final double JUNCTION_LOW_CELSIUS = -10;

    private static final double JUNCTION_HIGH_CELSIUS = 60;

    /** After this long without readings the old curve says nothing about the new one. */
    private static final double FORGET_SECONDS = 60;

    private static final double FORGET_PERIODS = 3;

    /** Opening a port resets some adapters, which then take seconds to begin. Own choice. */
    private static final double FIRST_READING_SECONDS = 10;

    /** A bowl's probe from which nothing has come yet. */
    public static Track silentSince(Instant start) {
        return silentSince(start, Pace.QUICK);
    }

    /** A probe of this role from which nothing has come yet. */
    public static Track silentSince(Instant start, Role role) {
        return silentSince(start, role == Role.BOWL ? Pace.QUICK : Pace.ANY);
    }

    private static Track silentSince(Instant start, Pace pace) {
        return new Track(
                Optional.empty(),
                start,
                OptionalDouble.empty(),
                pace,
                0,
                Instant.MIN,
                0,
                start,
                Optional.empty(),
                0,
                Double.MAX_VALUE,
                Optional.empty());
    }

    public Track {
        Objects.requireNonNull(trend, "trend");
        Objects.requireNonNull(lastGood, "lastGood");
        Objects.requireNonNull(lastCelsius, "lastCelsius");
        Objects.requireNonNull(pace, "pace");
        Objects.requireNonNull(fault, "fault");
        Objects.requireNonNull(doubt, "doubt");
    }

    /** This probe once it has read {@code sample}. */
    public Track with(Sample sample, Correction correction) {
        double celsius = correction.apply(sample.tipCelsius());
        double gap = Math.max(0, seconds(lastGood, sample.at()));
        if (trend.isEmpty() || gap > forgetSeconds()) return begun(sample, celsius, gap);
        Trend expected = trend.get().after(gap);
        double off = Math.abs(celsius - expected.level());
        boolean stray = off > STRAY_KELVIN + stepKelvin(sample)
                && Math.abs(expected.surprise(celsius, sample.sigmaKelvin())) > STRAY_SIGMAS;
        if (!stray) return followed(sample, celsius, expected.with(celsius, sample.sigmaKelvin()), gap);
        return strays + 1 >= STRAYS_BELIEVED ? begun(sample, celsius, gap) : strayed(sample.at());
    }

    /** This probe once its adapter has reported {@code reported}. */
    public Track with(ProbeFault reported) {
        // Neither garbled bytes nor a pause between lines is a fault of the probe: whether a reading is overdue is
        // judged
        // by the adapter's own period.
        if (reported.cause() == Cause.GARBLED || reported.cause() == Cause.SILENT || reported.cause() == Cause.FLOODED)
            return this;
        return new Track(
                trend,
                lastGood,
                lastCelsius,
                pace,
                strays,
                doubtedUntil,
                0,
                goodSince,
                Optional.of(reported.cause()),
                faultsInARow + 1,
                restNoiseVariance,
                doubt);
    }

    /** The same readings with a further doubt about them; the graver one is told. */
    public Track doubted(Optional<Doubt> judged) {
        Optional<Doubt> told = Doubt.first(doubt, judged);
        if (told.equals(doubt)) return this;
        return new Track(
                trend,
                lastGood,
                lastCelsius,
                pace,
                strays,
                doubtedUntil,
                goodInARow,
                goodSince,
                fault,
                faultsInARow,
                restNoiseVariance,
                told);
    }

    /** A curve that begins anew with the next reading: the tip was somewhere else meanwhile. */
    public Track anew() {
        return new Track(
                Optional.empty(),
                lastGood,
                lastCelsius,
                pace,
                0,
                Instant.MIN,
                0,
                goodSince,
                fault,
                faultsInARow,
                restNoiseVariance,
                Optional.empty());
    }

    /** The same curve, but of this slope, K/s, as far as known: the chocolate goes on as before the tip was elsewhere. */
    public Track goingOn(double kelvinPerSecond) {
        return new Track(
                trend.map(t -> t.goingOn(kelvinPerSecond)),
                lastGood,
                lastCelsius,
                pace,
                strays,
                doubtedUntil,
                goodInARow,
                goodSince,
                fault,
                faultsInARow,
                restNoiseVariance,
                doubt);
    }

    /** How old the last good reading is. */
    public Duration age(Instant now) {
        return Duration.between(lastGood, now);
    }

    /** Whether a number as old as this may still be shown as the present one: younger than max(2 s, 5 periods). */
    public boolean freshAt(Instant now) {
        return lastCelsius.isPresent() && !overdueAt(now) && fault.isEmpty();
    }

    /**
     * Whether the last number of a probe in water or air is the present one and nothing speaks against the probe: water
     * may be poured and air may be fanned, so jumps and haste are no fault there.
     */
    public boolean isTrustedAt(Instant now) {
        return freshAt(now) && doubt.filter(Doubt::isOfInstrument).isEmpty();
    }

    /** Whether a reading should have come by now; a port just opened may take some seconds to its first. */
    public boolean overdueAt(Instant now) {
        double patience = lastCelsius.isPresent() ? pace.overdueSeconds() : FIRST_READING_SECONDS;
        return seconds(lastGood, now) > patience;
    }

    /** Noise of one reading around the curve, K. */
    public double noiseKelvin() {
        return trend.map(t -> Math.sqrt(t.noiseVariance())).orElse(0.0);
    }

    private Track begun(Sample sample, double celsius, double gap) {
        boolean jumped = trend.isPresent() && strays > 0;
        // Between air and melted chocolate a tip may step by 25 K; a larger step is more likely a converter's
        // power-up value, and nothing is built on it before it has stood for a while.
        boolean absurd = jumped && Math.abs(celsius - trend.get().level()) > ABSURD_STEP_KELVIN;
        return used(
                sample.at(),
                celsius,
                Trend.startingAt(celsius, Math.max(sample.sigmaKelvin(), 0.05)),
                paced(gap),
                absurd ? sample.at().plus(ABSURD_DOUBTED) : doubtedUntil,
                jumped ? Optional.of(Doubt.JUMPS) : Optional.empty());
    }

    private Track followed(Sample sample, double celsius, Trend followed, double gap) {
        return used(sample.at(), celsius, followed, paced(gap), doubtedUntil, doubtAbout(sample, followed));
    }

    /** The width of the rounding whose standard uncertainty the reading carries (JCGM 100:2008, F.2.2.1). */
    private static double stepKelvin(Sample sample) {
        return sample.sigmaKelvin() * Math.sqrt(12);
    }

    private double forgetSeconds() {
        return Math.max(FORGET_SECONDS, FORGET_PERIODS * pace.periodSeconds());
    }

    /** Only a reading that follows a good one, with none lost or refused between, says anything of the pace. */
    private Pace paced(double gap) {
        return strays == 0 && goodInARow > 0 && fault.isEmpty() ? pace.with(gap) : pace;
    }

    private Optional<Doubt> doubtAbout(Sample sample, Trend followed) {
        if (sample.junctionCelsius().isPresent()) {
            double junction = sample.junctionCelsius().getAsDouble();
            if (junction < JUNCTION_LOW_CELSIUS || junction > JUNCTION_HIGH_CELSIUS) return Optional.of(Doubt.JUNCTION);
        }
        if (sample.at().isBefore(doubtedUntil)) return Optional.of(Doubt.JUMPS);
        if (goodInARow > 10 && Math.abs(followed.slope()) > TOO_FAST_KELVIN_PER_SECOND) {
            return Optional.of(Doubt.TOO_FAST);
        }
        // Ten times the noise at rest, enough of it to matter against a window of one kelvin, and more than two steps
        // of rounding.
        boolean noisy = followed.noiseVariance() > 100 * restNoiseVariance
                && followed.noiseVariance() > Math.max(0.15 * 0.15, 4 * stepKelvin(sample) * stepKelvin(sample));
        return noisy ? Optional.of(Doubt.NOISY) : Optional.empty();
    }

    private Track used(Instant at, double celsius, Trend now, Pace paced, Instant doubtUntil, Optional<Doubt> doubted) {
        boolean inARow = fault.isEmpty() && strays == 0 && !overdueAt(at) && goodInARow > 0;
        double rest =
                goodInARow > 30 ? Math.min(restNoiseVariance, Math.max(now.noiseVariance(), 1e-6)) : restNoiseVariance;
        return new Track(
                Optional.of(now),
                at,
                OptionalDouble.of(celsius),
                paced,
                0,
                doubtUntil,
                inARow ? goodInARow + 1 : 1,
                inARow ? goodSince : at,
                Optional.empty(),
                0,
                rest,
                doubted);
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }

    private Track strayed(Instant at) {
        return new Track(
                trend,
                lastGood,
                lastCelsius,
                pace,
                strays + 1,
                later(doubtedUntil, at.plus(STRAY_DOUBTED)),
                0,
                goodSince,
                fault,
                faultsInARow,
                restNoiseVariance,
                Optional.of(Doubt.JUMPS));
    }

    /** Seconds between two instants; a very long time where {@code from} is {@link Instant#MIN}. */
    static double seconds(Instant from, Instant to) {
        if (from.equals(Instant.MIN)) return 1e9;
        Duration d = Duration.between(from, to);
        return d.getSeconds() + d.getNano() / 1e9;
    }
}
