package fifthform.simulator.bowl;

import fifthform.curves.check.Require;
import java.util.Objects;

/**
 * One of the three portions of the chocolate.
 *
 * @param celsius its temperature, −40 to 300 °C
 * @param crystals what is solid in it
 */
public record Portion(double celsius, Crystals crystals) {
    public Portion {
        Require.within(celsius, -40, 300, "celsius"); // unstirred under a heat gun it scorches
        Objects.requireNonNull(crystals, "crystals");
    }

    /** Heat above molten chocolate at 0 °C, J/kg. */
    double joulesPerKilogram(Chocolate chocolate) {
        return Chocolate.sensible(celsius) - crystals.boundJoulesPerKilogram(chocolate);
    }
}
