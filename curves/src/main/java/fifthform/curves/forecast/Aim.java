package fifthform.curves.forecast;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Batch;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;

/**
 * Where a turning point should land.
 *
 * <p>The loss of a peak x in the rewarm is {@code h·max(0, x − high − 0.3 K) + c·max(0, low − x)} with the working range's
 * ends: a kelvin too hot counts {@code h = 1.3}, since it costs crystals, a kelvin too cool {@code c = 1}, since it costs
 * another touch of the bath. The first 0.3 K over cost nothing: no kitchen probe tells them from the range, and the
 * recipe warns later still. Its expectation is least where moving the whole distribution changes nothing more,
 * {@code h·P(x > high + 0.3) = c·P(x < low)}, but it is never put above the middle of what costs nothing. So the less a
 * peak is known, the lower it is put. After cold water both sides count the same. Loss and weights are our own choice.
 */
public final class Aim {
    private static final double TOO_HOT_COUNTS = 1.3;
    private static final double TOO_COOL_COUNTS = 1;
    private static final double HARMLESS_KELVIN = 0.3;
    private static final double INSIDE_KELVIN = 0.15;

    /** Halvings of a range of about a kelvin: to 10⁻⁵ K. */
    private static final int HALVINGS = 17;

    private Aim() {}

    /** Where the middle of this turning point should be, °C, by how sure it is and where the bowl stands. */
    public static double celsius(Recipe recipe, Batch batch, Outlook turn) {
        return celsius(recipe, batch, Spread.of(turn));
    }

    /** Where the middle of this turning point should be, °C. */
    static double celsius(Recipe recipe, Batch batch, Spread turn) {
        if (batch.place() == Place.COLD_WATER) return least(recipe.cool().range(), turn, 1, 1, 0);
        // Over the melting bath there is no turning point to land; the top of the melt range bounds it.
        if (batch.phase() == Phase.MELT) return recipe.melt().range().highCelsius();
        return least(recipe.work().range(), turn, TOO_HOT_COUNTS, TOO_COOL_COUNTS, HARMLESS_KELVIN);
    }

    private static double least(CelsiusRange range, Spread turn, double hot, double cool, double harmless) {
        double low = Math.min(range.lowCelsius() + INSIDE_KELVIN, range.midCelsius());
        double high = range.midCelsius() + harmless / 2;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            Spread there = new Spread(middle, turn.belowKelvin(), turn.aboveKelvin());
            double over = there.aboveFraction(range.highCelsius() + harmless);
            double under = there.belowFraction(range.lowCelsius());
            if (hot * over < cool * under) low = middle;
            else high = middle;
        }
        return (low + high) / 2;
    }
}
