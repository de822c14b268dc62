package fifthform.simulator.bowl;

import fifthform.curves.check.Require;

/**
 * How well heat passes from one part to the next, W/m²K of the wetted area. All of these are guesses within what
 * textbooks allow: 8–12 W/m²K to still air including radiation, 60–200 W/m²K overall from a bath into stirred
 * chocolate, 15–30 W/m²K unstirred (reference table of thermophysical values). To the room they are by convection alone;
 * radiation and evaporation follow from temperatures and humidity and come on top.
 *
 * @param layerFraction share of the chocolate that makes up the layer at the wall, 0.02 to 0.4
 * @param wallToLayer from the wall to the layer, 0 to 100 000
 * @param stirred from a layer to the bulk at full vigour, 1 to 100 000
 * @param still from a layer to the bulk left alone, 1 to 100 000
 * @param surfaceToAir from the top of the chocolate to the room, 0 to 50
 * @param wetToAir from a wet wall to the room, 0 to 50; drives evaporation too
 * @param dryToAir from a dry wall to the room, 0 to 50
 * @param clothToWall from a wet cloth to a bowl set down on it or wrapped in it, 0 to 1000
 * @param surfaceFraction share of the chocolate that makes up the layer at the top, 0.02 to 0.4
 * @param exposedFraction share of the outer wall that the folded cloth on the table leaves free, 0 to 1
 * @param radiationFraction 1 where everything radiates as its material does, 0 to compare with closed solutions
 */
public record Exchange(
        double layerFraction,
        double wallToLayer,
        double stirred,
        double still,
        double surfaceToAir,
        double wetToAir,
        double dryToAir,
        double clothToWall,
        double surfaceFraction,
        double exposedFraction,
        double radiationFraction) {
    /** Lumps touch the wall and the melt badly: at first about half as well. As assumed in the reference schedule. */
    private static final double LOST_THROUGH_LUMPS = 0.5;

    /**
     * From the wall 200, stirred 260, left alone a tenth: the middle of each range that the method page gives. To the air
     * 5 without radiation; 0.6 exposed and the cloth: guesses. A kilogram's layers are about 2.5 mm each.
     */
    public static final Exchange USUAL = new Exchange(0.08, 200, 260, 26, 5, 5, 5, 60);

    public Exchange {
        Require.within(layerFraction, 0.02, 0.4, "layerFraction");
        Require.within(wallToLayer, 0, 100_000, "wallToLayer");
        Require.within(stirred, 1, 100_000, "stirred");
        Require.within(still, 1, 100_000, "still");
        Require.within(surfaceToAir, 0, 50, "surfaceToAir");
        Require.within(wetToAir, 0, 50, "wetToAir");
        Require.within(dryToAir, 0, 50, "dryToAir");
        Require.within(clothToWall, 0, 1000, "clothToWall");
        Require.within(surfaceFraction, 0.02, 0.4, "surfaceFraction");
        Require.within(exposedFraction, 0, 1, "exposedFraction");
        Require.within(radiationFraction, 0, 1, "radiationFraction");
    }

    /** Usual surface, cloth on the table and radiation. */
    public Exchange(
            double layerFraction,
            double wallToLayer,
            double stirred,
            double still,
            double surfaceToAir,
            double wetToAir,
            double dryToAir,
            double clothToWall) {
        this(layerFraction, wallToLayer, stirred, still, surfaceToAir, wetToAir, dryToAir, clothToWall, 0.05, 0.6, 1);
    }

    /** The same without any loss to the room; for comparing with closed solutions. */
    public Exchange withoutRoom() {
        return new Exchange(
                layerFraction, wallToLayer, stirred, still, 0, 0, 0, clothToWall, surfaceFraction, exposedFraction, 0);
    }

    /** The same with another exchange inside the bowl. */
    public Exchange withContact(double newWallToLayer, double newStirred, double newStill) {
        return new Exchange(
                layerFraction,
                newWallToLayer,
                newStirred,
                newStill,
                surfaceToAir,
                wetToAir,
                dryToAir,
                clothToWall,
                surfaceFraction,
                exposedFraction,
                radiationFraction);
    }

    /** From a layer to the bulk at a vigour between 0 and 1: equal steps of vigour multiply by equal factors. */
    double layerToBulk(double vigourFraction) {
        if (vigourFraction == 0) return still;
        if (vigourFraction == 1) return stirred;
        return still * StrictMath.pow(stirred / still, vigourFraction);
    }

    static double throughLumps(double solidFraction) {
        return 1 - LOST_THROUGH_LUMPS * solidFraction;
    }
}
