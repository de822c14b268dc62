package fifthform.monitor.app;

import fifthform.probe.ProbeProtocol;
import fifthform.probe.Spoken;
import fifthform.probe.Talk;
import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;

/** The ways of talking that are installed. */
final class Protocols {
    /** Tolerant text lines; also what practice and text files speak. */
    static final String TEXT = "text-lines";

    /** Directories in which the kernel shows sensors. */
    static final String KERNEL_FILES = "kernel-files";

    private Protocols() {}

    static List<ProbeProtocol> all() {
        return ServiceLoader.load(ProbeProtocol.class).stream()
                .map(ServiceLoader.Provider::get)
                .sorted(Comparator.comparing(ProbeProtocol::id))
                .toList();
    }

    /** What {@code --talk} names: {@code id} or {@code id:name=value,…}. */
    static Spoken named(String talk) throws Refusal {
        Talk parsed = Answers.orRefuse(Talk.parse(talk), Exit.NOT_UNDERSTOOD);
        return Answers.orRefuse(Spoken.of(parsed, all()), Exit.NOT_UNDERSTOOD);
    }
}
