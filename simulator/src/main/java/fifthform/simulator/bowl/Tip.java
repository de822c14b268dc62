package fifthform.simulator.bowl;

import fifthform.curves.check.Require;

/**
 * A probe: a sheath that follows what it touches and a junction that follows the sheath, both first order; and a stem that
 * leads heat to the room.
 *
 * <p>The stem is a fin with an insulated end: the tip stands {@code (chocolate − air)/cosh(depth/λ)} short of the
 * chocolate, λ = √(kA/hP). Source: Incropera and DeWitt, chapter 3, fins of uniform cross section; from memory. The probe's
 * own heat (1 to 3 J/K against some hundreds) is left out of the balance.
 *
 * @param lagSeconds time constant in stirred liquid, sheath and junction together, 0.2 to 120 s
 * @param stillFactor how many times longer it is in liquid left alone, 1 to 10
 * @param junctionFraction the junction's part of the lag, 0.01 to 0.45; the sheath has the rest
 * @param depthMillimetres how deep it dips into the chocolate, 2 to 150 mm
 * @param stemMillimetres λ of the stem, 1 to 30 mm
 * @param wallFraction how much of the wall it feels while somebody holds it there, 0 to 1
 * @param restingFraction how much of the wall it feels where it rests in the bowl, 0 (hangs free) to 1
 */
public record Tip(
        double lagSeconds,
        double stillFactor,
        double junctionFraction,
        double depthMillimetres,
        double stemMillimetres,
        double wallFraction,
        double restingFraction) {
    /** Air takes heat about a tenth as well as chocolate, and chocolate clings; a guess (no source). */
    private static final double AIR_FACTOR = 12;

    /** What rests on the wall feels the wall more than the chocolate beside it. As in the method page. */
    private static final double WALL_IN_CONTACT = 0.6;

    public Tip {
        Require.within(lagSeconds, 0.2, 120, "lagSeconds");
        Require.within(stillFactor, 1, 10, "stillFactor");
        Require.within(junctionFraction, 0.01, 0.45, "junctionFraction");
        Require.within(depthMillimetres, 2, 150, "depthMillimetres");
        Require.within(stemMillimetres, 1, 30, "stemMillimetres");
        Require.within(wallFraction, 0, 1, "wallFraction");
        Require.within(restingFraction, 0, 1, "restingFraction");
    }

    /** A steel-sheathed probe dipped 30 mm; λ of about 5 mm (3 mm sheath, 0.3 mm wall, 16 W/mK, 150 W/m²K). */
    public Tip(double lagSeconds, double stillFactor) {
        this(lagSeconds, stillFactor, 0.15, 30, 5, 0.4, 0);
    }

    double sheathSeconds(double vigourFraction, ProbePlace place) {
        return lagSeconds * (1 - junctionFraction) * slower(vigourFraction, place);
    }

    double junctionSeconds() {
        return lagSeconds * junctionFraction;
    }

    private double slower(double vigourFraction, ProbePlace place) {
        if (place == ProbePlace.OUT) return AIR_FACTOR;
        return vigourFraction == 1 ? 1 : StrictMath.pow(stillFactor, 1 - vigourFraction);
    }

    /** The share of the difference to the room that the stem costs. */
    double stemFraction() {
        return 1 / StrictMath.cosh(depthMillimetres / stemMillimetres);
    }

    /** What surrounds the sheath, °C. */
    double around(ProbePlace place, double bulkCelsius, double layerCelsius, double wallCelsius, double airCelsius) {
        double wall = WALL_IN_CONTACT * wallCelsius + (1 - WALL_IN_CONTACT) * layerCelsius;
        return switch (place) {
            case OUT -> airCelsius;
            case IN_CHOCOLATE -> bulkCelsius + restingFraction * (wall - bulkCelsius);
            case AT_WALL -> bulkCelsius + wallFraction * (wall - bulkCelsius);
        };
    }
}
