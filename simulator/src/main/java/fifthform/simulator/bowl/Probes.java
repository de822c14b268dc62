package fifthform.simulator.bowl;

import fifthform.curves.check.Require;

/**
 * The probes at a moment.
 *
 * @param sheathCelsius the sheath of the one in the chocolate
 * @param tipCelsius the junction inside it
 * @param bathCelsius the one in the bath
 */
public record Probes(double sheathCelsius, double tipCelsius, double bathCelsius) {
    public Probes {
        Require.within(sheathCelsius, -40, 300, "sheathCelsius");
        Require.within(tipCelsius, -40, 300, "tipCelsius");
        Require.within(bathCelsius, -40, 150, "bathCelsius");
    }
}
