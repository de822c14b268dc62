package fifthform.probe.protocol;

import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.probe.Signal;
import fifthform.probe.protocol.MillivoltLines.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * {@code line = field { separator field }}, {@code field = [label (":" | "=")] value [unit]}, or one JSON object; all of the
 * line must fit. EMFs and junctions to temperatures.
 */
final class EmfGrammar {
    private static final Pattern FIELD = Pattern.compile("(?:(?<label>[A-Za-z_][\\w ]*?)\\s*[:=]\\s*)?"
            + "(?<value>[+-]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)(?:[eE][+-]?\\d{1,3}(?!\\w))?|[nN][aA][nN]\\b|(?i:open)\\b)"
            + "(?:\\s*(?<emf>(?:[mu]|\\u00B5|\\u00C2\\u00B5|\\u00CE\\u00BC)V)\\b"
            + "|\\s*\u00B0?\\s?(?<celsius>(?:deg)?[CFK])\\b|\\s*\u00B0)?"
            + "(?:\\s*[,;/|]\\s*|\\s+|$)");
    private static final Predicate<String> HAS_DIGIT = Pattern.compile("\\d").asPredicate();

    private final ThermocoupleType type;
    private final EmfUnit unsaid;
    private final List<Column> columns;

    /**
     * @param unsaid unit of an EMF without one
     * @param columns what bare columns are; empty where they mean nothing
     */
    EmfGrammar(ThermocoupleType type, EmfUnit unsaid, List<Column> columns) {
        this.type = type;
        this.unsaid = unsaid;
        this.columns = columns;
    }

    /** A line of so many bytes by itself. */
    Line read(String text, int bytes) {
        Optional<List<EmfField>> fields = text.startsWith("{")
                ? JsonFields.read(text)
                        .map(all -> all.stream().map(EmfField::of).toList())
                : fields(text);
        List<Signal> signals = fields.flatMap(this::signals).orElse(List.of());
        boolean wordsOnly = signals.isEmpty() && !HAS_DIGIT.test(text);
        return Line.saying(
                text, bytes, wordsOnly ? FaultWords.read(text).map(List::of).orElse(List.of()) : signals);
    }

    private static Optional<List<EmfField>> fields(String text) {
        List<EmfField> fields = new ArrayList<>();
        Matcher m = FIELD.matcher(text);
        int end = 0;
        while (end < text.length()) {
            if (!m.find() || m.start() != end) return Optional.empty();
            Optional<EmfField> field = field(m);
            if (field.isEmpty()) return Optional.empty();
            fields.add(field.get());
            end = m.end();
        }
        return Optional.of(fields);
    }

    private static Optional<EmfField> field(Matcher m) {
        Label label = m.group("label") == null ? Label.NONE : Label.of(m.group("label"));
        Optional<Written> number = Written.of(m.group("value"));
        boolean digits = HAS_DIGIT.test(m.group("value"));
        if (digits && number.isEmpty()) return Optional.empty();
        Unit suffix = m.group("celsius") == null
                ? Unit.UNSAID
                : Unit.ofTemperature(m.group("celsius")).orElseThrow();
        Optional<EmfUnit> behind = Optional.ofNullable(m.group("emf")).flatMap(EmfUnit::named);
        Optional<EmfUnit> within = EmfUnit.among(label.words());
        boolean contradicted = behind.isPresent() && within.isPresent() && !behind.equals(within);
        Optional<Unit> temperature = new Field(label, number, suffix).agreedUnit();
        if (contradicted || temperature.isEmpty()) return Optional.empty();
        // "K" within "type K emf" is an alloy; a number with a unit of EMF has no other.
        Unit unit = behind.isPresent() ? Unit.UNSAID : temperature.get();
        return Optional.of(new EmfField(label, number, behind.or(() -> within), unit));
    }

    /** Empty where something is missing or said twice. */
    private Optional<List<Signal>> signals(List<EmfField> fields) {
        if (fields.stream().anyMatch(EmfGrammar::reportsFault)) return Optional.empty();
        if (fields.stream().anyMatch(field -> field.meaning() == EmfField.Meaning.BARE)) return bare(fields);
        Map<Integer, EmfField> junctions = new TreeMap<>();
        Map<Integer, EmfField> emfs = new TreeMap<>();
        for (EmfField field : fields) {
            int channel = field.label().channel();
            boolean again = switch (field.meaning()) {
                case EMF -> emfs.putIfAbsent(channel, field) != null;
                case JUNCTION -> junctions.putIfAbsent(channel, field) != null;
                case BARE, FAULT_CODE, OTHER -> false;
            };
            if (again) return Optional.empty();
        }
        List<Signal> signals = new ArrayList<>();
        for (Map.Entry<Integer, EmfField> emf : emfs.entrySet()) {
            Optional<EmfField> junction = junctionOf(emf.getKey(), junctions);
            Optional<Signal> signal = signal(emf.getKey(), emf.getValue(), junction);
            if (signal.isEmpty()) return Optional.empty();
            signals.add(signal.get());
        }
        return signals.isEmpty() ? Optional.empty() : Optional.of(signals);
    }

    /** One board has one junction for all its channels, unless it tells them apart. */
    private static Optional<EmfField> junctionOf(int channel, Map<Integer, EmfField> junctions) {
        return Optional.ofNullable(junctions.get(channel))
                .or(() -> junctions.values().stream()
                        .filter(only -> junctions.size() == 1)
                        .findFirst());
    }

    private static boolean reportsFault(EmfField field) {
        return field.meaning() == EmfField.Meaning.FAULT_CODE
                && field.number().filter(n -> n.value() == 0).isEmpty();
    }

    private Optional<List<Signal>> bare(List<EmfField> fields) {
        boolean allBare = fields.stream().allMatch(field -> field.meaning() == EmfField.Meaning.BARE);
        if (!allBare || fields.size() != columns.size()) return Optional.empty();
        EmfField emf = fields.get(columns.indexOf(Column.EMF));
        return signal(0, emf, Optional.of(fields.get(columns.indexOf(Column.CJ))))
                .map(List::of);
    }

    private Optional<Signal> signal(int channel, EmfField emf, Optional<EmfField> junctionField) {
        if (emf.number().isEmpty()) return Optional.of(new Signal.OpenCircuit(channel));
        if (junctionField.flatMap(EmfField::number).isEmpty()) return Optional.empty();
        EmfUnit unit = emf.emfUnit().orElse(unsaid);
        Written junctionNumber = junctionField.get().number().get();
        Unit junctionUnit = junctionField.get().temperature();
        // Two bare zeros: a converter that is not there.
        if (emf.number().get().value() == 0 && junctionNumber.value() == 0) return Optional.empty();
        double millivolts = unit.millivolts(emf.number().get().value());
        double junction = junctionUnit.celsius(junctionNumber.value());
        OptionalDouble exact = type.tipCelsius(millivolts, junction);
        if (exact.isEmpty()) {
            return Optional.of(
                    new Signal.OutOfRange(channel, millivolts < 0 ? type.lowestCelsius() : type.highestCelsius()));
        }
        double tip = Temperatures.rounded(exact.getAsDouble());
        if (!Temperatures.isOfAKitchen(tip)) return Optional.of(new Signal.OutOfRange(channel, tip));
        double slope = type.slopeMillivoltsPerKelvin(tip);
        double ofEmf = unit.step(emf.number().get().step()) / slope;
        double ofJunction =
                junctionUnit.kelvin(junctionNumber.step()) * type.slopeMillivoltsPerKelvin(junction) / slope;
        // Two roundings: their variances add, and each is a twelfth of its step squared.
        double step = Temperatures.rounded(Math.sqrt(ofEmf * ofEmf + ofJunction * ofJunction));
        return Optional.of(
                Temperatures.tip(channel, tip, OptionalDouble.of(junction), OptionalDouble.of(millivolts), step));
    }
}
