package fifthform.probe;

import java.util.Objects;

/**
 * Settings of a serial line with 8 data bits.
 *
 * @param baud speed, 50 to 4 000 000 bit/s
 * @param parity the parity bit
 * @param stopBits 1 or 2
 */
public record LineSettings(int baud, Parity parity, int stopBits) {
    /** The bit that makes the number of ones even or odd, or none. */
    public enum Parity {
        NONE,
        EVEN,
        ODD
    }

    public LineSettings {
        if (baud < 50 || baud > 4_000_000)
            throw new IllegalArgumentException("baud must be 50 to 4000000, was " + baud);
        Objects.requireNonNull(parity, "parity");
        if (stopBits < 1 || stopBits > 2)
            throw new IllegalArgumentException("stopBits must be 1 or 2, was " + stopBits);
    }

    /** The usual line: no parity, one stop bit. */
    public LineSettings(int baud) {
        this(baud, Parity.NONE, 1);
    }

    /** As people write it: {@code 9600 8N1}. */
    @Override
    public String toString() {
        return baud + " 8" + parity.name().charAt(0) + stopBits;
    }
}
