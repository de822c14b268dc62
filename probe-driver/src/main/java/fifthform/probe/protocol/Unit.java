package fifthform.probe.protocol;

import java.util.Locale;
import java.util.Optional;

/** What stands behind a number. Conversions are exact by definition (SI Brochure, 9th edition, 2.3.1; °F = 9/5 °C + 32). */
enum Unit {
    /** Nothing: then it is Celsius, unless the label says otherwise. */
    UNSAID(1, 0),
    CELSIUS(1, 0),
    FAHRENHEIT(5.0 / 9, -32),
    KELVIN(1, -273.15),
    /** A word that is no unit of temperature. */
    FOREIGN(1, 0);

    private final double kelvinPerStep;
    private final double shift;

    Unit(double kelvinPerStep, double shift) {
        this.kelvinPerStep = kelvinPerStep;
        this.shift = shift;
    }

    /** The unit of temperature that this word names. */
    static Optional<Unit> ofTemperature(String word) {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "c", "degc", "celsius", "centigrade" -> Optional.of(CELSIUS);
            case "f", "degf", "fahrenheit" -> Optional.of(FAHRENHEIT);
            case "k", "kelvin" -> Optional.of(KELVIN);
            default -> Optional.empty();
        };
    }

    boolean isTemperature() {
        return this != UNSAID && this != FOREIGN;
    }

    /** °C, rounded to a millionth of a kelvin, so that recordings keep it exactly. */
    double celsius(double value) {
        return Temperatures.rounded((value + shift) * kelvinPerStep);
    }

    /** A difference in this unit, in kelvin. */
    double kelvin(double difference) {
        return difference * kelvinPerStep;
    }
}
