package fifthform.simulator.maker;

import fifthform.curves.check.Require;
import java.time.Duration;
import java.util.Objects;

/**
 * How somebody tempers. The temperatures are those on the thermometer; one who goes by it acts there, one who follows
 * cues only when they never come and the batch is far past.
 *
 * @param reaction median time from noticing to the hands' act, 0.2 to 30 s
 * @param reactionSpread standard deviation of the natural logarithm of that time, 0 to 1.5
 * @param meltedCelsius melted well enough, 30 to 60 °C
 * @param coolCelsius out of the cold water, 15 to 32 °C
 * @param hold stirred in the cool range for so long
 * @param warmCelsius off the warm water, 25 to 36 °C
 * @param pouring how long the pouring takes
 * @param plan what else is settled beforehand
 */
public record Habits(
        Duration reaction,
        double reactionSpread,
        double meltedCelsius,
        double coolCelsius,
        Duration hold,
        double warmCelsius,
        Duration pouring,
        Plan plan) {
    public Habits {
        Objects.requireNonNull(reaction, "reaction");
        Require.within(reaction.toMillis() / 1000.0, 0.2, 30, "reaction in seconds");
        Require.within(reactionSpread, 0, 1.5, "reactionSpread");
        Require.within(meltedCelsius, 30, 60, "meltedCelsius");
        Require.within(coolCelsius, 15, 32, "coolCelsius");
        Require.notNegative(hold, "hold");
        Require.within(warmCelsius, 25, 36, "warmCelsius");
        Require.notNegative(pouring, "pouring");
        Objects.requireNonNull(plan, "plan");
    }
}
