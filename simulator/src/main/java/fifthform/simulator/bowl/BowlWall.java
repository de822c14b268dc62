package fifthform.simulator.bowl;

import fifthform.curves.check.Require;
import java.util.Objects;

/**
 * The wall of a bowl and the water that clings to it.
 *
 * @param material what it is made of
 * @param thicknessMillimetres of the wall, 0.2 to 12 mm
 * @param rimFactor mass of the whole bowl over the mass of its wetted part, 1 to 4; the rim follows at once
 * @param filmMillimetres mean thickness of the water that clings outside after a bath, 0.05 to 1 mm, or 0 for none. A
 *     guess (no source): drops and streaks of about this mean depth stay on a bowl lifted out of water
 * @param shapeFactor wetted area over that of the usual bowl ({@link Chocolate#wettedSquareMetres}), 0.5 to 2: below 1
 *     deep and narrow, above 1 wide and shallow
 */
public record BowlWall(
        WallMaterial material,
        double thicknessMillimetres,
        double rimFactor,
        double filmMillimetres,
        double shapeFactor) {
    public BowlWall {
        Objects.requireNonNull(material, "material");
        Require.within(thicknessMillimetres, 0.2, 12, "thicknessMillimetres");
        Require.within(rimFactor, 1, 4, "rimFactor");
        if (filmMillimetres != 0) Require.within(filmMillimetres, 0.05, 1, "filmMillimetres");
        Require.within(shapeFactor, 0.5, 2, "shapeFactor");
    }

    /** Of the usual shape. */
    public BowlWall(WallMaterial material, double thicknessMillimetres, double rimFactor, double filmMillimetres) {
        this(material, thicknessMillimetres, rimFactor, filmMillimetres, 1);
    }

    /** Heat the wall takes up for each kelvin, J/K, where {@code areaSquareMetres} of it are wetted inside. */
    public double joulesPerKelvin(double areaSquareMetres) {
        return material.densityKilogramsPerCubicMetre()
                * material.heatCapacityJoulesPerKilogramKelvin()
                * thicknessMillimetres
                / 1000
                * areaSquareMetres
                * rimFactor;
    }

    /** Mass of the water outside once it has been in a bath, kg. */
    public double filmKilograms(double areaSquareMetres) {
        return Water.KILOGRAMS_PER_CUBIC_METRE * filmMillimetres / 1000 * areaSquareMetres;
    }

    /**
     * Heat transfer coefficient from the middle of the wall through a film of {@code filmWattsPerSquareMetreKelvin},
     * W/m²K: half the wall and the film in series.
     */
    double throughHalf(double filmWattsPerSquareMetreKelvin) {
        double halfWall = thicknessMillimetres / 2000 / material.conductivityWattsPerMetreKelvin();
        return 1 / (1 / filmWattsPerSquareMetreKelvin + halfWall);
    }
}
