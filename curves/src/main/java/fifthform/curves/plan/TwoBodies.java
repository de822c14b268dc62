package fifthform.curves.plan;

/**
 * Bowl and bath exchanging heat with each other and with the room: two bodies, each at one temperature.
 * {@code C1 dT/dt = UA (B − T) − G1 (T − room)}, {@code C2 dB/dt = UA (T − B) − G2 (B − room)}; Heun's method in steps of
 * {@link #STEP_SECONDS}. Without loss it meets the closed forms of {@link Calorimetry} (tested).
 *
 * @param bowlful chocolate and bowl
 * @param bath water and pan
 * @param contactWattsPerKelvin UA, from the bath to the chocolate
 * @param topWattsPerKelvin G1, from the chocolate to the room
 * @param panWattsPerKelvin G2, from bath and pan to the room
 * @param roomCelsius the room, °C
 * @param crystals heat that forming crystals give below where they form, J/K; 0 on the way up
 */
record TwoBodies(
        Bowlful bowlful,
        WaterBath bath,
        double contactWattsPerKelvin,
        double topWattsPerKelvin,
        double panWattsPerKelvin,
        double roomCelsius,
        Crystals crystals) {
    private static final double STEP_SECONDS = 2;

    /** Nobody waits longer, s. */
    static final double LONGEST_SECONDS = 3 * 3600;

    /** Crystals that form evenly on the way down between two temperatures, J/K within them. */
    record Crystals(double joulesPerKelvin, double fromCelsius, double toCelsius) {
        static final Crystals NONE = new Crystals(0, 1, 0);

        double at(double celsius) {
            return celsius < fromCelsius && celsius > toCelsius ? joulesPerKelvin : 0;
        }
    }

    /** Where a course stands, s and °C. */
    record Point(double seconds, double celsius, double bathCelsius) {}

    Point begin(double celsius) {
        return new Point(0, celsius, bath.celsius());
    }

    /** A step further. */
    Point next(Point at) {
        double t1 = rate(at.celsius(), at.bathCelsius());
        double b1 = bathRate(at.celsius(), at.bathCelsius());
        double t = at.celsius() + STEP_SECONDS * t1;
        double b = at.bathCelsius() + STEP_SECONDS * b1;
        return new Point(
                at.seconds() + STEP_SECONDS,
                at.celsius() + STEP_SECONDS / 2 * (t1 + rate(t, b)),
                at.bathCelsius() + STEP_SECONDS / 2 * (b1 + bathRate(t, b)));
    }

    /** The chocolate's rate, K/s. */
    double rate(double celsius, double bathCelsius) {
        double watts = contactWattsPerKelvin * (bathCelsius - celsius) - topWattsPerKelvin * (celsius - roomCelsius);
        return watts / (bowlful.joulesPerKelvin(celsius) + crystals.at(celsius));
    }

    private double bathRate(double celsius, double bathCelsius) {
        double watts =
                contactWattsPerKelvin * (celsius - bathCelsius) - panWattsPerKelvin * (bathCelsius - roomCelsius);
        return watts / bath.joulesPerKelvin();
    }

    /** The highest the chocolate gets, and when. */
    Point highest(double fromCelsius) {
        Point at = begin(fromCelsius);
        while (at.seconds() < LONGEST_SECONDS) {
            Point next = next(at);
            if (next.celsius() <= at.celsius()) return at;
            at = next;
        }
        return at;
    }

    /** When the chocolate has come to a temperature, from above or below; its last moment where it never does. */
    Point reaching(double fromCelsius, double toCelsius) {
        return turning(fromCelsius, toCelsius, 0);
    }

    /**
     * When the bowl must be lifted so that it turns at {@code toCelsius}: there it still goes {@code coastSeconds} times its
     * rate. The last moment where that is never so.
     */
    Point turning(double fromCelsius, double toCelsius, double coastSeconds) {
        boolean up = toCelsius > fromCelsius;
        Point at = begin(fromCelsius);
        double turn = turn(at, coastSeconds);
        if (up ? turn >= toCelsius : turn <= toCelsius) return at;
        while (at.seconds() < LONGEST_SECONDS) {
            Point next = next(at);
            double nextTurn = turn(next, coastSeconds);
            if (up ? nextTurn >= toCelsius : nextTurn <= toCelsius) {
                return between(at, next, (toCelsius - turn) / (nextTurn - turn));
            }
            at = next;
            turn = nextTurn;
        }
        return at;
    }

    private double turn(Point at, double coastSeconds) {
        return at.celsius() + coastSeconds * rate(at.celsius(), at.bathCelsius());
    }

    private static Point between(Point before, Point after, double share) {
        return new Point(
                before.seconds() + share * (after.seconds() - before.seconds()),
                before.celsius() + share * (after.celsius() - before.celsius()),
                before.bathCelsius() + share * (after.bathCelsius() - before.bathCelsius()));
    }
}
