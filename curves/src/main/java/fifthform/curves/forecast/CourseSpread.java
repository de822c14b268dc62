package fifthform.curves.forecast;

import fifthform.curves.input.MakerAction.Place;

/**
 * How unsure a {@link Course} is so many seconds ahead, as a standard deviation: what is unsure about its beginning, and
 * what its shape leaves out. The parts are independent and add up by their squares.
 *
 * <ul>
 *   <li>the present temperature, K;
 *   <li>the present rate, K/s, times the time for which a rate still tells, s ({@link Course#reachSeconds});
 *   <li>the heat on its way from the wall: how much of it there is, and how much of it does not die away as a coast does
 *       but goes on (a bath that is weaker, a loss that is larger than supposed) ({@link Course#goingOnKelvin});
 *   <li>a share of the way gone: stirring that stops and begins, crystals' heat;
 *   <li>time alone: doors, hands, a probe that moves in the bowl.
 * </ul>
 *
 * The shares make the interval score of the 90 % band (Gneiting and Raftery, <i>Strictly proper scoring rules,
 * prediction, and estimation</i>, Journal of the American Statistical Association 102, 2007; from memory) least over 120
 * batches of the home fleet (seed 77), 60 and 180 s ahead, with the hands as they are and as they went on. They are not
 * taken from the measured curves, on which {@code MeasuredCoolingTest} tries them.
 */
final class CourseSpread {
    /** What one kind of place leaves unsure; shares without a unit. */
    private record Shares(double rate, double coast, double goingOn, double way, double kelvinPerMinute) {}

    private static final Shares ON_TABLE = new Shares(0.75, 0.45, 0.5, 0.3, 0.055);

    /** A bath that nobody has measured, and a wall that is not yet as warm as it will be. */
    private static final Shares ON_BATH = new Shares(1.65, 0, 0.7, 0.32, 0.02);

    /** Chocolate that stiffens at the wall and is stirred or not makes cold water the least sure of all. */
    private static final Shares IN_COLD_WATER = new Shares(3.9, 0, 0.65, 0.2, 0.14);

    private CourseSpread() {}

    /** Standard deviation of the temperature {@code seconds} ahead, K. */
    static double kelvin(Course course, double seconds, double rateSigmaKelvinPerSecond, double levelSigmaKelvin) {
        Shares shares = shares(course.place());
        double fromRate = shares.rate() * course.reachSeconds(seconds) * rateSigmaKelvinPerSecond;
        double fromCoast = shares.coast() * course.coastingKelvin(seconds);
        double fromGoingOn = shares.goingOn() * course.goingOnKelvin(seconds);
        double fromWay = shares.way() * (course.at(seconds) - course.celsius());
        double fromTime = shares.kelvinPerMinute() * seconds / 60;
        return Math.sqrt(levelSigmaKelvin * levelSigmaKelvin
                + fromRate * fromRate
                + fromCoast * fromCoast
                + fromGoingOn * fromGoingOn
                + fromWay * fromWay
                + fromTime * fromTime);
    }

    private static Shares shares(Place place) {
        return switch (place) {
            case TABLE -> ON_TABLE;
            case BATH -> ON_BATH;
            case COLD_WATER -> IN_COLD_WATER;
        };
    }
}
