package fifthform.curves.plan;

import fifthform.curves.setup.BowlMaterial;

/**
 * Heat capacities and latent heats that plans are reckoned with.
 *
 * <p>Chocolate: 1590 J/kgK up to 40 °C, 1670 above; latent heat of a dark chocolate 46 kJ/kg, of a milk one 44. Source:
 * Beckett ed., Industrial Chocolate Manufacture and Use, 4th ed. 2009, pp. 667–668. The crystals that form while it is
 * tempered give 175 kJ for each kg of solid fat: derived from 137 kJ/kg of fat (form V, from memory) at 78 % solid. Water
 * 4180, steel 500, glass 840 J/kgK: textbook values, from memory; aluminium 900 and polypropylene 1900 likewise.
 */
public final class Heat {
    /** Water, J/kgK. */
    public static final double WATER_JOULES_PER_KILOGRAM_KELVIN = 4180;

    /** What stable crystals give when they form, J for each kg of solid fat. */
    public static final double CRYSTAL_JOULES_PER_KILOGRAM_SOLID = 175_000;

    /** Melting ice, J/kg: 334 kJ/kg, handbook, from memory. */
    public static final double ICE_JOULES_PER_KILOGRAM = 334_000;

    /** Solid chocolate and melted chocolate up to the knee, J/kgK. */
    static final double CHOCOLATE_JOULES_PER_KILOGRAM_KELVIN = 1590;

    private static final double WARM_CHOCOLATE_JOULES_PER_KILOGRAM_KELVIN = 1670;
    private static final double KNEE_CELSIUS = 40;
    private static final double DARK_LATENT_JOULES_PER_KILOGRAM = 46_000;
    private static final double MILK_LATENT_JOULES_PER_KILOGRAM = 44_000;

    private Heat() {}

    /** Heat of melted chocolate above 0 °C, J/kg. */
    public static double chocolate(double celsius) {
        return celsius <= KNEE_CELSIUS
                ? CHOCOLATE_JOULES_PER_KILOGRAM_KELVIN * celsius
                : kneeJoules() + WARM_CHOCOLATE_JOULES_PER_KILOGRAM_KELVIN * (celsius - KNEE_CELSIUS);
    }

    /** The temperature, °C, of melted chocolate with this heat above 0 °C, J/kg. */
    public static double chocolateCelsius(double joulesPerKilogram) {
        return joulesPerKilogram <= kneeJoules()
                ? joulesPerKilogram / CHOCOLATE_JOULES_PER_KILOGRAM_KELVIN
                : KNEE_CELSIUS + (joulesPerKilogram - kneeJoules()) / WARM_CHOCOLATE_JOULES_PER_KILOGRAM_KELVIN;
    }

    /** Heat capacity of melted chocolate at this temperature, J/kgK. */
    static double chocolateCapacity(double celsius) {
        return celsius <= KNEE_CELSIUS
                ? CHOCOLATE_JOULES_PER_KILOGRAM_KELVIN
                : WARM_CHOCOLATE_JOULES_PER_KILOGRAM_KELVIN;
    }

    /**
     * Latent heat of solid, tempered chocolate, J/kg.
     *
     * @param milkFatFraction milk fat as a fraction of the chocolate's mass; any of it makes the chocolate a milk or white one
     */
    public static double latent(double milkFatFraction) {
        return milkFatFraction > 0 ? MILK_LATENT_JOULES_PER_KILOGRAM : DARK_LATENT_JOULES_PER_KILOGRAM;
    }

    /** Heat capacity of a bowl's or pan's material, J/kgK; steel's where it is not known. */
    public static double of(BowlMaterial material) {
        return switch (material) {
            case STEEL, UNKNOWN -> 500;
            case GLASS -> 840;
            case PLASTIC -> 1900;
            case ALUMINIUM -> 900;
        };
    }

    private static double kneeJoules() {
        return CHOCOLATE_JOULES_PER_KILOGRAM_KELVIN * KNEE_CELSIUS;
    }
}
