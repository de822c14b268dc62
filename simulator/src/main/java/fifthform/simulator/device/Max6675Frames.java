package fifthform.simulator.device;

import fifthform.curves.thermocouple.ThermocoupleType;

/** 16 bits: a zero, 12 of the tip in 0.25 °C from 0, open, a zero, one that may be anything. For type K only. */
final class Max6675Frames implements Frames {
    private static final double STEP_KELVIN = 0.25;
    private static final long OPEN = 4;
    private static final int MOST = 0xFFF;
    /** Data sheet, from memory. */
    private static final double MICROVOLTS_PER_KELVIN = 41;

    @Override
    public int[] registerBytes() {
        return new int[] {2};
    }

    @Override
    public long measured(double tipCelsius, double junctionCelsius) {
        double read = OneSlope.celsius(ThermocoupleType.K, MICROVOLTS_PER_KELVIN, tipCelsius, junctionCelsius);
        return Steps.count(read, STEP_KELVIN, 0, MOST) << 3;
    }

    @Override
    public double celsius(long frame) {
        return (frame >> 3) * STEP_KELVIN;
    }

    @Override
    public long openCircuit(double junctionCelsius) {
        return OPEN;
    }
}
