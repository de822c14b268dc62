package fifthform.probe.protocol;

import fifthform.curves.check.Parsed;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import java.util.List;
import java.util.Map;

/**
 * Frames of the chip MCP9600 as an adapter reads them: two bytes, register 0x00. The type is set in another register.
 * Settings are those of {@link ChipSettings}.
 */
public final class Mcp9600 implements ProbeProtocol {
    private final ChipSettings settings;

    /** Lines of hexadecimal digits. */
    public Mcp9600() {
        this(ChipSettings.HEX);
    }

    private Mcp9600(ChipSettings settings) {
        this.settings = settings;
    }

    @Override
    public String id() {
        return "mcp9600";
    }

    @Override
    public String description() {
        return "register 0x00 of the converter MCP9600, for example 01F8";
    }

    /** As {@link TextLines}: the same hobby boards (common practice, no source). */
    @Override
    public List<LineSettings> lines() {
        return new TextLines().lines();
    }

    @Override
    public Parsed<ProbeProtocol> with(Map<String, String> said) {
        return settings.changed(id(), said, ChipSettings.Freedom.ANY_TYPE_MARKED, Mcp9600::new);
    }

    @Override
    public Sensor sensor() {
        return settings.sensor(Converter.MCP9600);
    }

    @Override
    public Decoder newDecoder() {
        return settings.newDecoder(new Mcp9600Chip());
    }
}
