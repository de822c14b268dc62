package fifthform.curves.forecast;

import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.network.Guess;
import fifthform.curves.phase.Batch;
import fifthform.curves.recipe.Phase;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * The turning point as the network sees it, at this moment, and how much it is to be believed beside the physics.
 *
 * @param fraction how far it is believed, 0 to 1
 * @param stands how likely the bowl stands where it is thought to stand, 0 to 1
 * @param now the turning point of a lift at this moment
 * @param later of a lift {@value Guess#LATER_SECONDS} s after the network spoke
 * @param aheadSeconds from when the network spoke to this moment, s
 */
record HeardTurn(double fraction, double stands, Spread now, Spread later, double aheadSeconds) {
    /** Below the first it is not believed that its turning point is the one meant, above the second it is. Own choice. */
    private static final double AGREES_HARDLY = 0.4;

    private static final double AGREES = 0.8;

    /** Who is told to lift a bowl that stands on the table trusts no cue any more. A weak gate, as trials had it. */
    private static final double STANDS_LEAST = 0.2;

    /** Readings further apart than this come between two steps as news; closer ones the network's slope covers. */
    private static final double SLOW_SECONDS = 4;

    private static final double SLOWEST_KELVIN_PER_SECOND = 0.05 / 60;

    static HeardTurn of(Saying saying, Batch batch, Coasting coasting, Estimate estimate, Instant now) {
        Guess guess = saying.guess();
        double ahead = seconds(saying.at(), now);
        double share = Math.min(1, Math.max(0, ahead) / Guess.LATER_SECONDS);
        Spread then = saying.ifNow();
        Spread later = saying.ifLater();
        boolean slow = guess.atSeconds() - guess.readSeconds() > SLOW_SECONDS;
        Spread turn;
        // A bowl on the table turns where it turns, whenever it is asked.
        if (batch.place() == Place.TABLE) turn = then;
        else if (slow) turn = then.shifted(estimate.trend().level() - guess.readCelsius());
        else turn = then.towards(later, share);
        double stands = guess.fractionOf(batch.place());
        return new HeardTurn(fraction(saying, batch, coasting), stands, turn, later, ahead);
    }

    /** Whether there may be something to lift. */
    boolean liftable() {
        return stands >= STANDS_LEAST;
    }

    /** It has a say of a turning point that the bowl's own lift, or the next, leads to; not of the melting bath. */
    private static double fraction(Saying saying, Batch batch, Coasting coasting) {
        boolean melting = batch.place() == Place.BATH && batch.phase() == Phase.MELT;
        boolean turned = batch.place() == Place.TABLE && coasting.lift().isEmpty();
        if (melting || turned) return 0;
        boolean warm = batch.place() == Place.BATH
                || coasting.lift().filter(Lift::isRising).isPresent();
        double agrees = saying.agreesFraction(warm);
        return Math.min(1, Math.max(0, (agrees - AGREES_HARDLY) / (AGREES - AGREES_HARDLY)));
    }

    /**
     * Seconds from now to the lift that lands the turning point at its aim, on a straight line through the two lifts that
     * the network speaks of; empty where the water does not move it that way.
     *
     * @param aim where a turning point of this spread should land, °C
     */
    OptionalDouble secondsToLift(Place place, ToDoubleFunction<Spread> aim) {
        double way = place == Place.COLD_WATER ? -1 : 1;
        double missing = way * (aim.applyAsDouble(now) - now.celsius());
        double missingLater = way * (aim.applyAsDouble(later) - later.celsius());
        double between = Math.max(1, Guess.LATER_SECONDS - aheadSeconds);
        double perSecond = (missing - missingLater) / between;
        return place == Place.TABLE || perSecond < SLOWEST_KELVIN_PER_SECOND
                ? OptionalDouble.empty()
                : OptionalDouble.of(missing / perSecond);
    }

    private static double seconds(Instant from, Instant to) {
        Duration d = Duration.between(from, to);
        return d.getSeconds() + d.getNano() / 1e9;
    }
}
