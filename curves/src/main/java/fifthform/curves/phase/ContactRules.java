package fifthform.curves.phase;

import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Phase;
import fifthform.curves.signal.Window;
import fifthform.curves.signal.Window.Point;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Where the bowl must be standing, judged from its curve alone. A key press is believed first and for a while; after
 * that the curve may say otherwise, since makers press late, or forget.
 *
 * <p>All thresholds are our own, set against the rates of a lumped bowl of 0.2 to 5 kg: cold water 1 to 10 K/min down,
 * table 0.1 to 1 K/min down, warm bath 0.4 to 6 K/min up.
 */
final class ContactRules {
    private static final Duration BELIEVE_A_KEY = Duration.ofSeconds(20);
    private static final Duration SUSTAINED = Duration.ofSeconds(6);
    private static final Duration LOOK_BACK = Duration.ofSeconds(30);

    private static final double WARMING_KELVIN_PER_MINUTE = 0.4;
    private static final double COLD_WATER_KELVIN_PER_MINUTE = -1.2;

    /**
     * A bath's own push fades over minutes: to 0.85 or so within {@link #LOOK_BACK}. A rate that has come down to this
     * share of it means that the push has gone.
     */
    private static final double FADED = 0.7;

    /** On the table a rate this close to the fastest of late is not fading: water holds the bowl. */
    private static final double STILL_PUSHED = 0.85;

    private static final double CLEAR_RATE_KELVIN_PER_MINUTE = 0.6;

    private ContactRules() {}

    static Contact next(Contact contact, Phase phase, Estimate estimate, Window window, Instant now) {
        boolean keyStillFresh = contact.evidence() == Evidence.TOLD
                && Duration.between(contact.since(), now).compareTo(BELIEVE_A_KEY) < 0;
        if (keyStillFresh) return contact;
        Place seen = switch (contact.place()) {
            case BATH -> fromBath(contact, phase, estimate, window, now);
            case COLD_WATER -> fromColdWater(contact, estimate, window, now);
            case TABLE -> fromTable(phase, estimate, window, now);
        };
        return contact.movedTo(seen, now, Evidence.INFERRED);
    }

    private static Place fromBath(Contact contact, Phase phase, Estimate estimate, Window window, Instant now) {
        if (throughout(window, now, Place.COLD_WATER)) return Place.COLD_WATER;
        double rate = estimate.rateKelvinPerMinute();
        if (rate + estimate.rateSigmaKelvinPerMinute() < -WARMING_KELVIN_PER_MINUTE) return Place.TABLE;
        // While melting, lumps and stirring make the rate swing; there only a fall shows that the bowl has left.
        if (phase == Phase.MELT) return Place.BATH;
        Optional<Point> fastest = window.fastestRiseSince(later(contact.since(), now.minus(LOOK_BACK)));
        boolean faded = fastest.isPresent()
                && fastest.get().kelvinPerMinute() > CLEAR_RATE_KELVIN_PER_MINUTE
                && rate + estimate.rateSigmaKelvinPerMinute()
                        < FADED * fastest.get().kelvinPerMinute();
        return faded ? Place.TABLE : Place.BATH;
    }

    private static Place fromColdWater(Contact contact, Estimate estimate, Window window, Instant now) {
        if (throughout(window, now, Place.BATH)) return Place.BATH;
        Optional<Point> fastest = window.fastestFallSince(later(contact.since(), now.minus(LOOK_BACK)));
        double rate = estimate.rateKelvinPerMinute();
        boolean faded = fastest.isPresent()
                && fastest.get().kelvinPerMinute() < -CLEAR_RATE_KELVIN_PER_MINUTE
                && rate - estimate.rateSigmaKelvinPerMinute()
                        > FADED * fastest.get().kelvinPerMinute();
        return faded ? Place.TABLE : Place.COLD_WATER;
    }

    /** A coast after a lift moves on as well, but ever more slowly; water under the bowl does not let go. */
    private static Place fromTable(Phase phase, Estimate estimate, Window window, Instant now) {
        double rate = estimate.rateKelvinPerMinute();
        if (throughout(window, now, Place.COLD_WATER)) {
            boolean pulled = rate < STILL_PUSHED * rateOf(window.fastestFallSince(now.minus(LOOK_BACK)));
            return pulled ? Place.COLD_WATER : Place.TABLE;
        }
        if (!throughout(window, now, Place.BATH)) return Place.TABLE;
        boolean pushed = rate > STILL_PUSHED * rateOf(window.fastestRiseSince(now.minus(LOOK_BACK)));
        return pushed || phase == Phase.MELT ? Place.BATH : Place.TABLE;
    }

    private static double rateOf(Optional<Point> point) {
        return point.map(Point::kelvinPerMinute).orElse(0.0);
    }

    private static boolean throughout(Window window, Instant now, Place place) {
        Instant from = now.minus(SUSTAINED);
        return place == Place.COLD_WATER
                ? window.highestRateThroughout(from).orElse(0) < COLD_WATER_KELVIN_PER_MINUTE
                : window.lowestRateThroughout(from).orElse(0) > WARMING_KELVIN_PER_MINUTE;
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }
}
