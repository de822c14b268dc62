package fifthform.probe.protocol;

import fifthform.curves.thermocouple.Converter;

/**
 * Frames of the chip MAX6675 as an adapter reads them: two bytes. The chip is for type K only. Settings are those of
 * {@link ChipSettings}.
 */
public final class Max6675 extends ChipProtocol {
    private static final Facts FACTS = new Facts(
            "max6675",
            "frames of the converter MAX6675, for example 03F0",
            Converter.MAX6675,
            ChipSettings.Freedom.FIXED_TYPE_MARKED,
            Max6675Chip::new);

    /** Lines of hexadecimal digits. */
    public Max6675() {
        super(FACTS, ChipSettings.HEX_K);
    }
}
