package fifthform.probe.protocol;

import fifthform.curves.thermocouple.Converter;

/**
 * Frames of the chip MCP9600 as an adapter reads them: two bytes, register 0x00. The type is set in another register.
 * Settings are those of {@link ChipSettings}.
 */
public final class Mcp9600 extends ChipProtocol {
    private static final Facts FACTS = new Facts(
            "mcp9600",
            "register 0x00 of the converter MCP9600, for example 01F8",
            Converter.MCP9600,
            ChipSettings.Freedom.ANY_TYPE_MARKED,
            Mcp9600Chip::new);

    /** Lines of hexadecimal digits. */
    public Mcp9600() {
        super(FACTS, ChipSettings.HEX);
    }
}
