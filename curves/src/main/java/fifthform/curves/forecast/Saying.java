package fifthform.curves.forecast;

import fifthform.curves.check.Require;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.network.Guess;
import fifthform.curves.network.Points;
import java.time.Instant;
import java.util.Objects;

/**
 * What the network said last, in the session's time.
 *
 * @param guess its answer
 * @param started when the session started
 * @param factor by which its bands are widened in this kitchen ({@link Calibration})
 */
public record Saying(Guess guess, Instant started, double factor) {
    public Saying {
        Objects.requireNonNull(guess, "guess");
        Objects.requireNonNull(started, "started");
        Require.within(factor, Calibration.LEAST_FACTOR, Calibration.MOST_FACTOR, "factor");
    }

    /** When it was said. */
    Instant at() {
        return started.plusMillis(Math.round(1000 * guess.atSeconds()));
    }

    /** The 95 % point of where the chocolate turns after a lift then, °C. */
    public double highestCelsius() {
        Spread turn = ifNow();
        return turn.celsius() + turn.aboveKelvin();
    }

    /** Where the chocolate turns after a lift then, °C: middle and band. */
    Spread ifNow() {
        return spread(guess.ifNow());
    }

    /** The same for a lift {@value Guess#LATER_SECONDS} s later. */
    Spread ifLater() {
        return spread(guess.ifLater());
    }

    /**
     * Whether its turning points are those meant, 0 to 1. A bowl over warm water and one that coasts have the same: the
     * highest temperature on the table. Only of cold water it is the lowest.
     */
    double agreesFraction(boolean warm) {
        double opposite = guess.fractionOf(warm ? Place.COLD_WATER : Place.BATH);
        return 1 - opposite;
    }

    private Spread spread(Points points) {
        double middle = points.halfKelvin();
        return new Spread(
                guess.baseCelsius() + middle,
                factor * (middle - points.fiveKelvin()),
                factor * (points.ninetyFiveKelvin() - middle));
    }
}
