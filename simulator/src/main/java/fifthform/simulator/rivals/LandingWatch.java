package fifthform.simulator.rivals;

import fifthform.curves.engine.Event;
import fifthform.curves.recipe.Phase;
import fifthform.simulator.bench.Moment;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Judging;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Where the rewarm came to: its highest in all, the highest after the last lift, and how long it took. */
final class LandingWatch implements Watch {
    private Optional<Instant> began = Optional.empty();
    private Optional<Instant> settledAt = Optional.empty();
    private double highest = Double.NEGATIVE_INFINITY;
    private double settled = Double.NEGATIVE_INFINITY;
    private double liftedAt = Double.NaN;
    private double firstDipSeconds = Double.NaN;
    private double firstCoastKelvin = Double.NaN;
    private int lifts;

    @Override
    public void saw(Moment before, Moment after, List<Event> events) {
        // Who begins by a touch is never in the phase of one long stay.
        Phase phase = ((Judging) after.maker()).phase();
        boolean rewarming = phase == Phase.REWARM || phase == Phase.WORK;
        if (began.isEmpty() && rewarming) began = Optional.of(before.at());
        if (began.isEmpty()) return;
        double bulk = after.kitchen().bulkCelsius();
        highest = Math.max(highest, bulk);
        boolean nowOff = after.hands().spot() == Spot.TABLE;
        boolean wasOn = before.hands().spot() != Spot.TABLE;
        if (nowOff && wasOn) {
            lifts++;
            settled = Double.NEGATIVE_INFINITY;
            liftedAt = bulk;
            if (lifts == 1) firstDipSeconds = seconds(began.get(), before.at());
        }
        if (nowOff && bulk > settled) {
            settled = bulk;
            settledAt = Optional.of(after.at());
            if (lifts == 1) firstCoastKelvin = settled - liftedAt;
        }
    }

    private static double seconds(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 1000.0;
    }

    Landing landing() {
        return new Landing(
                highest,
                settled,
                settledAt.map(at -> seconds(began.orElseThrow(), at) / 60).orElse(0.0),
                firstDipSeconds,
                firstCoastKelvin,
                lifts);
    }

    /**
     * Where a rewarm came to, in true temperatures.
     *
     * @param highestCelsius the highest of it, °C
     * @param settledCelsius the highest after the last lift, °C
     * @param minutes from the first time over the water to that
     * @param firstDipSeconds how long the bowl first stood over the water, s
     * @param firstCoastKelvin how far it went on after the first lift, K
     * @param lifts how many
     */
    record Landing(
            double highestCelsius,
            double settledCelsius,
            double minutes,
            double firstDipSeconds,
            double firstCoastKelvin,
            int lifts) {}
}
