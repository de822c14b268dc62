package fifthform.probe.protocol;

import fifthform.probe.Signal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Lines without any number that tell why there is none. {@code open} and {@code short} count alone or beside a word for the
 * instrument or for faults: "door open" is not ours. A line with anything but plain text in it is noise.
 */
final class FaultWords {
    private static final Set<String> INSTRUMENT = Set.of(
            "fault",
            "error",
            "err",
            "thermocouple",
            "tc",
            "probe",
            "sensor",
            "circuit",
            "input",
            "gnd",
            "ground",
            "vcc",
            "temp",
            "temperature");
    private static final Set<String> DENIAL = Set.of("no", "not", "ok", "none", "without");

    private FaultWords() {}

    static Optional<Signal> read(String text) {
        if (!text.matches("[ -~\\t]*")) return Optional.empty();
        List<String> words =
                new ArrayList<>(List.of(text.toLowerCase(Locale.ROOT).split("[^a-z]+")));
        words.removeIf(String::isEmpty);
        boolean open = words.contains("open");
        boolean shorted = words.contains("short") || words.contains("shorted");
        boolean ours = words.size() == 1 || words.stream().anyMatch(INSTRUMENT::contains);
        if (open == shorted || !ours || words.stream().anyMatch(DENIAL::contains)) return Optional.empty();
        return Optional.of(open ? new Signal.OpenCircuit(0) : new Signal.Shorted(0));
    }
}
