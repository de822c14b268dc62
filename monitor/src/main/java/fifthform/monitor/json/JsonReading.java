package fifthform.monitor.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Turns the library's tokens into objects. */
final class JsonReading {
    /** Stateless once built, and made for many threads. */
    private static final JsonFactory FACTORY = new JsonFactory();

    private final JsonParser parser;

    private JsonReading(JsonParser parser) {
        this.parser = parser;
    }

    static JsonObject object(String text) throws UnreadableJson {
        try (JsonParser parser = FACTORY.createParser(text)) {
            JsonReading reading = new JsonReading(parser);
            if (parser.nextToken() != JsonToken.START_OBJECT) throw new UnreadableJson("it is not a JSON object");
            JsonObject object = reading.object();
            if (parser.nextToken() != null) throw new UnreadableJson("something stands after the JSON object");
            return object;
        } catch (IOException e) {
            // The library's message quotes the whole text; its first line is enough to find the place.
            throw new UnreadableJson(
                    String.valueOf(e.getMessage()).lines().findFirst().orElse("no JSON"));
        }
    }

    private JsonObject object() throws IOException {
        Map<String, Object> values = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            parser.nextToken();
            // A value "null" is the same as none: nobody asks for it, and no null goes any further.
            if (parser.currentToken() != JsonToken.VALUE_NULL) values.put(key, value());
        }
        return new JsonObject(values);
    }

    private List<Object> list() throws IOException {
        List<Object> values = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            if (parser.currentToken() != JsonToken.VALUE_NULL) values.add(value());
        }
        return values;
    }

    private Object value() throws IOException {
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) return object();
        if (token == JsonToken.START_ARRAY) return list();
        if (token == JsonToken.VALUE_STRING) return parser.getText();
        if (token == JsonToken.VALUE_TRUE || token == JsonToken.VALUE_FALSE) return parser.getBooleanValue();
        return new JsonObject.Number(parser.getText());
    }
}
