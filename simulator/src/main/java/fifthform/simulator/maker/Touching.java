package fifthform.simulator.maker;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * How somebody brings a bowl into the range and holds it there by the thermometer alone: a few seconds over the water,
 * wait for the peak, the next touch as long as the last one's rise says. Invented, after the rule of the method page.
 *
 * @param seconds how long the next touch is
 * @param fromCelsius where the last one began
 * @param highestCelsius the highest shown since
 * @param highestAt when that was
 */
record Touching(double seconds, double fromCelsius, double highestCelsius, Optional<Instant> highestAt) {
    private static final double FIRST_SECONDS = 4;
    private static final double LONGEST_SECONDS = 60;
    private static final double SHORTEST_SECONDS = 2;
    private static final double SHARE = 0.6;
    /** The peak has passed when nothing higher came for so long. */
    private static final Duration PASSED = Duration.ofSeconds(25);

    static final Touching NONE_YET = new Touching(FIRST_SECONDS, Double.NaN, Double.NaN, Optional.empty());

    /** Goes over the water now. */
    Touching begun(double shownCelsius) {
        return new Touching(seconds, shownCelsius, shownCelsius, Optional.empty());
    }

    Touching seen(Instant at, double shownCelsius) {
        if (highestAt.isPresent() && !(shownCelsius > highestCelsius)) return this;
        return new Touching(seconds, fromCelsius, Math.max(shownCelsius, highestCelsius), Optional.of(at));
    }

    boolean passed(Instant at) {
        return highestAt.isEmpty() || Duration.between(highestAt.get(), at).compareTo(PASSED) >= 0;
    }

    /** The next touch, with so much still missing after the last. */
    Touching next(double missingKelvin) {
        double rise = highestCelsius - fromCelsius;
        if (!(rise > 0.05)) return with(Math.min(LONGEST_SECONDS, 2 * seconds));
        double wanted = SHARE * missingKelvin * seconds / rise;
        return with(Math.max(SHORTEST_SECONDS, Math.min(Math.min(LONGEST_SECONDS, 2 * seconds), wanted)));
    }

    private Touching with(double other) {
        return new Touching(other, fromCelsius, highestCelsius, highestAt);
    }
}
