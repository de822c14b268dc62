package fifthform.curves.learning;

import fifthform.curves.check.Require;
import fifthform.curves.recipe.Recipe;

/**
 * Height and length of an overshoot as one number: the temperature that, held for {@link #MINUTES} minutes, would have done
 * as much.
 *
 * <p>A minute at {@code T} weighs {@code w(T) = 10^((T − limit)/z) − 10^((high − limit)/z)}, none in the working range or
 * below; with {@code W} the weighted minutes the equivalent is {@code limit + z · log10(W / 3 min + 10^((high − limit)/z))}:
 * the upper end of the range for a batch that was never above it, and more with every moment above. One {@code z} of 0.7 K
 * counts as much as ten times as long.
 *
 * <p>The form is that of the thermal death time curve of food science (Bigelow 1921, from memory). {@code z} is fitted to
 * this project's crystal model, its section 7: of 128 flat overshoots (32.25 to 36 °C, 0.5 to 40 min) and 21 coasts, the
 * share of form V that survives is a function of the equivalent to within 0.065 (root mean square), of the height alone to
 * within 0.141. No bowl was measured for it.
 *
 * @param highCelsius upper end of the working range, °C
 * @param limitCelsius the published melt-out, °C, above {@code highCelsius}
 */
public record HeatScale(double highCelsius, double limitCelsius) {
    /** How long the equivalent temperature is thought to be held, min. "Within minutes" is what melt-outs are told for. */
    public static final double MINUTES = 3;

    /** Kelvin that count as much as ten times as long. */
    private static final double Z_KELVIN = 0.7;

    /** Above this no crystal is left in a second, and the power would grow without bound: K above the limit. */
    private static final double FAR_KELVIN = 6;

    public HeatScale {
        Require.within(highCelsius, -20, 150, "highCelsius");
        Require.within(limitCelsius, -20, 150, "limitCelsius");
        if (!(highCelsius < limitCelsius)) {
            throw new IllegalArgumentException(
                    "highCelsius must be below limitCelsius, were " + highCelsius + " and " + limitCelsius);
        }
    }

    /** The scale of a chocolate. */
    public static HeatScale of(Recipe recipe) {
        return new HeatScale(
                recipe.work().range().highCelsius(), recipe.meltOut().limitCelsius());
    }

    /** What a minute at this temperature weighs; 1 about at the limit. */
    public double weight(double celsius) {
        double most = Math.min(celsius, limitCelsius + FAR_KELVIN);
        return most <= highCelsius ? 0 : power(most) - power(highCelsius);
    }

    /** The temperature that does as much in {@link #MINUTES} minutes, °C. */
    public double equivalentCelsius(double weightedMinutes) {
        return limitCelsius + Z_KELVIN * StrictMath.log10(weightedMinutes / MINUTES + power(highCelsius));
    }

    private double power(double celsius) {
        return StrictMath.pow(10, (celsius - limitCelsius) / Z_KELVIN);
    }
}
