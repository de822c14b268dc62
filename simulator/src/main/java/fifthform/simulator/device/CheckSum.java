package fifthform.simulator.device;

import java.util.Arrays;

/**
 * CRC-16 of Modbus, reckoned bit by bit as a remainder: x¹⁶ + x¹⁵ + x² + 1, bits of each byte from the lowest, register
 * beginning with ones. Source: MODBUS over Serial Line V1.02, 6.2.2 (from memory).
 */
final class CheckSum {
    private static final int POLYNOMIAL = 0x8005;
    private static final int BYTES = 2;

    private CheckSum() {}

    /** Over the first {@code count} bytes; its low byte is sent first. */
    static int of(byte[] bytes, int count) {
        int remainder = 0xFFFF;
        for (int bit = 0; bit < 8 * count; bit++) {
            int next = bytes[bit / 8] >> bit % 8 & 1;
            int carry = remainder >> 15 ^ next;
            remainder = remainder << 1 & 0xFFFF;
            if (carry != 0) remainder ^= POLYNOMIAL;
        }
        return Integer.reverse(remainder) >>> 16;
    }

    /** The message with its check sum behind it. */
    static byte[] closed(byte[] message) {
        byte[] closed = Arrays.copyOf(message, message.length + BYTES);
        int sum = of(message, message.length);
        closed[message.length] = (byte) sum;
        closed[message.length + 1] = (byte) (sum >> 8);
        return closed;
    }

    static boolean closes(byte[] whole) {
        return Arrays.equals(whole, closed(Arrays.copyOf(whole, whole.length - BYTES)));
    }

    /** The same message with another check sum. */
    static byte[] spoiled(byte[] whole) {
        byte[] spoiled = whole.clone();
        spoiled[whole.length - 1] ^= 0x55;
        return spoiled;
    }
}
