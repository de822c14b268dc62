package fifthform.monitor.adapters;

import fifthform.probe.find.KnownAdapter;
import fifthform.probe.find.KnownProbe;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * An adapter and all that was ever kept of it.
 *
 * @param known what is known of it now; the correction of a channel is that of its newest good check
 * @param checks all checks, the oldest first
 */
public record KeptAdapter(Path file, KnownAdapter known, List<KeptCheck> checks) {
    public KeptAdapter {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(known, "known");
        checks = List.copyOf(checks);
    }

    /** What is on a channel. */
    public Optional<KnownProbe> probe(int channel) {
        return known.probes().stream().filter(p -> p.channel() == channel).findFirst();
    }
}
