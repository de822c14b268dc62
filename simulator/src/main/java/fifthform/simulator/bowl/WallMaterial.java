package fifthform.simulator.bowl;

import java.util.Locale;
import java.util.Optional;

/**
 * What a bowl's wall is made of. Heat capacities of steel and glass as in the reference table of bath examples
 * (textbook); everything else is a handbook value from memory.
 */
public enum WallMaterial {
    /** Stainless steel, 18 % chromium and 8 % nickel. */
    STEEL(7900, 500, 16, 0.2),
    /** Glass as in kitchen bowls. */
    GLASS(2400, 840, 1.1, 0.92),
    /** Polypropylene. */
    PLASTIC(905, 1900, 0.2, 0.93),
    ALUMINIUM(2700, 900, 200, 0.1);

    private final double densityKilogramsPerCubicMetre;
    private final double heatCapacityJoulesPerKilogramKelvin;
    private final double conductivityWattsPerMetreKelvin;

    private final double emissivity;

    WallMaterial(double density, double heatCapacity, double conductivity, double emissivity) {
        this.densityKilogramsPerCubicMetre = density;
        this.heatCapacityJoulesPerKilogramKelvin = heatCapacity;
        this.conductivityWattsPerMetreKelvin = conductivity;
        this.emissivity = emissivity;
    }

    public double densityKilogramsPerCubicMetre() {
        return densityKilogramsPerCubicMetre;
    }

    public double heatCapacityJoulesPerKilogramKelvin() {
        return heatCapacityJoulesPerKilogramKelvin;
    }

    public double conductivityWattsPerMetreKelvin() {
        return conductivityWattsPerMetreKelvin;
    }

    /** Of the dry outside, 0 to 1; metal as it comes from the dishwasher. */
    public double emissivity() {
        return emissivity;
    }

    /** The name in files: {@code steel}, … */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The material with this {@link #word()}, if there is one. */
    public static Optional<WallMaterial> fromWord(String word) {
        for (WallMaterial material : values()) if (material.word().equals(word)) return Optional.of(material);
        return Optional.empty();
    }
}
