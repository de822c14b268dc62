package fifthform.monitor.app;

import fifthform.probe.Spoken;
import fifthform.probe.find.ChannelHeard;
import fifthform.probe.reader.ProbeLine;
import java.util.List;
import java.util.Objects;

/**
 * An adapter of which it is known how it talks.
 *
 * @param path where it is plugged in
 * @param spoken how it talks
 * @param channels what it was heard to say; empty where nobody listened
 */
record Adapter(String path, Spoken spoken, List<ChannelHeard> channels) {
    Adapter {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(spoken, "spoken");
        channels = List.copyOf(channels);
    }

    /** The first to speak, where nobody listened and nobody named another. */
    int firstChannel() {
        return channels.isEmpty() ? ProbeLine.FIRST_TO_SPEAK : channels.get(0).channel();
    }
}
