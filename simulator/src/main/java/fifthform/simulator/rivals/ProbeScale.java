package fifthform.simulator.rivals;

import fifthform.curves.check.Require;
import fifthform.simulator.bowl.Tip;
import fifthform.simulator.scenario.Scenario;

/**
 * From the true temperature of the chocolate to what this probe shows of it at rest: its stem, its gain and its offset,
 * which no program can know of an unchecked probe.
 *
 * @param gain 0.9 to 1.1
 * @param offsetKelvin how much it reads too high at 0 °C, K
 * @param stemFraction the share of the difference to the room that the stem costs
 * @param roomCelsius the room, °C
 */
record ProbeScale(double gain, double offsetKelvin, double stemFraction, double roomCelsius) {
    ProbeScale {
        Require.within(gain, 0.9, 1.1, "gain");
        Require.within(offsetKelvin, -10, 10, "offsetKelvin");
        Require.within(stemFraction, 0, 1, "stemFraction");
        Require.finite(roomCelsius, "roomCelsius");
    }

    static ProbeScale of(Scenario scenario) {
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
    double shows(double bulkCelsius) {
        return gain * (bulkCelsius - stemFraction * (bulkCelsius - roomCelsius)) + offsetKelvin;
    }
}
