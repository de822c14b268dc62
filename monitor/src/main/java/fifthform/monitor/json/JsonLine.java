package fifthform.monitor.json;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.util.List;
import java.util.OptionalDouble;

/** Builds one JSON object on one line, its keys in the order of the calls. */
public final class JsonLine {
    private static final JsonStringEncoder ENCODER = JsonStringEncoder.getInstance();

    private final StringBuilder text = new StringBuilder(96).append('{');

    /** Adds a text. */
    public JsonLine text(String key, String value) {
        begin(key).append('"');
        ENCODER.quoteAsString(value, text);
        text.append('"');
        return this;
    }

    /** Adds a number with at most six decimals. */
    public JsonLine number(String key, double value) {
        return raw(key, Decimal.of(value));
    }

    /** Adds a number with at most {@code places} decimals. */
    public JsonLine number(String key, double value, int places) {
        return raw(key, Decimal.of(value, places));
    }

    /** Adds a number with at most six decimals where there is one, else nothing. */
    public JsonLine number(String key, OptionalDouble value) {
        return value.isPresent() ? number(key, value.getAsDouble()) : this;
    }

    /** Adds a whole number. */
    public JsonLine whole(String key, long value) {
        return raw(key, Long.toString(value));
    }

    /** Adds an object. */
    public JsonLine object(String key, JsonLine value) {
        return raw(key, value.end());
    }

    /** Adds a list of objects. */
    public JsonLine objects(String key, List<JsonLine> values) {
        return raw(
                key, "[" + String.join(",", values.stream().map(JsonLine::end).toList()) + "]");
    }

    /** Adds a list of texts. */
    public JsonLine texts(String key, List<String> values) {
        begin(key).append('[');
        for (int i = 0; i < values.size(); i++) {
            text.append(i == 0 ? "\"" : ",\"");
            ENCODER.quoteAsString(values.get(i), text);
            text.append('"');
        }
        text.append(']');
        return this;
    }

    /** Adds JSON that is already written: a number, {@code null}, a list. */
    public JsonLine raw(String key, String json) {
        begin(key).append(json);
        return this;
    }

    /** The object as text; may be called again. */
    public String end() {
        return text + "}";
    }

    private StringBuilder begin(String key) {
        if (text.length() > 1) text.append(',');
        text.append('"');
        ENCODER.quoteAsString(key, text);
        return text.append("\":");
    }
}
