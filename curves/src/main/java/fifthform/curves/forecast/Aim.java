package fifthform.curves.forecast;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Batch;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;

/**
 * Where a turning point should land.
 *
 * <p>In the rewarm a kelvin too hot counts twice a kelvin too cool: too hot costs crystals, too cool another touch of
 * the bath. The loss {@code 2·(over) + 1·(under)} is least where the aim is the 2/3 point of the peak's distribution, so
 * the middle of the peak is put 0.43 σ below the middle of the range (normal distribution: Φ(0.43) = 2/3), but not out
 * of the range. After cold water both sides count the same. Loss and weights are our own choice.
 */
final class Aim {
    private static final double TWO_THIRDS_POINT = 0.43;
    private static final double INSIDE_KELVIN = 0.15;

    private Aim() {}

    static double celsius(Recipe recipe, Batch batch, double turnSigmaKelvin) {
        if (batch.place() == Place.COLD_WATER) return recipe.cool().range().midCelsius();
        // Over the melting bath there is no turning point to land; the top of the melt range bounds it.
        if (batch.phase() == Phase.MELT) return recipe.melt().range().highCelsius();
        CelsiusRange work = recipe.work().range();
        return Math.max(work.lowCelsius() + INSIDE_KELVIN, work.midCelsius() - TWO_THIRDS_POINT * turnSigmaKelvin);
    }
}
