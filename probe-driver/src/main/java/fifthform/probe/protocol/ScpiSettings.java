package fifthform.probe.protocol;

import fifthform.curves.check.Parsed;
import fifthform.probe.ProbeProtocol;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the maker wrote behind {@code scpi:}. */
final class ScpiSettings {
    private static final String QUERY = "query";
    private static final String CHANNELS = "channels";
    private static final List<String> KNOWN = List.of(QUERY, CHANNELS, "in", "line-end", "every", "timeout");
    private static final Map<String, String> LINE_ENDS = Map.of("lf", "\n", "cr", "\r", "crlf", "\r\n");

    /** As many channels as a bowl, its bath and a room can use, and more. */
    private static final int MOST_CHANNELS = 16;

    private static final int HIGHEST_CHANNEL = 99_999;

    private final SettingReader reader;

    ScpiSettings(Map<String, String> given) {
        this.reader = new SettingReader(Scpi.ID, given, KNOWN);
    }

    Parsed<ProbeProtocol> read() {
        List<String> usual = ScpiPlan.UNSET.queries();
        List<String> queries = reader.has(QUERY) ? List.of(reader.word(QUERY, usual, usual.get(0))) : usual;
        List<Integer> channels = channels();
        Optional<Unit> unit = reader.has("in") ? Optional.of(reader.unit(Unit.CELSIUS)) : Optional.empty();
        String lineEnd = LINE_ENDS.get(reader.word("line-end", List.of("lf", "cr", "crlf"), "lf"));
        Duration every = reader.seconds("every", PollPace.SHORTEST_SECONDS, PollPace.LONGEST_SECONDS, 0.5);
        Duration timeout = reader.seconds("timeout", 0.1, PollPace.LONGEST_SECONDS, 1);
        if (!reader.problems().isEmpty()) return Parsed.refused(reader.problems());
        return Parsed.accepted(new Scpi(new ScpiPlan(queries, channels, unit, lineEnd, every, timeout)));
    }

    private List<Integer> channels() {
        if (!reader.has(CHANNELS)) return List.of();
        List<Integer> channels = reader.wholes(CHANNELS, 0, HIGHEST_CHANNEL).stream()
                .map(Long::intValue)
                .toList();
        if (channels.size() > MOST_CHANNELS || channels.stream().distinct().count() < channels.size())
            reader.refuse(
                    CHANNELS,
                    "It must name each channel once, and " + MOST_CHANNELS + " at most.",
                    "Write for example channels=101/102.");
        return channels;
    }
}
