package fifthform.monitor.store;

import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/** Why a cue was given, as JSON and back. Figures that a newer program adds are left out, not refused. */
final class ReasonCodec {
    /** Rises a second are some hundredths of a kelvin. */
    private static final int PLACES = 4;

    private ReasonCodec() {}

    static JsonLine write(Reason reason) {
        JsonLine line = new JsonLine().text("rule", reason.rule().word());
        reason.figures().forEach((figure, value) -> line.number(figure.word(), value, PLACES));
        return line;
    }

    static Reason read(JsonObject json) throws UnreadableJson {
        Map<Figure, Double> figures = new EnumMap<>(Figure.class);
        for (Figure figure : Figure.values()) {
            OptionalDouble value = json.optionalNumber(figure.word());
            if (value.isPresent()) figures.put(figure, value.getAsDouble());
        }
        return new Reason(json.choice("rule", Rule.values(), Rule::word), figures);
    }
}
