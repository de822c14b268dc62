package fifthform.curves.forecast;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Batch;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;

/**
 * Where a turning point should land.
 *
 * <p>In the rewarm a kelvin too hot counts four times a kelvin too cool: too hot costs crystals, too cool only another
 * touch of the bath. The loss {@code 4·(over) + 1·(under)} is least where the aim is the 4/5 point of the peak's
 * distribution, so the middle of the peak is put 0.84 σ below the middle of the range (normal distribution:
 * Φ(0.84) = 0.8), but not out of the range. After cold water both sides count the same. Loss and weights are our own
 * choice; runs of the simulator showed peaks above the range twice as often with 2 : 1.
 */
final class Aim {
    private static final double FOUR_FIFTHS_POINT = 0.84;
    private static final double INSIDE_KELVIN = 0.15;

    private Aim() {}

    static double celsius(Recipe recipe, Batch batch, double turnSigmaKelvin) {
        if (batch.place() == Place.COLD_WATER) return recipe.cool().range().midCelsius();
        // Over the melting bath there is no turning point to land; the top of the melt range bounds it.
        if (batch.phase() == Phase.MELT) return recipe.melt().range().highCelsius();
        CelsiusRange work = recipe.work().range();
        return Math.max(work.lowCelsius() + INSIDE_KELVIN, work.midCelsius() - FOUR_FIFTHS_POINT * turnSigmaKelvin);
    }
}
