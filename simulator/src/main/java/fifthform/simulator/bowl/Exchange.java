package fifthform.simulator.bowl;

import fifthform.curves.check.Require;

/**
 * How well heat passes from one part to the next, W/m²K of the wetted area. All of these are guesses within what
 * textbooks allow: 8–12 W/m²K to still air including radiation, 60–200 W/m²K overall from a bath into stirred
 * chocolate, 15–30 W/m²K unstirred (reference table of thermophysical values).
 *
 * @param layerFraction share of the chocolate that makes up the layer at the wall, 0.02 to 0.5
 * @param wallToLayer from the wall to the layer, 0 to 2000
 * @param stirred from the layer to the bulk at full vigour, 1 to 2000
 * @param still from the layer to the bulk left alone, 1 to 2000
 * @param surfaceToAir from the top of the chocolate to the room, 0 to 100
 * @param wetToAir from a wet wall to the room, evaporation included, 0 to 100
 * @param dryToAir from a dry wall on its folded cloth, which covers part of it, to the room, 0 to 100
 * @param clothToWall from a wet cloth, as cold as the cold water, to a bowl set down on it, 0 to 1000
 */
public record Exchange(
        double layerFraction,
        double wallToLayer,
        double stirred,
        double still,
        double surfaceToAir,
        double wetToAir,
        double dryToAir,
        double clothToWall) {
    /** Lumps touch the wall and the melt badly: at first about half as well. As assumed in the reference schedule. */
    private static final double LOST_THROUGH_LUMPS = 0.5;

    /** The middle of each range that the method page gives; the cloth is our own guess. */
    public static final Exchange USUAL = new Exchange(0.08, 200, 260, 26, 11, 20, 6, 60);

    public Exchange {
        Require.within(layerFraction, 0.02, 0.5, "layerFraction");
        Require.within(wallToLayer, 0, 2000, "wallToLayer");
        Require.within(stirred, 1, 2000, "stirred");
        Require.within(still, 1, 2000, "still");
        Require.within(surfaceToAir, 0, 100, "surfaceToAir");
        Require.within(wetToAir, 0, 100, "wetToAir");
        Require.within(dryToAir, 0, 100, "dryToAir");
        Require.within(clothToWall, 0, 1000, "clothToWall");
    }

    /** The same without any loss to the room; for comparing with closed solutions. */
    public Exchange withoutRoom() {
        return new Exchange(layerFraction, wallToLayer, stirred, still, 0, 0, 0, clothToWall);
    }

    /** The same with another exchange between layer and bulk. */
    public Exchange withStirring(double stirred, double still) {
        return new Exchange(layerFraction, wallToLayer, stirred, still, surfaceToAir, wetToAir, dryToAir, clothToWall);
    }

    /** From the layer to the bulk at a vigour between 0 and 1: equal steps of vigour multiply by equal factors. */
    double layerToBulk(double vigourFraction) {
        return still * StrictMath.pow(stirred / still, vigourFraction);
    }

    static double throughLumps(double unmeltedFraction) {
        return 1 - LOST_THROUGH_LUMPS * unmeltedFraction;
    }
}
