package fifthform.probe;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * How to talk with an adapter, as the maker writes it and files keep it: {@code text-lines},
 * {@code modbus-rtu:baud=19200,register=8}.
 *
 * @param protocol id of the protocol
 * @param settings names and values, in the order of the names
 */
public record Talk(String protocol, Map<String, String> settings) {
    private static final String ID = "[a-z0-9][a-z0-9-]*";

    public Talk {
        if (!protocol.matches(ID)) throw new IllegalArgumentException("protocol must be an id, was " + protocol);
        settings = Collections.unmodifiableMap(new TreeMap<>(Objects.requireNonNull(settings, "settings")));
    }

    /** A protocol without settings. */
    public static Talk of(String protocol) {
        return new Talk(protocol, Map.of());
    }

    /** Reads {@code id} or {@code id:name=value,name=value}. */
    public static Parsed<Talk> parse(String text) {
        int colon = text.indexOf(':');
        String id = (colon < 0 ? text : text.substring(0, colon)).strip();
        List<Problem> problems = new ArrayList<>();
        if (!id.matches(ID)) problems.add(problem(text, "\"" + id + "\" is no name of a protocol."));
        Map<String, String> settings = new TreeMap<>();
        String rest = colon < 0 ? "" : text.substring(colon + 1).strip();
        for (String setting : rest.isEmpty() ? new String[0] : rest.split(",", -1)) {
            int equals = setting.indexOf('=');
            String name = equals < 0 ? "" : setting.substring(0, equals).strip();
            if (!name.matches(ID)) problems.add(problem(text, "\"" + setting + "\" is not a name=value."));
            else if (settings.put(name, setting.substring(equals + 1).strip()) != null)
                problems.add(problem(text, name + " is given twice."));
        }
        return problems.isEmpty() ? Parsed.accepted(new Talk(id, settings)) : Parsed.refused(problems);
    }

    private static Problem problem(String text, String what) {
        return new Problem(
                "--talk " + text, what + " Nothing was done.", "Write for example modbus-rtu:baud=19200,register=8.");
    }

    /** As {@link #parse} reads it. */
    @Override
    public String toString() {
        if (settings.isEmpty()) return protocol;
        return settings.entrySet().stream()
                .map(e -> e.getKey() + "=" + e.getValue())
                .collect(Collectors.joining(",", protocol + ":", ""));
    }
}
