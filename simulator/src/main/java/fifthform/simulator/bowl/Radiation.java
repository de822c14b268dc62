package fifthform.simulator.bowl;

/** Heat radiated between a surface and large surroundings. Source: Stefan and Boltzmann's law; CODATA 2018 value. */
final class Radiation {
    private static final double STEFAN_BOLTZMANN = 5.670374419e-8;
    private static final double KELVIN_AT_ZERO_CELSIUS = 273.15;

    private Radiation() {}

    /** {@code ε σ (T1² + T2²)(T1 + T2)}: times the difference it is the exact {@code ε σ (T1⁴ − T2⁴)}. W/m²K. */
    static double wattsPerSquareMetreKelvin(double emissivity, double surfaceCelsius, double aroundCelsius) {
        double surface = surfaceCelsius + KELVIN_AT_ZERO_CELSIUS;
        double around = aroundCelsius + KELVIN_AT_ZERO_CELSIUS;
        return emissivity * STEFAN_BOLTZMANN * (surface * surface + around * around) * (surface + around);
    }
}
