package fifthform.probe.protocol;

import fifthform.curves.check.Parsed;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import java.util.List;
import java.util.Map;

/**
 * Frames of the chip MAX31856 as an adapter reads them: six bytes, registers 0x0A to 0x0F. The type is set in another
 * register. Settings are those of {@link ChipSettings}.
 */
public final class Max31856 implements ProbeProtocol {
    private final ChipSettings settings;

    /** Lines of hexadecimal digits. */
    public Max31856() {
        this(ChipSettings.HEX);
    }

    private Max31856(ChipSettings settings) {
        this.settings = settings;
    }

    @Override
    public String id() {
        return "max31856";
    }

    @Override
    public String description() {
        return "registers 0x0A to 0x0F of the converter MAX31856, for example 1804 01F800 00";
    }

    /** As {@link TextLines}: the same hobby boards (common practice, no source). */
    @Override
    public List<LineSettings> lines() {
        return new TextLines().lines();
    }

    @Override
    public Parsed<ProbeProtocol> with(Map<String, String> said) {
        return settings.changed(id(), said, ChipSettings.Freedom.ANY_TYPE, Max31856::new);
    }

    @Override
    public Sensor sensor() {
        return settings.sensor(Converter.MAX31856);
    }

    @Override
    public Decoder newDecoder() {
        return settings.newDecoder(new Max31856Chip());
    }
}
