package fifthform.probe.find;

import fifthform.curves.check.Require;
import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Spoken;
import fifthform.probe.Talk;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

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
        return new Decision(
                new Spoken(talk(protocol, line), protocol, line), evidence.confidence(), evidence.channels());
    }

    /** Names of the line only what the protocol would not assume by itself. */
    private static Talk talk(ProbeProtocol protocol, LineSettings line) {
        LineSettings usual = protocol.lines().get(0);
        Map<String, String> settings = new TreeMap<>();
        if (line.baud() != usual.baud()) settings.put("baud", String.valueOf(line.baud()));
        if (line.parity() != usual.parity())
            settings.put("parity", line.parity().name().toLowerCase(Locale.ROOT));
        if (line.stopBits() != usual.stopBits()) settings.put("stop-bits", String.valueOf(line.stopBits()));
        return new Talk(protocol.id(), settings);
    }
}
