package fifthform.monitor.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.io.JsonEOFException;
import fifthform.monitor.texts.JsonText;
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
            if (begins(parser) != JsonToken.START_OBJECT)
                throw new UnreadableJson(JsonText.IT_IS_NOT_A_JSON_OBJECT.say());
            JsonObject object = reading.object();
            if (parser.nextToken() != null) throw new UnreadableJson(JsonText.SOMETHING_STANDS_AFTER_THE.say());
            return object;
        } catch (JsonProcessingException e) {
            // What the library says is for programmers; a maker wants to know how far the line is good.
            long column = e.getLocation() == null ? 0 : e.getLocation().getColumnNr();
            throw new UnreadableJson(
                    e instanceof JsonEOFException || column <= 0
                            ? JsonText.IT_BREAKS_OFF.say()
                            : JsonText.FROM_CHARACTER_ON_IT_IS_NO.say(column));
        } catch (IOException e) {
            throw new UnreadableJson(
                    String.valueOf(e.getMessage()).lines().findFirst().orElseGet(JsonText.NO_JSON::say));
        }
    }

    private static JsonToken begins(JsonParser parser) throws IOException {
        try {
            return parser.nextToken();
        } catch (JsonProcessingException e) {
            return JsonToken.NOT_AVAILABLE;
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
