package fifthform.simulator.maker;

import fifthform.curves.check.Require;
import java.time.Duration;

/**
 * How somebody's pace and eye differ from the habits of the batch.
 *
 * @param reactionFactor on the median reaction, 0.1 to 10
 * @param spreadFactor on its spread, 0 to 5
 * @param holdFactor on the hold in the cool range, 0 (skipped) to 5
 * @param liftsEarlyKelvin off the warm water so much before the usual number, knowing of the heat under way; −3 to 3 K
 * @param misreadKelvin standard deviation of a number misremembered or misread, drawn once a batch for each; 0 to 3 K
 */
record Pace(
        double reactionFactor, double spreadFactor, double holdFactor, double liftsEarlyKelvin, double misreadKelvin) {
    /** As the habits say. */
    static final Pace USUAL = new Pace(1, 1, 1, 0, 0);

    Pace {
        Require.within(reactionFactor, 0.1, 10, "reactionFactor");
        Require.within(spreadFactor, 0, 5, "spreadFactor");
        Require.within(holdFactor, 0, 5, "holdFactor");
        Require.within(liftsEarlyKelvin, -3, 3, "liftsEarlyKelvin");
        Require.within(misreadKelvin, 0, 3, "misreadKelvin");
    }

    /** These habits in such hands, on a day with this luck. */
    Habits of(Habits usual, Luck luck) {
        double reactionSeconds = within(usual.reaction().toMillis() / 1000.0 * reactionFactor, 0.2, 30);
        Luck second = luck.after();
        double warmCelsius = usual.warmCelsius()
                - liftsEarlyKelvin
                + misreadKelvin * second.after().normal();
        return new Habits(
                Duration.ofMillis(Math.round(1000 * reactionSeconds)),
                within(usual.reactionSpread() * spreadFactor, 0, 1.5),
                within(usual.meltedCelsius() + misreadKelvin * luck.normal(), 30, 60),
                within(usual.coolCelsius() + misreadKelvin * second.normal(), 15, 32),
                Duration.ofMillis(Math.round(usual.hold().toMillis() * holdFactor)),
                within(warmCelsius, 25, 36),
                usual.pouring(),
                usual.plan());
    }

    private static double within(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }
}
