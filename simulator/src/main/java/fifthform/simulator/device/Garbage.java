package fifthform.simulator.device;

import java.util.SplittableRandom;

/** Bytes that mean nothing, chosen so that no number can arise by chance. */
final class Garbage {
    private static final int BYTES = 9;
    /** As the first byte of a frame or a message these belong to no temperature of a kitchen and to no unit asked. */
    private static final int LOWEST_HIGH = 0x80;

    private static final int ABOVE_HIGHEST = 0xF0;

    private Garbage() {}

    /** A line of an odd count of letters: neither digits nor whole bytes in hexadecimal. */
    static byte[] line(SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < BYTES; i++) text.append((char) random.nextInt('a', 'k'));
        return Said.line(text.toString());
    }

    /** For wires without lines. */
    static byte[] bytes(SplittableRandom random) {
        byte[] bytes = new byte[BYTES];
        for (int i = 0; i < BYTES; i++) bytes[i] = (byte) random.nextInt(LOWEST_HIGH, ABOVE_HIGHEST);
        return bytes;
    }
}
