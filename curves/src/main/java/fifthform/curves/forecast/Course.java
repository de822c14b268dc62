package fifthform.curves.forecast;

import fifthform.curves.input.MakerAction.Place;

/**
 * The curve from now on if nothing is done, as a function of the seconds ahead.
 *
 * <p>Over water the chocolate nears the bath exponentially, {@code T + r τ (1 − e^{−t/τ})} with {@code τ = (B − T)/r};
 * on the table it coasts, {@code T + (r + ℓ) L (1 − e^{−t/L}) − ℓ t}. Both follow from the heat balances of
 * {@link Coast}; the bath's temperature is planned, measured or usual.
 *
 * @param place where the bowl stands
 * @param celsius temperature now, °C
 * @param kelvinPerSecond rate now, K/s
 * @param lossKelvinPerSecond loss to the room, K/s
 * @param coastSeconds coast time of the bowl, s
 * @param bathCelsius temperature of the water, °C; of no meaning on the table
 */
public record Course(
        Place place,
        double celsius,
        double kelvinPerSecond,
        double lossKelvinPerSecond,
        double coastSeconds,
        double bathCelsius) {
    /** Closest that a bath may be taken to lie to the chocolate it is still heating or cooling, K. */
    private static final double LEAST_PUSH_KELVIN = 1.0;

    /** Temperature {@code seconds} ahead, °C. */
    public double at(double seconds) {
        return place == Place.TABLE ? onTable(seconds) : overWater(seconds);
    }

    /** Rate {@code seconds} ahead, K/s. */
    double rateAt(double seconds) {
        if (place == Place.TABLE) {
            return inflow() * StrictMath.exp(-seconds / coastSeconds) - lossKelvinPerSecond;
        }
        if (cannotCool()) return kelvinPerSecond * StrictMath.exp(-seconds / coastSeconds);
        return pushes() ? kelvinPerSecond * StrictMath.exp(-seconds / approachSeconds()) : kelvinPerSecond;
    }

    /** The time for which an error of the present rate still tells: K of error ahead for each K/s, s. */
    double reachSeconds(double seconds) {
        if (place != Place.TABLE && !pushes() && !cannotCool()) return seconds;
        double tau = place == Place.TABLE || cannotCool() ? coastSeconds : approachSeconds();
        return tau * -StrictMath.expm1(-seconds / tau);
    }

    /** The part of the way that is heat still on its way from the wall, K; none over water. */
    double coastingKelvin(double seconds) {
        return place == Place.TABLE ? inflow() * reachSeconds(seconds) : 0;
    }

    /** How much further it would be if what drives it now did not die away, K. */
    double goingOnKelvin(double seconds) {
        double driven = place == Place.TABLE ? inflow() : kelvinPerSecond;
        return driven * (seconds - reachSeconds(seconds));
    }

    /** How much farther a lift would carry after so many seconds than one now, K: the way until then, and more or less coast. */
    double turnFartherKelvin(double seconds) {
        return at(seconds) - celsius + coastSeconds * (rateAt(seconds) - kelvinPerSecond);
    }

    private double onTable(double seconds) {
        return celsius
                + inflow() * coastSeconds * -StrictMath.expm1(-seconds / coastSeconds)
                - lossKelvinPerSecond * seconds;
    }

    private double overWater(double seconds) {
        if (cannotCool()) return celsius + kelvinPerSecond * reachSeconds(seconds);
        if (!pushes()) return celsius + kelvinPerSecond * seconds;
        double tau = approachSeconds();
        return celsius + kelvinPerSecond * tau * -StrictMath.expm1(-seconds / tau);
    }

    /** Heat still coming from the wall, as a rate of the chocolate, K/s. */
    private double inflow() {
        return kelvinPerSecond + lossKelvinPerSecond;
    }

    /** Whether the rate goes the way this water pushes; just after a move it may still go the other way. */
    private boolean pushes() {
        return kelvinPerSecond != 0 && (bathCelsius - celsius) * kelvinPerSecond > 0;
    }

    /** Put over warmer water while it still sinks, it sinks only as long as its wall is cold. */
    private boolean cannotCool() {
        return place == Place.BATH && kelvinPerSecond < 0 && bathCelsius > celsius;
    }

    private double approachSeconds() {
        double push = Math.max(LEAST_PUSH_KELVIN, Math.abs(bathCelsius - celsius));
        return Math.max(20, push / Math.abs(kelvinPerSecond));
    }
}
