package fifthform.simulator.tube;

import fifthform.curves.check.Require;
import fifthform.simulator.maker.StandardNormal;
import java.util.SplittableRandom;

/**
 * How the tip is read.
 *
 * @param intervalSeconds 0.1 to 60 s
 * @param noiseKelvin standard deviation, 0 to 1 K
 * @param stepKelvin width of the last digit, 0.001 to 2 K
 * @param offsetKelvin what a check left wrong, −5 to 5 K
 */
public record TubeAdapter(double intervalSeconds, double noiseKelvin, double stepKelvin, double offsetKelvin) {
    public TubeAdapter {
        Require.within(intervalSeconds, 0.1, 60, "intervalSeconds");
        Require.within(noiseKelvin, 0, 1, "noiseKelvin");
        Require.within(stepKelvin, 0.001, 2, "stepKelvin");
        Require.within(offsetKelvin, -5, 5, "offsetKelvin");
    }

    /** An adapter as chance has it: 0.25 to 4 s, 0.01 to 0.08 K, steps of 0.01 to 0.25 K, checked in ice. */
    public static TubeAdapter drawn(SplittableRandom random) {
        double[] intervals = {0.25, 0.5, 1, 1, 1, 2, 4};
        double[] steps = {0.01, 0.0625, 0.1, 0.25};
        return new TubeAdapter(
                intervals[random.nextInt(intervals.length)],
                TubeCup.between(random, 0.01, 0.08),
                steps[random.nextInt(steps.length)],
                Math.max(-0.4, Math.min(0.4, 0.15 * StandardNormal.draw(random))));
    }

    /** The number it says for this tip. */
    double says(double tipCelsius, SplittableRandom random) {
        double told = tipCelsius + offsetKelvin + noiseKelvin * StandardNormal.draw(random);
        return Math.round(told / stepKelvin) * stepKelvin;
    }
}
