package fifthform.probe.protocol;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.curves.thermocouple.ToleranceClass;
import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Lines of text with the EMF at the thermocouple's terminals and the temperature of its cold junction, as an amplifier and
 * a thermometer beside it give them: labelled, told apart by their units, or as one JSON object. Bare columns are read only
 * where the maker said what they are. The tip's temperature is made here, with the reference function of the type.
 */
public final class MillivoltLines implements ProbeProtocol {
    private static final String ID = "millivolts";

    private final ThermocoupleType type;
    private final EmfUnit unit;
    private final List<Column> columns;

    /** Type K, which most kitchens have, mV, and no bare columns. */
    public MillivoltLines() {
        this(ThermocoupleType.K, EmfUnit.MILLIVOLT, List.of());
    }

    private MillivoltLines(ThermocoupleType type, EmfUnit unit, List<Column> columns) {
        this.type = type;
        this.unit = unit;
        this.columns = List.copyOf(columns);
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String description() {
        return "EMF and cold junction a line, for example \"emf=1.243 mV cj=24.50 C\"; type=K (or J, T, N, E) is taken to be K"
                + " unless it is given, unit=mv or uv where the line has none, columns=emf-cj for bare columns";
    }

    /** As other hobby boards (common practice, no source). */
    @Override
    public List<LineSettings> lines() {
        return List.of(new LineSettings(9600), new LineSettings(115_200));
    }

    /**
     * @param settings {@code type}: K, J, T, N or E; {@code unit}: mv or uv, for numbers without a unit; {@code columns}:
     *     what bare columns are, joined by hyphens: {@code emf} and {@code cj} once each, {@code skip} for any other
     */
    @Override
    public Parsed<ProbeProtocol> with(Map<String, String> settings) {
        List<Problem> problems = new ArrayList<>();
        ThermocoupleType setType = type;
        EmfUnit setUnit = unit;
        List<Column> setColumns = columns;
        for (Map.Entry<String, String> setting : settings.entrySet()) {
            String value = setting.getValue().toLowerCase(Locale.ROOT);
            switch (setting.getKey()) {
                case "type" -> setType = choice(setting, typeOf(value), "type=K, J, T, N or E", setType, problems);
                case "unit" -> setUnit = choice(setting, EmfUnit.named(value), "unit=mv or unit=uv", setUnit, problems);
                case "columns" ->
                    setColumns =
                            choice(setting, Column.listed(value), "for example columns=emf-cj", setColumns, problems);
                default ->
                    problems.add(
                            problem("has no setting " + setting.getKey(), "Its settings are type, unit and columns."));
            }
        }
        return problems.isEmpty()
                ? Parsed.accepted(new MillivoltLines(setType, setUnit, setColumns))
                : Parsed.refused(problems);
    }

    private static <T> T choice(
            Map.Entry<String, String> setting, Optional<T> chosen, String known, T before, List<Problem> problems) {
        if (chosen.isEmpty()) problems.add(problem("cannot use " + setting, "Give " + known + "."));
        return chosen.orElse(before);
    }

    private static Problem problem(String what, String whatToDo) {
        return new Problem("--talk " + ID, "The protocol " + ID + " " + what + ". Nothing was done.", whatToDo);
    }

    private static Optional<ThermocoupleType> typeOf(String letter) {
        return Arrays.stream(ThermocoupleType.values())
                .filter(known -> known.name().equalsIgnoreCase(letter))
                .findFirst();
    }

    @Override
    public Sensor sensor() {
        return new Sensor(Optional.of(type), ToleranceClass.UNKNOWN, Converter.MILLIVOLTS);
    }

    @Override
    public Decoder newDecoder() {
        return new LineDecoder(new EmfGrammar(type, unit, columns)::read, LineDecoder.Ways.FULL_ONLY);
    }

    /** What a bare column is. */
    enum Column {
        EMF,
        CJ,
        SKIP;

        /** Empty unless EMF and junction stand there once each. */
        static Optional<List<Column>> listed(String text) {
            List<Column> columns = new ArrayList<>();
            for (String word : text.split("-", -1)) {
                Optional<Column> column = Arrays.stream(values())
                        .filter(known -> known.name().equalsIgnoreCase(word))
                        .findFirst();
                if (column.isEmpty()) return Optional.empty();
                columns.add(column.get());
            }
            boolean once = columns.stream().filter(EMF::equals).count() == 1
                    && columns.stream().filter(CJ::equals).count() == 1;
            return once ? Optional.of(columns) : Optional.empty();
        }
    }
}
