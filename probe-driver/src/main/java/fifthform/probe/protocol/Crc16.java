package fifthform.probe.protocol;

/**
 * CRC-16/MODBUS: polynomial 0x8005 reflected, start 0xFFFF, sent low byte first. Source: MODBUS over Serial Line
 * Specification and Implementation Guide V1.02, 6.2.2; check value 0x4B37 for the ASCII text 123456789 (both from memory).
 */
final class Crc16 {
    private static final int START = 0xFFFF;
    private static final int REFLECTED_POLYNOMIAL = 0xA001;

    private Crc16() {}

    /** Over {@code bytes[from..to)}. */
    static int of(byte[] bytes, int from, int to) {
        int crc = START;
        for (int i = from; i < to; i++) {
            crc ^= bytes[i] & 0xFF;
            for (int bit = 0; bit < 8; bit++) crc = (crc & 1) != 0 ? crc >>> 1 ^ REFLECTED_POLYNOMIAL : crc >>> 1;
        }
        return crc;
    }

    /** Whether the last two bytes before {@code to} are the CRC of those from {@code from} on. */
    static boolean closes(byte[] bytes, int from, int to) {
        int crc = of(bytes, from, to - 2);
        return bytes[to - 2] == (byte) crc && bytes[to - 1] == (byte) (crc >>> 8);
    }
}
