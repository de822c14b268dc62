package fifthform.probe;

/** Settings of a serial line: 8 data bits, no parity, 1 stop bit at this speed. */
public record LineSettings(int baud) {
    public LineSettings {
        if (baud < 50 || baud > 4_000_000)
            throw new IllegalArgumentException("baud must be 50 to 4000000, was " + baud);
    }
}
