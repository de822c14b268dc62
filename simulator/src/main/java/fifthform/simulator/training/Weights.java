package fifthform.simulator.training;

import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Recipe;
import java.util.List;

/**
 * How much each step counts. Every dip has the same total, whether it lasts six seconds or four minutes, else slow dips
 * would rule; melts have a tenth. Within a dip steps whose turning point lies near the aim count more.
 */
final class Weights {
    /** As in the trials that the design reports. */
    private static final double NEAR_KELVIN = 1.3;

    /** Far from the aim a step counts so much at least, by one at the aim. Our own choice. */
    private static final double FLOOR = 0.15;

    /** Of a dip's total, what the steps in the water have; those on the table are far more. Our own choice. */
    private static final double IN_WATER = 0.75;

    private static final double MELT_TOTAL = 0.1;

    private Weights() {}

    /**
     * @param turnCelsius of each step in the readings' scale; NaN where there is none
     */
    static float[] of(List<Lived> steps, Dips dips, double[] turnCelsius, Recipe recipe) {
        double[] raw = new double[steps.size()];
        double[] water = new double[dips.count()];
        double[] table = new double[dips.count()];
        for (int k = 0; k < raw.length; k++) {
            if (!dips.teaches(k) || Double.isNaN(turnCelsius[k])) continue;
            int dip = dips.dip(k);
            raw[k] = near(dips.kind(dip), turnCelsius[k], recipe);
            if (steps.get(k).onTable()) table[dip] += raw[k];
            else water[dip] += raw[k];
        }
        float[] weight = new float[steps.size()];
        for (int k = 0; k < raw.length; k++) {
            if (raw[k] == 0) continue;
            int dip = dips.dip(k);
            double total = dips.kind(dip) == Dips.Kind.MELT ? MELT_TOTAL : 1;
            double share = share(steps.get(k).onTable(), water[dip], table[dip]);
            weight[k] = (float) (total * share * raw[k] / (steps.get(k).onTable() ? table[dip] : water[dip]));
        }
        return weight;
    }

    private static double share(boolean onTable, double water, double table) {
        if (water == 0 || table == 0) return 1;
        return onTable ? 1 - IN_WATER : IN_WATER;
    }

    private static double near(Dips.Kind kind, double turnCelsius, Recipe recipe) {
        return switch (kind) {
            case MELT -> 1;
            case COLD -> near(turnCelsius, recipe.cool().range());
            case WARM -> near(turnCelsius, recipe.work().range());
        };
    }

    private static double near(double celsius, CelsiusRange range) {
        double off = (celsius - (range.lowCelsius() + range.highCelsius()) / 2) / NEAR_KELVIN;
        return FLOOR + StrictMath.exp(-off * off / 2);
    }
}
