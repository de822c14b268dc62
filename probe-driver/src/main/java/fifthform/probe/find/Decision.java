package fifthform.probe.find;

import fifthform.curves.check.Require;
import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Spoken;
import java.util.List;

/**
 * How an adapter talks.
 *
 * @param spoken protocol and line, and how files keep them
 * @param confidence how sure, 0 to 1; see {@link Evidence}
 * @param channels what it told, lowest channel first
 */
public record Decision(Spoken spoken, double confidence, List<ChannelHeard> channels) {
    public Decision {
        Require.within(confidence, 0, 1, "confidence");
        channels = List.copyOf(channels);
    }

    static Decision of(ProbeProtocol protocol, LineSettings line, Evidence evidence) {
        return new Decision(Spoken.found(protocol, line), evidence.confidence(), evidence.channels());
    }
}
