package fifthform.probe.protocol;

import fifthform.curves.check.Parsed;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** An adapter that hands on the frames of a converter chip as they are; what differs from chip to chip are its facts. */
class ChipProtocol implements ProbeProtocol {
    private final Facts facts;
    private final ChipSettings settings;

    /**
     * What is true of one chip.
     *
     * @param id as {@link ProbeProtocol#id}
     * @param description as {@link ProbeProtocol#description}
     * @param converter what it makes of a thermocouple's voltage
     * @param freedom what it leaves to settings
     * @param chip how its frames are read, anew for each open link
     */
    record Facts(
            String id, String description, Converter converter, ChipSettings.Freedom freedom, Supplier<Chip> chip) {}

    ChipProtocol(Facts facts, ChipSettings settings) {
        this.facts = facts;
        this.settings = settings;
    }

    @Override
    public final String id() {
        return facts.id();
    }

    @Override
    public final String description() {
        return facts.description();
    }

    /** As {@link TextLines}: the same hobby boards (common practice, no source). */
    @Override
    public final List<LineSettings> lines() {
        return new TextLines().lines();
    }

    @Override
    public final Parsed<ProbeProtocol> with(Map<String, String> said) {
        return settings.changed(id(), said, facts.freedom(), set -> new ChipProtocol(facts, set));
    }

    @Override
    public final Sensor sensor() {
        return settings.sensor(facts.converter());
    }

    @Override
    public final Decoder newDecoder() {
        return settings.newDecoder(facts.chip().get());
    }
}
