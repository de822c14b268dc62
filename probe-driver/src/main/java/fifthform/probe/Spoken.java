package fifthform.probe;

import fifthform.curves.check.Nearest;
import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.probe.LineSettings.Parity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A way of talking, ready to be used: the protocol with its settings, and the settings of the line.
 *
 * @param talk how the maker and files write it
 * @param protocol the protocol, set
 * @param line the serial line
 */
public record Spoken(Talk talk, ProbeProtocol protocol, LineSettings line) {
    private static final String BAUD = "baud";
    private static final String PARITY = "parity";
    private static final String STOP_BITS = "stop-bits";

    /** Settings of the serial line, which fit every protocol. */
    public static final List<String> LINE_SETTINGS = List.of(BAUD, PARITY, STOP_BITS);

    public Spoken {
        Objects.requireNonNull(talk, "talk");
        Objects.requireNonNull(protocol, "protocol");
        Objects.requireNonNull(line, "line");
    }

    /**
     * Finds the protocol that {@code talk} names. {@code baud}, {@code parity} (none, even, odd) and {@code stop-bits}
     * are settings of the line and fit every protocol; the others are the protocol's own.
     */
    public static Parsed<Spoken> of(Talk talk, List<ProbeProtocol> known) {
        Optional<ProbeProtocol> named =
                known.stream().filter(p -> p.id().equals(talk.protocol())).findFirst();
        if (named.isEmpty()) return unknown(talk, known);
        Map<String, String> own = new TreeMap<>(talk.settings());
        own.keySet().removeAll(LINE_SETTINGS);
        List<Problem> problems = new ArrayList<>();
        Optional<LineSettings> line = line(talk, named.get().lines().get(0), problems);
        return named.get()
                .with(own)
                .fold(
                        set -> line.<Parsed<Spoken>>map(l -> Parsed.accepted(new Spoken(talk, set, l)))
                                .orElseGet(() -> Parsed.refused(problems)),
                        more -> {
                            problems.addAll(more);
                            return Parsed.refused(problems);
                        });
    }

    /** A protocol without settings of its own on a line that was found out; of that only what the protocol does not assume. */
    public static Spoken found(ProbeProtocol protocol, LineSettings line) {
        LineSettings usual = protocol.lines().get(0);
        Map<String, String> settings = new TreeMap<>();
        if (line.baud() != usual.baud()) settings.put(BAUD, String.valueOf(line.baud()));
        if (line.parity() != usual.parity()) settings.put(PARITY, word(line.parity()));
        if (line.stopBits() != usual.stopBits()) settings.put(STOP_BITS, String.valueOf(line.stopBits()));
        return new Spoken(new Talk(protocol.id(), settings), protocol, line);
    }

    private static String word(Parity parity) {
        return parity.name().toLowerCase(Locale.ROOT);
    }

    private static Parsed<Spoken> unknown(Talk talk, List<ProbeProtocol> known) {
        List<String> ids = known.stream().map(ProbeProtocol::id).toList();
        String meant = Nearest.to(talk.protocol(), ids)
                .map(id -> "Did you mean " + id + "? ")
                .orElse("");
        return Parsed.refused(
                "--talk " + talk,
                "No protocol is called " + talk.protocol() + ". Nothing was done.",
                meant + "Known are: " + ids.stream().sorted().collect(Collectors.joining(", ")) + ".");
    }

    private static Optional<LineSettings> line(Talk talk, LineSettings usual, List<Problem> problems) {
        Map<String, String> given = talk.settings();
        String baud = given.getOrDefault(BAUD, String.valueOf(usual.baud()));
        String parity = given.getOrDefault(PARITY, word(usual.parity()));
        String stop = given.getOrDefault(STOP_BITS, String.valueOf(usual.stopBits()));
        try {
            Parity bit = Parity.valueOf(parity.toUpperCase(Locale.ROOT));
            return Optional.of(new LineSettings(Integer.parseInt(baud), bit, Integer.parseInt(stop)));
        } catch (IllegalArgumentException e) {
            problems.add(new Problem(
                    "--talk " + talk,
                    "The serial line cannot be set to baud " + baud + ", parity " + parity + ", stop-bits " + stop
                            + ". Nothing was done.",
                    "Give baud from 50 to 4000000, parity none, even or odd, and 1 or 2 stop-bits."));
            return Optional.empty();
        }
    }
}
