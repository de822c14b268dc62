package fifthform.monitor.notebook;

import fifthform.curves.recipe.Recipe;

/**
 * What the chocolate of a batch wanted.
 *
 * @param workLowCelsius lower end of the working range, °C
 * @param workHighCelsius upper end of the working range, °C
 * @param warnCelsius from here on the good crystals are in danger, °C
 */
public record Targets(double workLowCelsius, double workHighCelsius, double warnCelsius) {
    /** Where the recipe is not known. */
    static final Targets UNKNOWN = new Targets(Double.NaN, Double.NaN, Double.NaN);

    static Targets of(Recipe recipe) {
        return new Targets(
                recipe.work().range().lowCelsius(),
                recipe.work().range().highCelsius(),
                recipe.meltOut().warnCelsius());
    }

    /** Whether they are known. */
    public boolean isKnown() {
        return Double.isFinite(warnCelsius);
    }
}
