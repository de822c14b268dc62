package fifthform.probe.protocol;

import fifthform.curves.thermocouple.Converter;

/**
 * Frames of the chip MAX31855 as an adapter reads them: four bytes. The chip comes in one version a thermocouple type
 * and cannot tell which; K is the usual one. Settings are those of {@link ChipSettings}.
 */
public final class Max31855 extends ChipProtocol {
    private static final Facts FACTS = new Facts(
            "max31855",
            "frames of the converter MAX31855, for example 01F81870",
            Converter.MAX31855,
            ChipSettings.Freedom.ANY_TYPE,
            Max31855Chip::new);

    /** Lines of hexadecimal digits. */
    public Max31855() {
        super(FACTS, ChipSettings.HEX_K);
    }
}
