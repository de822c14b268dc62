package fifthform.probe.protocol;

import fifthform.probe.protocol.ChipReading.State;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * 48 bits, registers 0x0A to 0x0F: junction, 14 bits of 1/64 °C; tip, 19 bits of 1/128 °C, both two's complement at the
 * left of their registers with zeros behind; fault status.
 *
 * <p>Source: the chip's data sheet, from memory.
 *
 * <p>Faults: open is an open circuit; over or under voltage means that the wires touch something, which is what a short
 * is here. Tip or junction outside the converter's range, or beyond alarm limits that the adapter's maker has set, give
 * no temperature to trust: out of range, with the number that is.
 */
final class Max31856Chip implements Chip {
    private static final long RESERVED = 0x0003_0000_1F00L;
    private static final int OPEN = 0x01;
    private static final int VOLTAGE = 0x02;
    /** Junction out of range, junction above and below its alarm limits. */
    private static final int JUNCTION = 0xB0;

    @Override
    public int frameBytes() {
        return 6;
    }

    @Override
    public Optional<ChipReading> read(long frame) {
        if ((frame & RESERVED) != 0) return Optional.empty();
        int faults = (int) (frame & 0xFF);
        double junction = Chip.signed(frame >> 34, 14) / 64.0;
        double tip = Chip.signed(frame >> 13, 19) / 128.0;
        double told = (faults & JUNCTION) != 0 ? junction : tip;
        return Optional.of(new ChipReading(state(faults), told, OptionalDouble.of(junction), 1 / 128.0));
    }

    private static State state(int faults) {
        if (faults == 0) return State.TEMPERATURE;
        if ((faults & OPEN) != 0) return State.OPEN;
        return (faults & VOLTAGE) != 0 ? State.SHORTED : State.OUT_OF_RANGE;
    }

    @Override
    public Doubt newDoubt() {
        return Chip.none();
    }
}
