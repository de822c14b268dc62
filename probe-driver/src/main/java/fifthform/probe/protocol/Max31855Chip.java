package fifthform.probe.protocol;

import fifthform.probe.protocol.ChipReading.State;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * 32 bits: D31…D18 tip in steps of 0.25 °C, D17 zero, D16 fault, D15…D4 junction in steps of 0.0625 °C, D3 zero, D2 short
 * to supply, D1 short to ground, D0 open; both numbers in two's complement.
 *
 * <p>Source: the chip's data sheet, memory map and tables 4 and 5, as condensed in {@code converter_frames.csv}; that D16
 * is the sum of D2…D0 and that the zeros are always zero, from memory.
 */
final class Max31855Chip implements Chip {
    private static final long RESERVED = 0x0002_0008;
    private static final long ANY_FAULT = 0x0001_0000;

    @Override
    public int frameBytes() {
        return 4;
    }

    @Override
    public Optional<ChipReading> read(long frame) {
        long faults = frame & 0x7;
        boolean told = (frame & ANY_FAULT) != 0;
        if (frame == 0 || (frame & RESERVED) != 0 || told != (faults != 0)) return Optional.empty();
        double tip = Chip.signed(frame >> 18, 14) * 0.25;
        double junction = Chip.signed(frame >> 4, 12) * 0.0625;
        State state = faults == 0 ? State.TEMPERATURE : (faults & 1) != 0 ? State.OPEN : State.SHORTED;
        return Optional.of(new ChipReading(state, tip, OptionalDouble.of(junction), 0.25));
    }

    @Override
    public Doubt newDoubt() {
        return Chip.none();
    }
}
