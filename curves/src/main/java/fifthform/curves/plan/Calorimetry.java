package fifthform.curves.plan;

/**
 * Where a bowl and a bath meet, if nothing is lost to the room: closed forms.
 *
 * <p>With {@code h} the heat of chocolate ({@link Heat#chocolate}), {@code Q(T1→T2)} what the bowl gives on its way
 * ({@link Bowlful#joulesGiven}) and {@code C2} what a bath takes up for a kelvin, all follow from
 * {@code Q(T1→T) = C2 (T − Tw)}. They know the mean temperature only: the layer at the wall is nearer to the bath's. Source:
 * heat balances; the examples that they are held to are computed with handbook heat capacities (see {@link Heat}).
 */
public final class Calorimetry {
    private static final double KNEE_CELSIUS = 40;

    private Calorimetry() {}

    /**
     * The temperature at which bowl and bath come to rest, °C.
     *
     * @param solidFractionOfFat crystals that form until then, as a fraction of the fat
     */
    public static double equilibriumCelsius(
            Bowlful bowlful, double fromCelsius, WaterBath bath, double solidFractionOfFat) {
        // What the bowl gives is a straight line on either side of the knee; the crossing lies on one of them.
        double below = crossing(bowlful, fromCelsius, bath, solidFractionOfFat, KNEE_CELSIUS);
        if (below <= KNEE_CELSIUS) return below;
        return crossing(bowlful, fromCelsius, bath, solidFractionOfFat, KNEE_CELSIUS + 1);
    }

    private static double crossing(Bowlful bowlful, double from, WaterBath bath, double solid, double onCelsius) {
        double capacity = bowlful.joulesPerKelvin(onCelsius);
        double given = bowlful.joulesGiven(from, onCelsius, solid) + capacity * onCelsius;
        return (given + bath.joulesPerKelvin() * bath.celsius()) / (capacity + bath.joulesPerKelvin());
    }

    /** Mass of water at this temperature, kg, that ends exactly at {@code toCelsius}; the pan's own heat is left out. */
    public static double waterKilograms(
            Bowlful bowlful, double fromCelsius, double toCelsius, double waterCelsius, double solidFractionOfFat) {
        return bowlful.joulesGiven(fromCelsius, toCelsius, solidFractionOfFat)
                / (Heat.WATER_JOULES_PER_KILOGRAM_KELVIN * (toCelsius - waterCelsius));
    }

    /**
     * The hottest bath, °C, that brings the bowl to {@code toCelsius} and no further.
     *
     * @param bath its water and pan; its temperature is what is asked for and not looked at
     * @param solidFractionOfFat negative where crystals melt on the way; 0 is the safe side
     */
    public static double warmestBathCelsius(
            Bowlful bowlful, double fromCelsius, double toCelsius, WaterBath bath, double solidFractionOfFat) {
        return toCelsius - bowlful.joulesGiven(fromCelsius, toCelsius, solidFractionOfFat) / bath.joulesPerKelvin();
    }

    /** The most water of this temperature, kg, that brings the bowl to {@code toCelsius} and no further. */
    public static double mostWaterKilograms(
            Bowlful bowlful, double fromCelsius, double toCelsius, double waterCelsius, double panJoulesPerKelvin) {
        double taken = -bowlful.joulesGiven(fromCelsius, toCelsius, 0);
        double fromPan = panJoulesPerKelvin * (waterCelsius - toCelsius);
        return Math.max(0, taken - fromPan) / (Heat.WATER_JOULES_PER_KILOGRAM_KELVIN * (waterCelsius - toCelsius));
    }

    /**
     * Time to reach {@code toCelsius} in a stirred bath, s, without loss to the room; NaN where the bath never gets it there.
     * Both temperatures lie below the knee of chocolate's heat capacity.
     *
     * @param wattsPerKelvin from the bath to the chocolate
     */
    public static double seconds(
            Bowlful bowlful, double fromCelsius, double toCelsius, WaterBath bath, double wattsPerKelvin) {
        double c1 = bowlful.joulesPerKelvin(Math.min(fromCelsius, KNEE_CELSIUS));
        double c2 = bath.joulesPerKelvin();
        double rest = (c1 * fromCelsius + c2 * bath.celsius()) / (c1 + c2);
        double ratio = (fromCelsius - rest) / (toCelsius - rest);
        if (!(ratio >= 1)) return Double.NaN;
        return StrictMath.log(ratio) / (wattsPerKelvin * (1 / c1 + 1 / c2));
    }
}
