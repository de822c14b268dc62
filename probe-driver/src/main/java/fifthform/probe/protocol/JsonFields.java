package fifthform.probe.protocol;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The numbers of one JSON object, labelled by the keys on the way to them; {@code null} is how JSON writes not-a-number. A
 * key {@code unit} speaks for the numbers of its own object.
 */
final class JsonFields {
    private static final int DEEPEST = 8;
    private static final JsonFactory JSON = JsonFactory.builder()
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .build();

    private final String text;
    private final JsonParser parser;
    private final List<Field> fields = new ArrayList<>();

    private JsonFields(String text, JsonParser parser) {
        this.text = text;
        this.parser = parser;
    }

    /** Empty unless {@code text} is one whole object. */
    static Optional<List<Field>> read(String text) {
        try (JsonParser parser = JSON.createParser(text)) {
            JsonFields reader = new JsonFields(text, parser);
            if (parser.nextToken() != JsonToken.START_OBJECT) return Optional.empty();
            boolean whole = reader.object("", 0) && parser.nextToken() == null;
            return whole ? Optional.of(reader.fields) : Optional.empty();
        } catch (IOException notJson) {
            return Optional.empty();
        }
    }

    private boolean object(String path, int depth) throws IOException {
        if (depth > DEEPEST) return false;
        int first = fields.size();
        Unit unit = Unit.UNSAID;
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            JsonToken value = parser.nextToken();
            if (value == JsonToken.VALUE_STRING && key.matches("(?i)units?")) {
                unit = Unit.ofTemperature(parser.getText().replace("°", "").strip())
                        .orElse(Unit.FOREIGN);
            } else if (!value(path + " " + key, depth, value)) {
                return false;
            }
        }
        for (int i = first; i < fields.size(); i++) {
            Field field = fields.get(i);
            if (field.unit() == Unit.UNSAID) fields.set(i, new Field(field.label(), field.number(), unit, field.run()));
        }
        return true;
    }

    private boolean array(String path, int depth) throws IOException {
        if (depth > DEEPEST) return false;
        for (int i = 0; parser.nextToken() != JsonToken.END_ARRAY; i++) {
            if (!value(path + " " + i, depth, parser.currentToken())) return false;
        }
        return true;
    }

    private boolean value(String path, int depth, JsonToken token) throws IOException {
        return switch (token) {
            case START_OBJECT -> object(path, depth + 1);
            case START_ARRAY -> array(path, depth + 1);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(path, parser.getText(), run());
            case VALUE_NULL -> absent(path);
            case VALUE_STRING -> words(path, parser.getText().strip());
            default -> true;
        };
    }

    private int run() {
        long start = parser.currentTokenLocation().getCharOffset();
        return start < 0 || start > text.length() ? -1 : Field.runsBefore(text, (int) start);
    }

    private boolean number(String path, String number, int run) {
        if (number.equals("NaN")) return absent(path);
        Optional<Written> written = Written.of(number);
        written.ifPresent(w -> fields.add(new Field(Label.of(path), written, Unit.UNSAID, run)));
        return written.isPresent();
    }

    private boolean absent(String path) {
        fields.add(new Field(Label.of(path), Optional.empty(), Unit.UNSAID, -1));
        return true;
    }

    /** Some write numbers in quotes; other text is a name or a remark, unless it reports a fault. */
    private boolean words(String path, String words) {
        if (Written.of(words).isPresent()) return number(path, words, -1);
        boolean remark = Label.of(path).meaning() != Label.Meaning.FAULT_CODE;
        return remark || words.isEmpty() || words.matches("(?i)ok|none|no|false");
    }
}
