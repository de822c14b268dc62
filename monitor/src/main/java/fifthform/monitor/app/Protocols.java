package fifthform.monitor.app;

import fifthform.probe.ProbeProtocol;
import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;
import java.util.stream.Collectors;

/** The ways of talking that are installed. */
final class Protocols {
    /** Tolerant text lines; also what practice and text files speak. */
    static final String TEXT = "text-lines";

    private Protocols() {}

    static List<ProbeProtocol> all() {
        return ServiceLoader.load(ProbeProtocol.class).stream()
                .map(ServiceLoader.Provider::get)
                .sorted(Comparator.comparing(ProbeProtocol::id))
                .toList();
    }

    static ProbeProtocol named(String id) throws Refusal {
        return all().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new Refusal(
                        Exit.NOT_UNDERSTOOD,
                        "No protocol is called " + id + ". Nothing was done. Known are: "
                                + all().stream().map(ProbeProtocol::id).collect(Collectors.joining(", ")) + "."));
    }
}
