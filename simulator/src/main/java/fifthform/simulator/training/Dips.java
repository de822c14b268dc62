package fifthform.simulator.training;

import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bowl.Spot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which dip each step of a session belongs to: a stay in one water and the stay on the table after it. Steps before the
 * chocolate has melted teach nothing and belong to none.
 */
final class Dips {
    /** From here on chocolate is melted whatever its kind. */
    private static final double MELTED_CELSIUS = 36;

    /** What a dip is for. */
    enum Kind {
        MELT,
        COLD,
        WARM
    }

    private final int[] dip;
    private final List<Kind> kinds = new ArrayList<>();
    private final List<Spot> waters = new ArrayList<>();

    private Dips(int steps) {
        dip = new int[steps];
        Arrays.fill(dip, Session.NONE);
    }

    static Dips of(List<Lived> steps, Recipe recipe) {
        Dips dips = new Dips(steps.size());
        boolean melted = false;
        boolean cooled = false;
        boolean open = false;
        double movedSeconds = Double.NaN;
        for (int k = 0; k < steps.size(); k++) {
            Lived step = steps.get(k);
            double bulk = step.kitchen().bulkCelsius();
            melted |= bulk >= MELTED_CELSIUS || step.spot() == Spot.COLD_WATER;
            cooled |= melted
                    && (step.spot() == Spot.COLD_WATER
                            || bulk < recipe.work().range().highCelsius());
            if (!melted) continue;
            boolean moved = step.movedSeconds() != movedSeconds;
            if (!step.onTable() && (moved || !open)) {
                dips.begin(step.spot(), cooled);
                open = true;
            }
            movedSeconds = step.movedSeconds();
            if (open) dips.dip[k] = dips.kinds.size() - 1;
        }
        return dips;
    }

    private void begin(Spot water, boolean cooled) {
        waters.add(water);
        if (water == Spot.COLD_WATER) kinds.add(Kind.COLD);
        else kinds.add(cooled ? Kind.WARM : Kind.MELT);
    }

    int count() {
        return kinds.size();
    }

    boolean teaches(int step) {
        return dip[step] != Session.NONE;
    }

    /** Number of the dip, or {@link Session#NONE}. */
    int dip(int step) {
        return dip[step];
    }

    Kind kind(int number) {
        return kinds.get(number);
    }

    /** The water of the dip to which this step belongs. */
    Spot water(int step) {
        return waters.get(dip[step]);
    }
}
