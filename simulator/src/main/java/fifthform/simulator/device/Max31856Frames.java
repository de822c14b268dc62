package fifthform.simulator.device;

import java.util.OptionalLong;

/**
 * Registers 0x0A to 0x0F: two bytes with 14 bits of the junction in 1/64 °C, three with 19 bits of the tip in 1/128 °C, both
 * at the left, and one of faults. The chip knows the thermocouple's curve.
 */
final class Max31856Frames implements Frames {
    private static final int TIP_BITS = 19;
    private static final int JUNCTION_BITS = 14;
    private static final long VOLTAGE = 2;
    private static final long OPEN = 1;

    @Override
    public int[] registerBytes() {
        return new int[] {2, 3, 1};
    }

    @Override
    public long measured(double tipCelsius, double junctionCelsius) {
        long tip = Frames.bits(Steps.count(tipCelsius, 1 / 128.0, -34_560, 230_400), TIP_BITS);
        return junction(junctionCelsius) | tip << 13;
    }

    private static long junction(double celsius) {
        return Frames.bits(Steps.count(celsius, 1 / 64.0, -3520, 8000), JUNCTION_BITS) << 34;
    }

    @Override
    public double celsius(long frame) {
        return Frames.signed(frame >> 13, TIP_BITS) / 128.0;
    }

    @Override
    public long openCircuit(double junctionCelsius) {
        return junction(junctionCelsius) | OPEN;
    }

    @Override
    public OptionalLong shortCircuit(double junctionCelsius) {
        return OptionalLong.of(junction(junctionCelsius) | VOLTAGE);
    }
}
