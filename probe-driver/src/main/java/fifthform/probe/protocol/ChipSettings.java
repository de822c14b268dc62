package fifthform.probe.protocol;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.curves.thermocouple.ToleranceClass;
import fifthform.probe.ProbeProtocol;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What the maker can say about an adapter that hands on frames: {@code form=hex} or {@code form=binary}, for binary
 * {@code sync=} with the bytes before each frame in hexadecimal, and {@code type=} with the thermocouple's letter.
 *
 * @param form how the frames are written
 * @param sync bytes before each binary frame, hexadecimal, may be empty
 * @param type the thermocouple's letter; empty where nobody said
 */
record ChipSettings(Form form, String sync, Optional<ThermocoupleType> type) {
    /** How frames are written. */
    enum Form {
        HEX,
        BINARY
    }

    /** What a chip leaves to settings. */
    enum Freedom {
        /** The type can be said, and enough bits tell where a binary frame begins. */
        ANY_TYPE,
        /** The type can be said; a binary stream needs a mark, for too few bits tell where a frame begins. */
        ANY_TYPE_MARKED,
        /** The type is fixed; a binary stream needs a mark. */
        FIXED_TYPE_MARKED
    }

    static final ChipSettings HEX = new ChipSettings(Form.HEX, "", Optional.empty());
    static final ChipSettings HEX_K = new ChipSettings(Form.HEX, "", Optional.of(ThermocoupleType.K));

    ProbeProtocol.Decoder newDecoder(Chip chip) {
        return form == Form.HEX
                ? new HexFrameDecoder(chip)
                : new BinaryFrameDecoder(chip, HexFormat.of().parseHex(sync));
    }

    Sensor sensor(Converter converter) {
        return new Sensor(type, ToleranceClass.UNKNOWN, converter);
    }

    /** These settings, changed by what the maker wrote, for the protocol {@code id}. */
    Parsed<ProbeProtocol> changed(
            String id, Map<String, String> said, Freedom freedom, Function<ChipSettings, ProbeProtocol> protocol) {
        List<Problem> problems = new ArrayList<>();
        ChipSettings set = this;
        for (Map.Entry<String, String> setting : said.entrySet()) {
            Optional<ChipSettings> next = set.with(setting.getKey(), setting.getValue(), freedom);
            if (next.isEmpty()) problems.add(refusal(id, setting.getKey() + "=" + setting.getValue(), freedom));
            set = next.orElse(set);
        }
        if (set.form == Form.HEX && !set.sync.isEmpty())
            problems.add(problem(id, "sync is for form=binary only.", "Add form=binary, or leave sync out."));
        if (set.form == Form.BINARY && set.sync.length() < 4 && freedom != Freedom.ANY_TYPE)
            problems.add(
                    problem(
                            id,
                            "Too few bits of this chip's numbers tell where one begins in a binary stream.",
                            "Let the adapter send two fixed bytes before each number and name them, for example sync=AA55, or use form=hex."));
        return problems.isEmpty() ? Parsed.accepted(protocol.apply(set)) : Parsed.refused(problems);
    }

    private Optional<ChipSettings> with(String name, String value, Freedom freedom) {
        try {
            return switch (name) {
                case "form" -> Optional.of(new ChipSettings(Form.valueOf(value.toUpperCase(Locale.ROOT)), sync, type));
                case "sync" ->
                    value.matches("(?:[0-9A-Fa-f]{2}){1,4}")
                            ? Optional.of(new ChipSettings(form, value, type))
                            : Optional.empty();
                case "type" ->
                    freedom == Freedom.FIXED_TYPE_MARKED
                            ? Optional.empty()
                            : Optional.of(new ChipSettings(
                                    form, sync, Optional.of(ThermocoupleType.valueOf(value.toUpperCase(Locale.ROOT)))));
                default -> Optional.empty();
            };
        } catch (IllegalArgumentException notOneOfThem) {
            return Optional.empty();
        }
    }

    private static Problem refusal(String id, String setting, Freedom freedom) {
        String type = freedom == Freedom.FIXED_TYPE_MARKED ? "" : ", type=K (J, T, N, E)";
        return problem(
                id,
                setting + " is no setting of this protocol.",
                "Known are form=hex, form=binary, for binary sync= with one to four bytes such as sync=AA55" + type
                        + ".");
    }

    private static Problem problem(String id, String what, String whatToDo) {
        return new Problem("--talk " + id, what + " Nothing was done.", whatToDo);
    }
}
