package fifthform.probe.protocol;

import java.util.Arrays;
import java.util.Objects;

/**
 * The one question that a link asks again and again, as it goes over the wire and as its answers look. There is only one a
 * link, because an answer does not say which registers it is about: whatever unit, function, length and CRC fit, can only be
 * about these, be it as late as it likes.
 *
 * <p>Source: MODBUS Application Protocol Specification V1.1b3, 6.3, 6.4 and 7 (from memory).
 *
 * @param unit address of the device, 1 to 247
 * @param first register, counted from 0
 * @param count registers, 1 to 125
 */
record RegisterQuestion(int unit, RegisterTable table, int first, int count) {
    static final int LOWEST_UNIT = 1;
    static final int HIGHEST_UNIT = 247;
    static final int HIGHEST_REGISTER = 0xFFFF;
    static final int MOST_REGISTERS = 125;
    /** Unit, function, first register, count, CRC. */
    static final int LENGTH = 8;
    /** Unit, function and the number of data bytes. */
    static final int ANSWER_HEAD = 3;
    /** Unit, function, exception code, CRC. */
    static final int REFUSAL_LENGTH = 5;

    private static final int HIGHEST_EXCEPTION = 0x0B;
    private static final int CRC_LENGTH = 2;
    private static final int REFUSED = 0x80;

    RegisterQuestion {
        if (unit < LOWEST_UNIT || unit > HIGHEST_UNIT)
            throw new IllegalArgumentException("unit must be 1 to 247, was " + unit);
        Objects.requireNonNull(table, "table");
        if (count < 1 || count > MOST_REGISTERS)
            throw new IllegalArgumentException("count must be 1 to 125, was " + count);
        if (first < 0 || first + count - 1 > HIGHEST_REGISTER)
            throw new IllegalArgumentException("registers must be 0 to 65535, were " + first + " and " + count);
    }

    /** As it goes over the wire. */
    byte[] bytes() {
        byte[] bytes = {
            (byte) unit,
            (byte) table.function(),
            (byte) (first >> 8),
            (byte) first,
            (byte) (count >> 8),
            (byte) count,
            0,
            0
        };
        int crc = Crc16.of(bytes, 0, 6);
        bytes[6] = (byte) crc;
        bytes[7] = (byte) (crc >> 8);
        return bytes;
    }

    int answerLength() {
        return ANSWER_HEAD + 2 * count + CRC_LENGTH;
    }

    /** Whether {@code bytes[from..to)} is an answer; its data follows {@link #ANSWER_HEAD}. */
    boolean isAnsweredBy(byte[] bytes, int from, int to) {
        return to - from == answerLength() && hasLooksOfAnswer(bytes, from) && Crc16.closes(bytes, from, to);
    }

    /** Whether unit, function and length at {@code from} are an answer's. */
    boolean hasLooksOfAnswer(byte[] bytes, int from) {
        return bytes[from] == (byte) unit
                && bytes[from + 1] == table.function()
                && bytes[from + 2] == (byte) (2 * count);
    }

    /** Whether {@code bytes[from..to)} is the device's refusal to answer. */
    boolean isRefusedBy(byte[] bytes, int from, int to) {
        return to - from == REFUSAL_LENGTH
                && bytes[from] == (byte) unit
                && bytes[from + 1] == (byte) (table.function() | REFUSED)
                && bytes[from + 2] >= 1
                && bytes[from + 2] <= HIGHEST_EXCEPTION
                && Crc16.closes(bytes, from, to);
    }

    /** Whether {@code bytes[from..to)} is this question itself, as a line without a switched receiver returns it. */
    boolean isEchoedBy(byte[] bytes, int from, int to) {
        byte[] own = bytes();
        return Arrays.equals(own, 0, own.length, bytes, from, to);
    }

    /**
     * How long a message that begins at {@code bytes[from]} would be, were it an answer to some other question for
     * registers, from any unit; 0 where it cannot be one.
     */
    static int foreignLength(byte[] bytes, int from, int to) {
        if (to - from < ANSWER_HEAD) return 0;
        int unit = bytes[from] & 0xFF;
        int function = bytes[from + 1] & 0xFF;
        int data = bytes[from + 2] & 0xFF;
        if (unit < LOWEST_UNIT || unit > HIGHEST_UNIT) return 0;
        boolean refusal = (function == 0x83 || function == 0x84) && data >= 1 && data <= HIGHEST_EXCEPTION;
        if (refusal) return REFUSAL_LENGTH;
        boolean answer = (function == 3 || function == 4) && data % 2 == 0 && data >= 2 && data <= 2 * MOST_REGISTERS;
        return answer ? ANSWER_HEAD + data + CRC_LENGTH : 0;
    }
}
