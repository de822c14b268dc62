package fifthform.simulator.device;

import java.nio.charset.StandardCharsets;
import java.util.OptionalDouble;

/** One thing an adapter has to say, in the bytes of its wire, and the number a display would show beside them. */
final class Said {
    private final byte[] bytes;
    private final OptionalDouble celsius;

    private Said(byte[] bytes, OptionalDouble celsius) {
        this.bytes = bytes;
        this.celsius = celsius;
    }

    /** A number; takes over {@code bytes}. */
    static Said number(byte[] bytes, double celsius) {
        return new Said(bytes, OptionalDouble.of(celsius));
    }

    /** Something that is no number to go by; takes over {@code bytes}. */
    static Said noNumber(byte[] bytes) {
        return new Said(bytes, OptionalDouble.empty());
    }

    static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    static byte[] line(String text) {
        return ascii(text + "\r\n");
    }

    /** The bytes themselves, not a copy. */
    byte[] bytes() {
        return bytes;
    }

    /** The number in these bytes, °C, as it stands there; empty where there is none to go by. */
    OptionalDouble celsius() {
        return celsius;
    }
}
