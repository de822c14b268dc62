package fifthform.simulator.maker;

import fifthform.curves.check.Require;
import java.time.Duration;

/**
 * How somebody stirs: bouts and pauses, each of an exponentially distributed length, each bout with a vigour of its own.
 *
 * @param vigourFraction mean vigour of a bout, 0 (never stirs) to 1
 * @param vigourSpread standard deviation from bout to bout, 0 to 0.5; what is drawn beyond 0 and 1 is cut off there
 * @param boutSeconds mean length of a bout, 1 to 600 s
 * @param pauseSeconds mean length of a pause, 1 to 600 s
 * @param afterAMove a bowl just put somewhere else is stirred without a pause for so long
 */
record Stirring(
        double vigourFraction, double vigourSpread, double boutSeconds, double pauseSeconds, Duration afterAMove) {
    Stirring {
        Require.within(vigourFraction, 0, 1, "vigourFraction");
        Require.within(vigourSpread, 0, 0.5, "vigourSpread");
        Require.within(boutSeconds, 1, 600, "boutSeconds");
        Require.within(pauseSeconds, 1, 600, "pauseSeconds");
        Require.notNegative(afterAMove, "afterAMove");
    }

    /** The vigour of a bout, by this luck, for somebody who stirs {@code share} of what these hands would. */
    double vigour(Luck luck, double share) {
        double drawn = vigourFraction + vigourSpread * luck.normal();
        return share * Math.max(0, Math.min(1, drawn));
    }
}
