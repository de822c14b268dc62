package fifthform.curves.plan;

import fifthform.curves.setup.BowlMaterial;

/**
 * How well heat passes into and out of a bowl, from its mass and material.
 *
 * <p>From the water to stirred chocolate {@code 1/U = 1/130 + 1/500 + d/k} m²K/W: a film of chocolate, one of water, and the
 * wall. The films lie within the 60 to 200 W/m²K overall that the reference values allow (an estimate, derived there); the
 * wall's conductivities are handbook values, from memory. To still air 10 W/m²K with radiation: textbook, from memory.
 */
final class Surfaces {
    private static final double FILMS = 1.0 / 130 + 1.0 / 500;
    private static final double AIR_WATTS_PER_SQUARE_METRE_KELVIN = 10;

    /** A bowl on the table stands on a cloth, so less of it is free: at the lower end of the textbook's 8 to 12. */
    private static final double TABLE_WATTS_PER_SQUARE_METRE_KELVIN = 8;

    /** The open top of a spherical cap over its wetted wall. Geometry. */
    private static final double TOP_FRACTION = 0.8;

    /** Mass of a whole bowl over that of its wetted part. A guess. */
    private static final double RIM_FACTOR = 1.4;

    /** A pan of 2 kg of water under a bowl: 0.06 m² at 10 W/m²K, W/K. A guess. */
    private static final double PAN_WATTS_PER_KELVIN = 0.6;

    private static final double PAN_KILOGRAMS = 2;

    private Surfaces() {}

    /** Wall that the chocolate wets, m²: 0.04 m^(2/3), m in kg; within 6 % of the reference schedule's bowls. */
    static double wettedSquareMetres(double kilograms) {
        return 0.04 * twoThirds(kilograms);
    }

    /** From a bath to the stirred chocolate, W/K. */
    static double intoBath(double kilograms, BowlMaterial material, double bowlKilograms) {
        double area = wettedSquareMetres(kilograms);
        double thickness = bowlKilograms / (density(material) * area * RIM_FACTOR);
        double wall = Math.max(0.0003, Math.min(0.01, thickness)) / conductivity(material);
        return area / (FILMS + wall);
    }

    /** From the top of the chocolate to the room, the bowl in a bath, W/K. */
    static double fromTop(double kilograms) {
        return AIR_WATTS_PER_SQUARE_METRE_KELVIN * TOP_FRACTION * wettedSquareMetres(kilograms);
    }

    /** From the chocolate to the room, the bowl in the air, W/K. */
    static double inAir(double kilograms) {
        return TABLE_WATTS_PER_SQUARE_METRE_KELVIN * (1 + TOP_FRACTION) * wettedSquareMetres(kilograms);
    }

    /** From a pan off the heat, the bowl as its lid, to the room, W/K. */
    static double fromPan(double waterKilograms) {
        return PAN_WATTS_PER_KELVIN * twoThirds(waterKilograms / PAN_KILOGRAMS);
    }

    /** An empty bowl for so much chocolate, kg, where nobody weighed it. Guesses: thin steel to kitchen glass. */
    static double usualBowlKilograms(double kilograms, BowlMaterial material) {
        double ofOneKilogram = switch (material) {
            case STEEL, UNKNOWN -> 0.4;
            case GLASS -> 0.8;
            case PLASTIC -> 0.15;
            case ALUMINIUM -> 0.25;
        };
        return ofOneKilogram * twoThirds(kilograms);
    }

    private static double density(BowlMaterial material) {
        return switch (material) {
            case STEEL, UNKNOWN -> 7900;
            case GLASS -> 2400;
            case PLASTIC -> 905;
            case ALUMINIUM -> 2700;
        };
    }

    private static double conductivity(BowlMaterial material) {
        return switch (material) {
            case STEEL, UNKNOWN -> 16;
            case GLASS -> 1.1;
            case PLASTIC -> 0.2;
            case ALUMINIUM -> 200;
        };
    }

    private static double twoThirds(double x) {
        double root = StrictMath.cbrt(x);
        return root * root;
    }
}
