package fifthform.curves.probecheck;

import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import java.util.OptionalDouble;

/** What became of the wire's curve on its way to the number that was checked. */
public enum Curve {
    /** The one slope of the converter was undone by {@link Sensor#tipCelsius}, as it will be in every batch. */
    UNDONE,
    /** The number on the line was taken as it is. */
    AS_READ;

    /**
     * How far a converter with one slope S reads too low at {@code celsius} once its error at 0 °C is taken away: {@code t −
     * E(t)/S}; the junction's temperature drops out. Empty where it is undone or where the converter linearises.
     */
    OptionalDouble lowAfterIceKelvin(Sensor sensor, double celsius) {
        OptionalDouble slope = sensor.converter().slopeMillivoltsPerKelvin(Allowed.wire(sensor));
        if (this == UNDONE || slope.isEmpty()) return OptionalDouble.empty();
        return OptionalDouble.of(celsius - Allowed.wire(sensor).emfMillivolts(celsius) / slope.getAsDouble());
    }

    /** The same once gain and offset fit at 0 °C and at {@code boilCelsius}: {@code t − boil · E(t)/E(boil)}. */
    OptionalDouble lowAfterBothKelvin(Sensor sensor, double celsius, double boilCelsius) {
        if (lowAfterIceKelvin(sensor, celsius).isEmpty()) return OptionalDouble.empty();
        double share = Allowed.wire(sensor).emfMillivolts(celsius)
                / Allowed.wire(sensor).emfMillivolts(boilCelsius);
        return OptionalDouble.of(celsius - boilCelsius * share);
    }

    /**
     * Such an error as a standard uncertainty. Where nobody named the converter anything between none and all of it is
     * possible, a rectangle with one end at zero; a converter that is known to err is wrong by all of it (JCGM 100:2008,
     * F.2.4.5).
     */
    static double standardKelvin(Sensor sensor, double kelvin) {
        return sensor.converter() == Converter.UNKNOWN ? Math.abs(kelvin) / Math.sqrt(3) : Math.abs(kelvin);
    }
}
