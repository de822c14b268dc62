package fifthform.simulator.scenario;

import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Recipe;
import java.util.Locale;
import java.util.OptionalDouble;

/** Where the hottest of the rewarm lay. */
public enum Landed {
    /** It never came to a rewarm. */
    NEVER_REWARMED,
    /** Below the working range. */
    UNDER,
    IN_RANGE,
    /** Above the working range and below melt-out. */
    OVER,
    /** At melt-out or above: the good crystals are gone or going. */
    MELTED_OUT;

    /** By the hottest of the bulk after the rewarm had begun, °C; empty where it never began. */
    public static Landed at(OptionalDouble highestCelsius, Recipe recipe) {
        if (highestCelsius.isEmpty()) return NEVER_REWARMED;
        double celsius = highestCelsius.getAsDouble();
        CelsiusRange work = recipe.work().range();
        if (celsius >= recipe.meltOut().limitCelsius()) return MELTED_OUT;
        if (celsius > work.highCelsius()) return OVER;
        return celsius < work.lowCelsius() ? UNDER : IN_RANGE;
    }

    /** The word in reports: {@code in-range}, … */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
