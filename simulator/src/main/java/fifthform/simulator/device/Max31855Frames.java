package fifthform.simulator.device;

import fifthform.curves.thermocouple.ThermocoupleType;
import java.util.OptionalLong;

/**
 * 32 bits: 14 of the tip in 0.25 °C, a zero, the sum of the faults, 12 of the junction in 0.0625 °C, a zero, short to
 * supply, short to ground, open.
 */
final class Max31855Frames implements Frames {
    private static final double TIP_STEP_KELVIN = 0.25;
    private static final double JUNCTION_STEP_KELVIN = 0.0625;
    private static final int TIP_BITS = 14;
    private static final int JUNCTION_BITS = 12;
    private static final long FAULT = 1L << 16;
    private static final long TO_GROUND = 2;
    private static final long OPEN = 1;

    private final ThermocoupleType type;

    Max31855Frames(ThermocoupleType type) {
        this.type = type;
    }

    /** µV/K, one version of the chip a type; data sheet, from memory. */
    private double microvoltsPerKelvin() {
        return switch (type) {
            case K -> 41.276;
            case J -> 57.953;
            case N -> 36.256;
            case T -> 52.18;
            case E -> 76.373;
        };
    }

    @Override
    public int[] registerBytes() {
        return new int[] {4};
    }

    @Override
    public long measured(double tipCelsius, double junctionCelsius) {
        double read = OneSlope.celsius(type, microvoltsPerKelvin(), tipCelsius, junctionCelsius);
        long tip = Steps.count(read, TIP_STEP_KELVIN, -1080, 7200);
        return Frames.bits(tip, TIP_BITS) << 18 | junction(junctionCelsius);
    }

    private static long junction(double celsius) {
        return Frames.bits(Steps.count(celsius, JUNCTION_STEP_KELVIN, -880, 2032), JUNCTION_BITS) << 4;
    }

    @Override
    public double celsius(long frame) {
        return Frames.signed(frame >> 18, TIP_BITS) * TIP_STEP_KELVIN;
    }

    @Override
    public long openCircuit(double junctionCelsius) {
        return FAULT | junction(junctionCelsius) | OPEN;
    }

    @Override
    public OptionalLong shortCircuit(double junctionCelsius) {
        return OptionalLong.of(FAULT | junction(junctionCelsius) | TO_GROUND);
    }
}
