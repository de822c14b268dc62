package fifthform.simulator.maker;

import fifthform.curves.check.Require;
import fifthform.simulator.bowl.Spot;
import java.util.Objects;

/**
 * One station of somebody who explores: where the bowl stands and what ends that.
 *
 * @param spot where
 * @param mostSeconds never longer than this, s
 * @param mark what the thermometer does that ends it earlier
 * @param onlyAboveCelsius left out where the thermometer does not stand above this when its turn comes
 */
record Stay(Spot spot, double mostSeconds, Mark mark, double onlyAboveCelsius) {
    private static final double ALWAYS = -1000;

    /** What the thermometer does. */
    enum Kind {
        NOTHING,
        RISEN_TO,
        FALLEN_TO,
        RISEN_BY
    }

    /**
     * What the thermometer does.
     *
     * @param kind of event
     * @param celsius the reading in °C, or the rise in K
     */
    record Mark(Kind kind, double celsius) {
        static final Mark NONE = new Mark(Kind.NOTHING, 0);

        Mark {
            Objects.requireNonNull(kind, "kind");
            Require.finite(celsius, "celsius");
        }

        /** An unknown reading, NaN, reaches nothing. */
        boolean reached(double shownCelsius, double atFirstCelsius) {
            return switch (kind) {
                case NOTHING -> false;
                case RISEN_TO -> shownCelsius >= celsius;
                case FALLEN_TO -> shownCelsius <= celsius;
                case RISEN_BY -> shownCelsius >= atFirstCelsius + celsius;
            };
        }
    }

    Stay {
        Objects.requireNonNull(spot, "spot");
        Require.within(mostSeconds, 0, 3600, "mostSeconds");
        Objects.requireNonNull(mark, "mark");
    }

    static Stay seconds(Spot spot, double seconds) {
        return new Stay(spot, seconds, Mark.NONE, ALWAYS);
    }

    static Stay until(Spot spot, Kind kind, double celsius, double mostSeconds) {
        return new Stay(spot, mostSeconds, new Mark(kind, celsius), ALWAYS);
    }

    Stay onlyAbove(double celsius) {
        return new Stay(spot, mostSeconds, mark, celsius);
    }

    boolean leftOut(double shownCelsius) {
        return onlyAboveCelsius != ALWAYS && !(shownCelsius > onlyAboveCelsius);
    }

    boolean over(double lastedSeconds, double shownCelsius, double atFirstCelsius) {
        return lastedSeconds >= mostSeconds || mark.reached(shownCelsius, atFirstCelsius);
    }
}
