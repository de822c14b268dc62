package fifthform.curves.forecast;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Batch;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;

/**
 * Where a turning point should land.
 *
 * <p>The loss of a peak x is {@code h·max(0, x − high) + c·max(0, low − x)} with the working range's ends: nothing
 * within it, and outside a kelvin too hot counts {@code h = 2}, since it costs crystals, a kelvin too cool {@code c = 1},
 * since it costs another touch of the bath. Its expectation is least where moving the whole distribution changes
 * nothing more: {@code h·P(x > high) = c·P(x < low)}. So a peak that is well known is put in the middle of the range,
 * and the less it is known the lower: then too cool is twice as likely as too hot, with two halves of one normal
 * distribution at the 2/3 point or below. After cold water both sides count the same. Loss and weights are our own
 * choice.
 */
final class Aim {
    private static final double TOO_HOT_COUNTS = 2;
    private static final double TOO_COOL_COUNTS = 1;
    private static final double INSIDE_KELVIN = 0.15;

    /** Halvings of a range of about a kelvin: to 10⁻⁵ K. */
    private static final int HALVINGS = 17;

    private Aim() {}

    /** Where the middle of this turning point should be, °C. */
    static double celsius(Recipe recipe, Batch batch, Spread turn) {
        if (batch.place() == Place.COLD_WATER) return least(recipe.cool().range(), turn, 1, 1);
        // Over the melting bath there is no turning point to land; the top of the melt range bounds it.
        if (batch.phase() == Phase.MELT) return recipe.melt().range().highCelsius();
        return least(recipe.work().range(), turn, TOO_HOT_COUNTS, TOO_COOL_COUNTS);
    }

    private static double least(CelsiusRange range, Spread turn, double hot, double cool) {
        double low = Math.min(range.lowCelsius() + INSIDE_KELVIN, range.midCelsius());
        double high = Math.max(range.highCelsius() - INSIDE_KELVIN, range.midCelsius());
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            Spread there = new Spread(middle, turn.belowKelvin(), turn.aboveKelvin());
            double over = there.aboveFraction(range.highCelsius());
            double under = there.belowFraction(range.lowCelsius());
            if (hot * over < cool * under) low = middle;
            else high = middle;
        }
        return (low + high) / 2;
    }
}
