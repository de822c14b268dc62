package fifthform.simulator.bowl;

import fifthform.curves.check.Require;
import java.util.Objects;

/**
 * A mass of chocolate and the range between two temperatures in which its crystals melt.
 *
 * <p>Specific heat 1590 J/kgK up to 40 °C and 1670 J/kgK above; latent heat of dark chocolate 46 kJ/kg, of milk
 * 44 kJ/kg. Source: Beckett ed., Industrial Chocolate Manufacture and Use, 4th ed. 2009, pp. 667–668. The melting range
 * is spread evenly, which is a simplification of our own.
 *
 * @param kilograms mass, 0.1 to 5 kg
 * @param latentJoulesPerKilogram latent heat of melting, 0 to 100 000 J/kg
 * @param meltsFromCelsius where melting begins, 0 to 39 °C
 * @param meltsToCelsius where the last crystal is gone, above {@code meltsFromCelsius}, at most 40 °C
 * @param fat how readily its fat crystallises
 */
public record Chocolate(
        double kilograms, double latentJoulesPerKilogram, double meltsFromCelsius, double meltsToCelsius, Fat fat) {
    private static final double KNEE_CELSIUS = 40;
    private static final double COOL_JOULES_PER_KILOGRAM_KELVIN = 1590;
    private static final double WARM_JOULES_PER_KILOGRAM_KELVIN = 1670;
    private static final double KNEE_JOULES_PER_KILOGRAM = KNEE_CELSIUS * COOL_JOULES_PER_KILOGRAM_KELVIN;

    /** With the middle of what is known of cocoa butter. */
    public Chocolate(double kilograms, double latentJoulesPerKilogram, double meltsFromCelsius, double meltsToCelsius) {
        this(kilograms, latentJoulesPerKilogram, meltsFromCelsius, meltsToCelsius, Fat.MIDDLE);
    }

    /** Dark chocolate melting between 28 and 34 °C. The range is common practice, no source. */
    public static Chocolate dark(double kilograms) {
        return new Chocolate(kilograms, 46_000, 28, 34);
    }

    public Chocolate {
        Require.within(kilograms, 0.1, 5, "kilograms");
        Require.within(latentJoulesPerKilogram, 0, 100_000, "latentJoulesPerKilogram");
        Require.within(meltsFromCelsius, 0, 39, "meltsFromCelsius");
        Require.within(meltsToCelsius, Math.nextUp(meltsFromCelsius), KNEE_CELSIUS, "meltsToCelsius");
        Objects.requireNonNull(fat, "fat");
    }

    /**
     * Area of the bowl's wall that the chocolate wets, m²: 0.042 m^(2/3) with m in kg, a spherical cap between flat and
     * half a sphere. This project's own estimate; the bowl's shape multiplies it.
     */
    public double wettedSquareMetres() {
        double root = StrictMath.cbrt(kilograms);
        return 0.042 * root * root;
    }

    /** Fraction that must still be solid at this temperature at the least, if none had melted before. */
    double unmeltedAt(double celsius) {
        double melted = (celsius - meltsFromCelsius) / (meltsToCelsius - meltsFromCelsius);
        return Math.max(0, Math.min(1, 1 - melted));
    }

    /** Temperature of a portion with this heat content (sensible above 0 °C less bound) that is just melting, °C. */
    double celsiusWhileMelting(double joulesPerKilogram) {
        double slope = latentJoulesPerKilogram / (meltsToCelsius - meltsFromCelsius);
        double onTheSlope = (joulesPerKilogram + slope * meltsToCelsius) / (COOL_JOULES_PER_KILOGRAM_KELVIN + slope);
        return onTheSlope <= meltsToCelsius ? onTheSlope : celsiusOfSensible(joulesPerKilogram);
    }

    /** Sensible heat above 0 °C, J/kg. */
    static double sensible(double celsius) {
        if (celsius <= KNEE_CELSIUS) return COOL_JOULES_PER_KILOGRAM_KELVIN * celsius;
        return KNEE_JOULES_PER_KILOGRAM + WARM_JOULES_PER_KILOGRAM_KELVIN * (celsius - KNEE_CELSIUS);
    }

    /** The inverse of {@link #sensible}, °C. */
    static double celsiusOfSensible(double joulesPerKilogram) {
        if (joulesPerKilogram <= KNEE_JOULES_PER_KILOGRAM) return joulesPerKilogram / COOL_JOULES_PER_KILOGRAM_KELVIN;
        return KNEE_CELSIUS + (joulesPerKilogram - KNEE_JOULES_PER_KILOGRAM) / WARM_JOULES_PER_KILOGRAM_KELVIN;
    }

    /** Specific heat at this temperature, J/kgK. */
    static double joulesPerKilogramKelvin(double celsius) {
        return celsius <= KNEE_CELSIUS ? COOL_JOULES_PER_KILOGRAM_KELVIN : WARM_JOULES_PER_KILOGRAM_KELVIN;
    }
}
