package fifthform.probe.protocol;

import java.util.Optional;

/** A converter chip whose registers an adapter hands on as they are. Frames are whole numbers, first byte highest. */
interface Chip {
    /** Bytes of one frame, 1 to 7. */
    int frameBytes();

    /** What the frame says; empty where the chip never sends such bits. */
    Optional<ChipReading> read(long frame);

    /** What makes a frame doubtful that by itself is possible; one for each open link. */
    Doubt newDoubt();

    /** Looks at every frame of a link in turn, and remembers. */
    interface Doubt {
        /** @return whether this frame may be another chip's */
        boolean about(long frame, Optional<ChipReading> reading);
    }

    /** Bits are told by themselves. */
    static Doubt none() {
        return (frame, reading) -> false;
    }

    /** A number in two's complement. */
    static int signed(long bits, int width) {
        return (int) (bits << 64 - width >> 64 - width);
    }
}
