package fifthform.probe.protocol;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** How a number lies in 16-bit registers. */
enum RegisterFormat {
    INT16(1),
    UINT16(1),
    INT32(2),
    UINT32(2),
    /** IEEE 754 binary32. */
    FLOAT32(2);

    private final int registers;

    RegisterFormat(int registers) {
        this.registers = registers;
    }

    /** The word in settings: {@code int16}, … */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** @throws IllegalArgumentException if it is none of {@link #words} */
    static RegisterFormat ofWord(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }

    static List<String> words() {
        return Stream.of(values()).map(RegisterFormat::word).toList();
    }

    /** How many registers one number takes. */
    int registers() {
        return registers;
    }

    long lowest() {
        return -(1L << 16 * registers - 1);
    }

    long highest() {
        return (1L << 16 * registers) - 1;
    }

    /** The number that these bits stand for; empty where they stand for none. */
    Optional<Double> value(long bits) {
        return switch (this) {
            case INT16 -> Optional.of((double) (short) bits);
            case INT32 -> Optional.of((double) (int) bits);
            case UINT16, UINT32 -> Optional.of((double) bits);
            case FLOAT32 ->
                Optional.of((double) Float.intBitsToFloat((int) bits)).filter(Double::isFinite);
        };
    }

    /** What the last bit is worth near this number. */
    double step(double value) {
        return this == FLOAT32 ? Math.ulp((float) value) : 1;
    }

    /**
     * Whether many transmitters send these bits instead of a temperature: the ends of the signed range, and all ones where
     * the number is unsigned (common practice, no source). One step that may be lost weighs less than a false reading.
     */
    boolean isUsuallyOpen(long bits) {
        long ones = (1L << 16 * registers) - 1;
        boolean end = bits == ones >>> 1 || bits == (ones >>> 1) + 1;
        boolean unsigned = this == UINT16 || this == UINT32;
        return this != FLOAT32 && (end || unsigned && bits == ones);
    }
}
