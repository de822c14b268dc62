package fifthform.simulator.bowl;

import fifthform.curves.check.Require;

/**
 * How a probe follows what it touches: first order, as a body small against its surroundings does.
 *
 * @param lagSeconds time constant in stirred liquid, 0.2 to 120 s
 * @param stillFactor how many times longer it is in liquid left alone, 1 to 10
 */
public record Tip(double lagSeconds, double stillFactor) {
    public Tip {
        Require.within(lagSeconds, 0.2, 120, "lagSeconds");
        Require.within(stillFactor, 1, 10, "stillFactor");
    }

    double lagSeconds(double vigourFraction) {
        return lagSeconds * StrictMath.pow(stillFactor, 1 - vigourFraction);
    }
}
