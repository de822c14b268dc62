package fifthform.probe.protocol;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What one line of an instrument is, told by its form alone: answers carry no mark of their question. Forms: IEEE 488.2-1992,
 * 8.7 and 10.14 ({@code *IDN?}: four fields); SCPI-1999 volume 1, 7.2 (numbers), volume 2, 21.8 ({@code SYST:ERR?}); all from
 * memory.
 */
final class ScpiAnswer {
    private static final Pattern ERROR = Pattern.compile("([+-]?\\d{1,5})\\s*,\\s*\"(.*)\"");
    private static final Pattern UNIT = Pattern.compile("\"?(C|CEL|F|FAR|FAHR|K|KEL)\"?", Pattern.CASE_INSENSITIVE);
    private static final Pattern FUNCTION = Pattern.compile("\"?([A-Z][A-Z0-9]{2,}(?::[A-Z0-9]+)*)(?: [^\"]*)?\"?");
    private static final Pattern NUMBER = Pattern.compile("([+-]?[0-9.][0-9.eE+-]*)\\s*(?:°?\\s*(C|CEL|F|FAR|K))?");
    private static final int IDENTITY_FIELDS = 4;

    private ScpiAnswer() {}

    /**
     * A number of an answer.
     *
     * @param unit {@link Unit#UNSAID} where none stands beside it
     */
    record Reading(Written number, Unit unit) {}

    /** An entry of the error queue. */
    record QueueEntry(int code, String text) {}

    static Optional<QueueEntry> error(String line) {
        Matcher m = ERROR.matcher(line);
        return m.matches() ? Optional.of(new QueueEntry(Integer.parseInt(m.group(1)), m.group(2))) : Optional.empty();
    }

    static Optional<Unit> unit(String line) {
        Matcher m = UNIT.matcher(line);
        return m.matches() ? Optional.of(unitOf(m.group(1))) : Optional.empty();
    }

    /** The measuring function, for example {@code TEMP} or {@code VOLT:DC}. */
    static Optional<String> function(String line) {
        Matcher m = FUNCTION.matcher(line);
        return m.matches() && unit(line).isEmpty() ? Optional.of(m.group(1)) : Optional.empty();
    }

    /** The model of an instrument that says who it is: maker, model, serial number, firmware. */
    static Optional<String> model(String line) {
        String[] fields = line.split(",", -1);
        boolean fits = fields.length == IDENTITY_FIELDS
                && fields[0].matches("[ -~]*[A-Za-z][ -~]*")
                && fields[1].matches("[ -~]+")
                && error(line).isEmpty();
        return fits ? Optional.of(fields[1].strip()) : Optional.empty();
    }

    /** Numbers with commas between them; empty if anything else is among them. */
    static List<Reading> readings(String line) {
        List<Reading> readings = new ArrayList<>();
        for (String text : line.split(",", -1)) {
            Matcher m = NUMBER.matcher(text.strip());
            Optional<Written> number = m.matches() ? Written.of(m.group(1)) : Optional.empty();
            if (number.isEmpty()) return List.of();
            readings.add(new Reading(number.get(), m.group(2) == null ? Unit.UNSAID : unitOf(m.group(2))));
        }
        return readings;
    }

    private static Unit unitOf(String word) {
        return switch (word.toUpperCase(Locale.ROOT).charAt(0)) {
            case 'C' -> Unit.CELSIUS;
            case 'F' -> Unit.FAHRENHEIT;
            default -> Unit.KELVIN;
        };
    }
}
