package fifthform.probe.protocol;

import fifthform.probe.protocol.ChipReading.State;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * 16 bits: the tip in steps of 1/16 °C, two's complement, −200 to 1800 °C.
 *
 * <p>Source: the chip's data sheet, register 0x00 and range, from memory.
 *
 * <p>Every word within that range is possible, so a {@link Max6675Chip}'s word is read at twice its temperature. That
 * chip's words move in steps of 8 and leave bits 2 and 1 zero. If the link's first {@value #COARSE} changes are like that,
 * which those of a chip with steps of 1/16 are once in 4<sup>{@value #COARSE}</sup>, words are doubtful until one has
 * bit 1, which that chip never sets. Before that, and while nothing moves, the two cannot be told apart by anyone.
 */
final class Mcp9600Chip implements Chip {
    private static final int COARSE = 6;
    private static final long FINE_BITS = 0x0006;
    private static final long PROOF = 0x0002;
    private static final int LOWEST = -200 * 16;
    private static final int HIGHEST = 1800 * 16;

    @Override
    public int frameBytes() {
        return 2;
    }

    @Override
    public Optional<ChipReading> read(long frame) {
        int sixteenths = Chip.signed(frame, 16);
        if (sixteenths < LOWEST || sixteenths > HIGHEST) return Optional.empty();
        return Optional.of(new ChipReading(State.TEMPERATURE, sixteenths / 16.0, OptionalDouble.empty(), 1 / 16.0));
    }

    @Override
    public Doubt newDoubt() {
        return new Doubt() {
            private long before = -1;
            private int coarse;
            private boolean proven;

            @Override
            public boolean about(long frame, Optional<ChipReading> reading) {
                proven |= (frame & PROOF) != 0;
                if ((frame & FINE_BITS) != 0 && coarse < COARSE) coarse = 0;
                else if (before >= 0 && before >> 3 != frame >> 3) coarse++;
                before = frame;
                return !proven && coarse >= COARSE;
            }
        };
    }
}
