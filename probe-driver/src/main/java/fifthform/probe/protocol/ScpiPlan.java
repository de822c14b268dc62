package fifthform.probe.protocol;

import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What an instrument is asked.
 *
 * @param queries ways to ask for a reading, tried in turn until one is answered
 * @param channels numbers of the channels as the instrument counts them; empty for one that has a single one
 * @param unit as the maker said; empty to ask the instrument
 * @param lineEnd what ends a question
 * @param every from one reading to the next
 * @param timeout how long an answer may take
 */
record ScpiPlan(
        List<String> queries,
        List<Integer> channels,
        Optional<Unit> unit,
        String lineEnd,
        Duration every,
        Duration timeout) {
    /** The one that measures a temperature whatever the instrument is set to; the others read what it is set to. */
    static final String MEASURE = "MEAS:TEMP?";

    /** As an instrument is found that nobody has described. */
    static final ScpiPlan UNSET = new ScpiPlan(
            List.of(MEASURE, "READ?", "FETC?"),
            List.of(),
            Optional.empty(),
            "\n",
            Duration.ofMillis(500),
            Duration.ofSeconds(1));

    ScpiPlan {
        queries = List.copyOf(queries);
        if (queries.isEmpty()) throw new IllegalArgumentException("queries must name at least one");
        channels = List.copyOf(channels);
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(lineEnd, "lineEnd");
        Objects.requireNonNull(every, "every");
        Objects.requireNonNull(timeout, "timeout");
    }

    /** How many numbers an answer has. */
    int numbers() {
        return Math.max(1, channels.size());
    }

    OptionalInt channel(int index) {
        return index >= 0 && index < channels.size() ? OptionalInt.of(channels.get(index)) : OptionalInt.empty();
    }

    /** {@code MEAS:TEMP? (@101,102)}: a list of channels (SCPI-1999 volume 1, 8.3.2; from memory) fits this query only. */
    String withChannels(String query) {
        if (!query.equals(MEASURE) || channels.isEmpty()) return query;
        StringBuilder list = new StringBuilder();
        for (int channel : channels) list.append(list.isEmpty() ? "" : ",").append(channel);
        return query + " (@" + list + ")";
    }
}
