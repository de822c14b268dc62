package fifthform.curves.thermocouple;

import java.util.OptionalDouble;

/**
 * Letter-designated thermocouples that kitchens meet (IEC 60584-1), with their reference functions of ITS-90.
 *
 * <p>E(t) is the EMF of a thermocouple whose cold junction lies in ice water. With the junction elsewhere the terminals
 * carry {@code E(tip) − E(junction)}: EMFs add, temperatures do not.
 *
 * <p>Source: NIST Monograph 175, its coefficients in {@code thermocouple/its90_direct.csv}.
 */
public enum ThermocoupleType {
    K,
    J,
    T,
    N,
    E;

    private final ReferenceFunction function = ReferenceFunction.of(name());

    /** Lower end of the reference function, °C: −270, for J −210. */
    public double lowestCelsius() {
        return function.lowestCelsius();
    }

    /** Upper end of the reference function, °C: K 1372, J 1200, T 400, N 1300, E 1000. */
    public double highestCelsius() {
        return function.highestCelsius();
    }

    /**
     * E(t), mV.
     *
     * @param celsius temperature, °C, within the range of this type
     * @throws IllegalArgumentException outside that range; the message says range and value
     */
    public double emfMillivolts(double celsius) {
        return function.emfMillivolts(celsius);
    }

    /**
     * Seebeck coefficient dE/dt, mV/K, above zero.
     *
     * @param celsius temperature, °C, within the range of this type
     * @throws IllegalArgumentException outside that range; the message says range and value
     */
    public double slopeMillivoltsPerKelvin(double celsius) {
        return function.slopeMillivoltsPerKelvin(celsius);
    }

    /**
     * t(E), °C: the inverse of {@link #emfMillivolts}, within 1e-6 K.
     *
     * @param emfMillivolts EMF against ice water, mV, between E at both ends of the range
     * @throws IllegalArgumentException outside that range; the message says range and value
     */
    public double celsius(double emfMillivolts) {
        return function.celsius(emfMillivolts);
    }

    /**
     * Temperature of the tip, °C, {@code t(E + E(junction))}.
     *
     * @param terminalMillivolts EMF at the terminals, mV
     * @param junctionCelsius temperature of the cold junction, °C
     * @return empty where no tip and junction of this type give such an EMF
     */
    public OptionalDouble tipCelsius(double terminalMillivolts, double junctionCelsius) {
        if (!reaches(junctionCelsius)) return OptionalDouble.empty();
        double emf = terminalMillivolts + emfMillivolts(junctionCelsius);
        boolean inRange = emf >= emfMillivolts(lowestCelsius()) && emf <= emfMillivolts(highestCelsius());
        return inRange ? OptionalDouble.of(celsius(emf)) : OptionalDouble.empty();
    }

    /** Whether the reference function holds there. */
    public boolean reaches(double celsius) {
        return celsius >= lowestCelsius() && celsius <= highestCelsius();
    }

    double guessCelsius(double emfMillivolts) {
        return function.guessCelsius(emfMillivolts);
    }
}
