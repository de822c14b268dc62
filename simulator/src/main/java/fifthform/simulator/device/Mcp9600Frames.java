package fifthform.simulator.device;

/** Register 0x00: the tip in 1/16 °C, two's complement. The chip knows the thermocouple's curve. */
final class Mcp9600Frames implements Frames {
    private static final int BITS = 16;
    private static final long HIGHEST = 1800 * 16;

    @Override
    public int[] registerBytes() {
        return new int[] {2};
    }

    @Override
    public long measured(double tipCelsius, double junctionCelsius) {
        return Frames.bits(Steps.count(tipCelsius, 1 / 16.0, -200 * 16, HIGHEST), BITS);
    }

    @Override
    public double celsius(long frame) {
        return Frames.signed(frame, BITS) / 16.0;
    }

    /** It has no bit for a broken wire; its input floats to the end of the range. A guess. */
    @Override
    public long openCircuit(double junctionCelsius) {
        return HIGHEST;
    }
}
