package fifthform.simulator.scenario;

import fifthform.curves.check.Require;
import fifthform.simulator.bowl.Tip;

/**
 * What a kitchen's own probe shows of a true temperature once it has settled: gain, offset and stem, but neither lag, noise
 * nor rounding. What an unchecked probe cannot know is no fault of the program that reads it.
 *
 * @param gain slope of the adapter, 0.9 to 1.1
 * @param offsetKelvin its offset, −10 to 10 K
 * @param stemFraction share of the way to the air that the stem takes away, 0 to 1
 * @param roomCelsius the air, °C
 */
public record ProbeScale(double gain, double offsetKelvin, double stemFraction, double roomCelsius) {
    public ProbeScale {
        Require.within(gain, 0.9, 1.1, "gain");
        Require.within(offsetKelvin, -10, 10, "offsetKelvin");
        Require.within(stemFraction, 0, 1, "stemFraction");
        Require.finite(roomCelsius, "roomCelsius");
    }

    /** That of the bowl's probe in this scenario. */
    public static ProbeScale of(Scenario scenario) {
        Tip tip = scenario.kitchen().tip();
        // Fin with an insulated end, as in Tip.
        double stem = 1 / StrictMath.cosh(tip.depthMillimetres() / tip.stemMillimetres());
        return new ProbeScale(
                scenario.bowlAdapter().gain(),
                scenario.bowlAdapter().offsetKelvin(),
                stem,
                scenario.kitchen().roomCelsius());
    }

    /** What it shows at rest, °C. */
    public double shows(double bulkCelsius) {
        return gain * (bulkCelsius - stemFraction * (bulkCelsius - roomCelsius)) + offsetKelvin;
    }
}
