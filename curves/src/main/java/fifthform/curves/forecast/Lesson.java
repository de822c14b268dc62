package fifthform.curves.forecast;

import fifthform.curves.phase.Evidence;
import java.time.Duration;
import java.util.Optional;

/**
 * What one lift whose turning point was seen says of the bowl's coast time. The spreads are for lifts of one batch; what
 * differs from day to day is {@link Coast}'s business. Both were set against simulated home kitchens.
 *
 * @param coastSeconds the coast time that would explain it, s
 * @param logSpread standard deviation of its logarithm
 */
record Lesson(double coastSeconds, double logSpread) {
    /** Below this rate or coast a lift teaches nothing: noise would be taken for heat. */
    private static final double LEAST_KELVIN_PER_MINUTE = 0.6;

    private static final double LEAST_COAST_KELVIN = 0.12;

    /** A shorter stay in the water has not yet warmed or cooled the wall as deeply as a long one. */
    private static final Duration LEAST_STAY = Duration.ofSeconds(20);

    private static final double AFTER_WARM_WATER = 0.22;

    /** The end of a fall fades into the loss to the room, so where it ended is less sure than where a rise did. */
    private static final double AFTER_COLD_WATER = 0.28;

    /** Where nobody said it, the moment of the lift is some seconds unsure. */
    private static final double MOMENT_INFERRED = 0.25;

    /** Above this the bowl comes from the melting bath: lumps and steam make it a poor lesson. */
    private static final double MELTING_CELSIUS = 38;

    private static final double MELTING = 0.4;
    private static final double RATE_SIGMA_KELVIN_PER_MINUTE = 0.15;
    private static final double COAST_SIGMA_KELVIN = 0.08;

    /** @param loss to the room at the lift, K/s */
    static Optional<Lesson> of(Lift lift, double loss) {
        Stretch approach = lift.approach()
                .filter(a -> a.kelvinPerSecond() * lift.kelvinPerMinute() > 0)
                .orElse(new Stretch(lift.celsius(), lift.kelvinPerMinute() / 60));
        double perMinute = Math.abs(60 * approach.kelvinPerSecond());
        double coast = lift.steadyExtremeCelsius() - approach.celsius();
        boolean teaches = lift.stay().compareTo(LEAST_STAY) >= 0
                && perMinute >= LEAST_KELVIN_PER_MINUTE
                && Math.abs(coast) >= LEAST_COAST_KELVIN;
        if (!teaches) return Optional.empty();
        // The coast is proportional to the coast time: what one second of it would give says how many there were.
        double perSecond = Coast.turnKelvin(1, approach.kelvinPerSecond() + loss, loss);
        if (!(coast / perSecond > 0)) return Optional.empty();
        double usual = lift.isRising() ? AFTER_WARM_WATER : AFTER_COLD_WATER;
        double moment = lift.evidence() == Evidence.TOLD ? 0 : MOMENT_INFERRED;
        double melting = lift.celsius() > MELTING_CELSIUS ? MELTING : 0;
        double rate = RATE_SIGMA_KELVIN_PER_MINUTE / perMinute;
        double extreme = COAST_SIGMA_KELVIN / Math.abs(coast);
        double spread =
                Math.sqrt(usual * usual + moment * moment + melting * melting + rate * rate + extreme * extreme);
        return Optional.of(new Lesson(coast / perSecond, spread));
    }
}
