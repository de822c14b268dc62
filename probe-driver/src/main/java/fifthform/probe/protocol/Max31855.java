package fifthform.probe.protocol;

import fifthform.curves.check.Parsed;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import java.util.List;
import java.util.Map;

/**
 * Frames of the chip MAX31855 as an adapter reads them: four bytes. The chip comes in one version a thermocouple type
 * and cannot tell which; K is the usual one. Settings are those of {@link ChipSettings}.
 */
public final class Max31855 implements ProbeProtocol {
    private final ChipSettings settings;

    /** Lines of hexadecimal digits. */
    public Max31855() {
        this(ChipSettings.HEX_K);
    }

    private Max31855(ChipSettings settings) {
        this.settings = settings;
    }

    @Override
    public String id() {
        return "max31855";
    }

    @Override
    public String description() {
        return "frames of the converter MAX31855, for example 01F81870";
    }

    /** As {@link TextLines}: the same hobby boards (common practice, no source). */
    @Override
    public List<LineSettings> lines() {
        return new TextLines().lines();
    }

    @Override
    public Parsed<ProbeProtocol> with(Map<String, String> said) {
        return settings.changed(id(), said, ChipSettings.Freedom.ANY_TYPE, Max31855::new);
    }

    @Override
    public Sensor sensor() {
        return settings.sensor(Converter.MAX31855);
    }

    @Override
    public Decoder newDecoder() {
        return settings.newDecoder(new Max31855Chip());
    }
}
