package fifthform.simulator.device;

import fifthform.curves.check.Parsed;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Spoken;
import fifthform.probe.Talk;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.Set;

/**
 * What a pretend adapter speaks: a protocol of the driver, with the settings by which the driver is told of it. The same text
 * that makes the driver listen rightly makes the adapter speak.
 */
public final class Language {
    private static final String DIRECTORY = "kernel-files";

    private static final List<ProbeProtocol> KNOWN = ServiceLoader.load(ProbeProtocol.class).stream()
            .map(ServiceLoader.Provider::get)
            .toList();

    /** Lines as hobby boards print them. */
    public static final Language TEXT_LINES = of(Talk.of("text-lines")).fold(language -> language, problems -> {
        throw new IllegalStateException("text-lines is missing on the class path: " + problems);
    });

    private final Spoken spoken;

    private Language(Spoken spoken) {
        this.spoken = spoken;
    }

    /** The language that this talk names, or what is wrong with it: an unknown protocol or setting. */
    public static Parsed<Language> of(Talk talk) {
        return Spoken.of(talk, KNOWN).fold(spoken -> of(talk, new Language(spoken)), Parsed::refused);
    }

    private static Parsed<Language> of(Talk talk, Language language) {
        if (language.wireWith(1, 0).isPresent()) return Parsed.accepted(language);
        return Parsed.refused(
                "--talk " + talk,
                "No practice adapter speaks " + talk.protocol() + ". Nothing was done.",
                "Choose another protocol, for example text-lines.");
    }

    /** As the maker and files write it. */
    public Talk talk() {
        return spoken.talk();
    }

    /** For whoever listens: the driver's protocol, set. */
    public ProbeProtocol protocol() {
        return spoken.protocol();
    }

    /** The serial line on which it is spoken. */
    public LineSettings line() {
        return spoken.line();
    }

    /** Whether it comes through a port; the kernel's files come from a directory. */
    public boolean comesThroughAPort() {
        return !talk().protocol().equals(DIRECTORY);
    }

    /** What can be wrong with such an adapter. */
    public Set<Trouble> troubles() {
        return wire(1, 0).troubles();
    }

    /**
     * @param resolutionKelvin for adapters that write a temperature; converters have their own steps
     * @param junctionCelsius temperature of the board
     */
    Wire wire(double resolutionKelvin, double junctionCelsius) {
        return wireWith(resolutionKelvin, junctionCelsius).orElseThrow();
    }

    /** To give a new protocol its adapter add a line here. */
    private Optional<Wire> wireWith(double resolutionKelvin, double junctionCelsius) {
        String protocol = talk().protocol();
        Map<String, String> settings = talk().settings();
        return switch (protocol) {
            case "text-lines" -> Optional.of(new TextWire(resolutionKelvin));
            case "json-lines" -> Optional.of(new JsonWire(resolutionKelvin));
            case "millivolts" -> Optional.of(new EmfWire(settings, junctionCelsius));
            case "modbus-rtu" -> Optional.of(new ModbusWire(settings, junctionCelsius));
            case "scpi" -> Optional.of(new ScpiWire(settings, resolutionKelvin, junctionCelsius));
            case DIRECTORY -> Optional.of(new KernelWire(resolutionKelvin));
            default -> chip(protocol, settings, junctionCelsius);
        };
    }

    private static Optional<Wire> chip(String protocol, Map<String, String> settings, double junctionCelsius) {
        ThermocoupleType type =
                ThermocoupleType.valueOf(settings.getOrDefault("type", "K").toUpperCase(Locale.ROOT));
        return Frames.of(protocol, type).map(frames -> new ChipWire(frames, settings, junctionCelsius));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Language language && language.talk().equals(talk());
    }

    @Override
    public int hashCode() {
        return talk().hashCode();
    }

    @Override
    public String toString() {
        return talk().toString();
    }
}
