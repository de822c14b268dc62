package fifthform.probe.protocol;

import fifthform.probe.protocol.ChipReading.State;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * 16 bits: D15 zero, D14…D3 tip in steps of 0.25 °C from 0, D2 open, D1 zero, D0 anything.
 *
 * <p>Source: the chip's data sheet, from memory; D0 from {@code converter_frames.csv}, which cites it.
 *
 * <p>A word with D15 or D1 set is another chip's or spoiled, and then so may be those around it: the next
 * {@value #QUARANTINE} words are doubtful as well. So a stream of {@link Mcp9600Chip}'s words, which would be read at half
 * their temperature, is refused as soon as its lower bits move.
 */
final class Max6675Chip implements Chip {
    private static final int QUARANTINE = 8;
    private static final long RESERVED = 0x8002;
    private static final long OPEN = 0x0004;

    @Override
    public int frameBytes() {
        return 2;
    }

    @Override
    public Optional<ChipReading> read(long frame) {
        if ((frame & RESERVED) != 0) return Optional.empty();
        State state = (frame & OPEN) != 0 ? State.OPEN : State.TEMPERATURE;
        return Optional.of(new ChipReading(state, (frame >> 3) * 0.25, OptionalDouble.empty(), 0.25));
    }

    @Override
    public Doubt newDoubt() {
        return new Doubt() {
            private int left;

            @Override
            public boolean about(long frame, Optional<ChipReading> reading) {
                if (reading.isEmpty()) {
                    left = QUARANTINE;
                    return true;
                }
                return left > 0 && left-- > 0;
            }
        };
    }
}
