package fifthform.simulator.scenario;

import fifthform.curves.check.Parsed;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.device.PlannedFault;
import fifthform.simulator.device.Trouble;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One fault of a scenario, as {@code unplugged for 25 s, 10 s after warm-bath}.
 *
 * @param line where it stands
 */
record FaultText(int line, PlannedFault fault) {
    private static final Pattern FORM =
            Pattern.compile("([a-z-]+) for ([0-9.]+) s, ([0-9.]+) s after ([a-z-]+)", Pattern.CASE_INSENSITIVE);
    private static final String START = "start";
    private static final String TROUBLES =
            Stream.of(Trouble.values()).map(Trouble::word).collect(Collectors.joining(", "));

    static Parsed<FaultText> parse(int line, String text) {
        String where = "line " + line;
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            return Parsed.refused(
                    where,
                    "\"" + text + "\" is not a fault.",
                    "Write for example: unplugged for 25 s, 10 s after warm-bath");
        }
        Optional<Trouble> trouble = Trouble.fromWord(form.group(1).toLowerCase(Locale.ROOT));
        if (trouble.isEmpty()) {
            return Parsed.refused(
                    where,
                    "\"" + form.group(1) + "\" is no trouble an adapter can have.",
                    "Use one of: " + TROUBLES + ".");
        }
        Optional<Optional<Spot>> since = since(form.group(4).toLowerCase(Locale.ROOT));
        if (since.isEmpty()) {
            return Parsed.refused(
                    where,
                    "\"" + form.group(4) + "\" is not a moment of the batch.",
                    "Use start, hot-bath, cold-water, table or warm-bath.");
        }
        double lasting = NumberText.number(form.group(2));
        double after = NumberText.number(form.group(3));
        if (!(lasting <= 86_400 && after <= 86_400)) {
            return Parsed.refused(where, "\"" + text + "\" lasts too long.", "Give seconds, at most a day.");
        }
        return Parsed.accepted(new FaultText(
                line,
                new PlannedFault(
                        trouble.get(), since.get(), NumberText.duration(after), NumberText.duration(lasting))));
    }

    /** Empty inside for the start; empty outside where there is no such moment. */
    private static Optional<Optional<Spot>> since(String word) {
        if (word.equals(START)) return Optional.of(Optional.empty());
        for (Spot spot : Spot.values()) {
            if (spot.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(word)) {
                return Optional.of(Optional.of(spot));
            }
        }
        return Optional.empty();
    }
}
