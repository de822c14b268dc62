package fifthform.simulator.bowl;

import fifthform.curves.check.Require;

/**
 * The water of a vessel at a moment.
 *
 * @param celsius its temperature
 * @param goneKilograms how much has evaporated since the kitchen was set up, less what was poured in
 */
public record Basin(double celsius, double goneKilograms) {
    public Basin {
        Require.within(celsius, -40, 150, "celsius");
        Require.within(goneKilograms, -100, 100, "goneKilograms");
    }

    static Basin at(double celsius) {
        return new Basin(celsius, 0);
    }
}
