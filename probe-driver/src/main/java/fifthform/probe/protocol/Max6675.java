package fifthform.probe.protocol;

import fifthform.curves.check.Parsed;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import java.util.List;
import java.util.Map;

/**
 * Frames of the chip MAX6675 as an adapter reads them: two bytes. The chip is for type K only. Settings are those of
 * {@link ChipSettings}.
 */
public final class Max6675 implements ProbeProtocol {
    private final ChipSettings settings;

    /** Lines of hexadecimal digits. */
    public Max6675() {
        this(ChipSettings.HEX_K);
    }

    private Max6675(ChipSettings settings) {
        this.settings = settings;
    }

    @Override
    public String id() {
        return "max6675";
    }

    @Override
    public String description() {
        return "frames of the converter MAX6675, for example 03F0";
    }

    /** As {@link TextLines}: the same hobby boards (common practice, no source). */
    @Override
    public List<LineSettings> lines() {
        return new TextLines().lines();
    }

    @Override
    public Parsed<ProbeProtocol> with(Map<String, String> said) {
        return settings.changed(id(), said, ChipSettings.Freedom.FIXED_TYPE_MARKED, Max6675::new);
    }

    @Override
    public Sensor sensor() {
        return settings.sensor(Converter.MAX6675);
    }

    @Override
    public Decoder newDecoder() {
        return settings.newDecoder(new Max6675Chip());
    }
}
