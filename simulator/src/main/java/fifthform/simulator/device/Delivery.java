package fifthform.simulator.device;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;

/** What becomes of a message between the adapter and whoever listens. */
final class Delivery {
    /** Of five readings four are lost; a guess. */
    private static final int DROPPED_OF = 5;

    private final Wire wire;
    private final SplittableRandom random;

    Delivery(Wire wire, SplittableRandom random) {
        this.wire = wire;
        this.random = random;
    }

    /** The bytes that arrive instead of the message; empty where none do. */
    Optional<byte[]> of(byte[] message, Trouble present) {
        return switch (present) {
            case OPEN_CIRCUIT, SHORT_CIRCUIT, DEAD_LINE, STUCK, SPIKES, FLOOD -> Optional.of(message);
            case GARBAGE -> Optional.of(wire.garbage(random));
            case WRONG_CRC -> Optional.of(CheckSum.spoiled(message));
            case HALF_LINES -> Optional.of(random.nextBoolean() ? message : broken(message));
            case DROP_OUTS -> random.nextInt(DROPPED_OF) == 0 ? Optional.of(message) : Optional.empty();
            case SILENT, UNPLUGGED -> Optional.empty();
        };
    }

    /** At least one byte comes, and the last two do not. */
    private byte[] broken(byte[] message) {
        return Arrays.copyOf(message, random.nextInt(1, Math.max(2, message.length - 1)));
    }
}
