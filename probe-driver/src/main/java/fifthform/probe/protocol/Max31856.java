package fifthform.probe.protocol;

import fifthform.curves.thermocouple.Converter;

/**
 * Frames of the chip MAX31856 as an adapter reads them: six bytes, registers 0x0A to 0x0F. The type is set in another
 * register. Settings are those of {@link ChipSettings}.
 */
public final class Max31856 extends ChipProtocol {
    private static final Facts FACTS = new Facts(
            "max31856",
            "registers 0x0A to 0x0F of the converter MAX31856, for example 1804 01F800 00",
            Converter.MAX31856,
            ChipSettings.Freedom.ANY_TYPE,
            Max31856Chip::new);

    /** Lines of hexadecimal digits. */
    public Max31856() {
        super(FACTS, ChipSettings.HEX);
    }
}
