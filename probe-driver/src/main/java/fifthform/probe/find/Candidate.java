package fifthform.probe.find;

import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import java.util.Objects;
import java.util.Optional;

/**
 * One protocol at one setting of the line, and how it fared.
 *
 * @param rejection why it was not taken, in words; empty for the one that was
 */
public record Candidate(ProbeProtocol protocol, LineSettings line, Evidence evidence, Optional<String> rejection) {
    public Candidate {
        Objects.requireNonNull(protocol, "protocol");
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(evidence, "evidence");
        Objects.requireNonNull(rejection, "rejection");
    }
}
