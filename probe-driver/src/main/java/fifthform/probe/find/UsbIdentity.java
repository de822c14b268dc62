package fifthform.probe.find;

import java.util.Objects;
import java.util.Optional;

/**
 * What a USB adapter says of itself.
 *
 * @param vendor USB vendor id, 0 to 65535
 * @param product USB product id, 0 to 65535
 * @param serial its serial number, where it has one
 */
public record UsbIdentity(int vendor, int product, Optional<String> serial) {
    public UsbIdentity {
        if (vendor < 0 || vendor > 0xFFFF)
            throw new IllegalArgumentException("vendor must be 0 to 65535, was " + vendor);
        if (product < 0 || product > 0xFFFF)
            throw new IllegalArgumentException("product must be 0 to 65535, was " + product);
        Objects.requireNonNull(serial, "serial");
    }

    /** As people and systems write it: {@code 1a86:7523}. */
    @Override
    public String toString() {
        return String.format("%04x:%04x", vendor, product);
    }
}
