package fifthform.probe.reader;

import fifthform.curves.setup.ProbeId;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.link.LinkSource;
import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * One adapter: where its bytes come from, how it talks, and which probe is on which of its channels.
 *
 * @param name names the reader's thread, for example {@code bowl}
 * @param probes at least one; channels that are not named are passed over; {@link #FIRST_TO_SPEAK} stands for
 *     whichever speaks first
 */
public record ProbeLine(String name, LinkSource source, ProbeProtocol protocol, Map<Integer, ProbeId> probes) {
    /** Instead of a channel's number: whichever channel speaks first. Adapters count from 0, from 1, or not at all. */
    public static final int FIRST_TO_SPEAK = -1;

    public ProbeLine {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(protocol, "protocol");
        if (probes.isEmpty()) throw new IllegalArgumentException("probes must name at least one channel");
        probes = Collections.unmodifiableMap(new TreeMap<>(probes));
    }
}
