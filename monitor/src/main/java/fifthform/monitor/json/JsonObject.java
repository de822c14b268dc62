package fifthform.monitor.json;

import fifthform.monitor.texts.JsonText;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/** A JSON object that was read, asked for its values by kind. Keys that nobody asks for do no harm. */
public final class JsonObject {
    /** A number as it was written; what kind of number it is shows when somebody asks. */
    record Number(String text) {}

    private final Map<String, Object> values;

    JsonObject(Map<String, Object> values) {
        this.values = values;
    }

    /**
     * Reads an object and nothing after it.
     *
     * @throws UnreadableJson it is not one whole object
     */
    public static JsonObject parse(String text) throws UnreadableJson {
        return JsonReading.object(text);
    }

    /** The keys in the order of the text. */
    public Set<String> keys() {
        return Collections.unmodifiableSet(values.keySet());
    }

    public boolean has(String key) {
        return values.containsKey(key);
    }

    public String text(String key) throws UnreadableJson {
        return of(key, String.class, JsonText.A_TEXT);
    }

    public Optional<String> optionalText(String key) throws UnreadableJson {
        return has(key) ? Optional.of(text(key)) : Optional.empty();
    }

    /** A finite number. */
    public double number(String key) throws UnreadableJson {
        double value =
                Double.parseDouble(of(key, Number.class, JsonText.A_NUMBER).text());
        if (!Double.isFinite(value)) throw new UnreadableJson(JsonText.IS_TOO_LARGE.say(key));
        return value;
    }

    /** True or false. */
    public boolean flag(String key) throws UnreadableJson {
        return of(key, Boolean.class, JsonText.TRUE_OR_FALSE);
    }

    public OptionalDouble optionalNumber(String key) throws UnreadableJson {
        return has(key) ? OptionalDouble.of(number(key)) : OptionalDouble.empty();
    }

    public long whole(String key) throws UnreadableJson {
        try {
            return Long.parseLong(of(key, Number.class, JsonText.A_WHOLE_NUMBER).text());
        } catch (NumberFormatException e) {
            throw new UnreadableJson(JsonText.IS_NOT_A_WHOLE_NUMBER.say(key));
        }
    }

    /** A number with all its digits. */
    public BigDecimal exact(String key) throws UnreadableJson {
        return new BigDecimal(of(key, Number.class, JsonText.A_NUMBER).text());
    }

    public JsonObject object(String key) throws UnreadableJson {
        return of(key, JsonObject.class, JsonText.AN_OBJECT);
    }

    /** The one of {@code choices} whose word stands there. */
    public <T> T choice(String key, T[] choices, Function<? super T, String> word) throws UnreadableJson {
        String said = text(key);
        for (T choice : choices) if (word.apply(choice).equals(said)) return choice;
        throw new UnreadableJson(JsonText.IS_WHICH_IS_NOT_KNOWN.say(key, said));
    }

    public List<JsonObject> objects(String key) throws UnreadableJson {
        List<?> list = of(key, List.class, JsonText.A_LIST);
        if (!list.stream().allMatch(JsonObject.class::isInstance)) {
            throw new UnreadableJson(JsonText.IS_NOT_A_LIST_OF_OBJECTS.say(key));
        }
        return list.stream().map(JsonObject.class::cast).toList();
    }

    /** A list of texts; empty where the key is missing. */
    public List<String> texts(String key) throws UnreadableJson {
        if (!has(key)) return List.of();
        List<?> list = of(key, List.class, JsonText.A_LIST);
        if (!list.stream().allMatch(String.class::isInstance)) {
            throw new UnreadableJson(JsonText.IS_NOT_A_LIST_OF_TEXTS.say(key));
        }
        return list.stream().map(String.class::cast).toList();
    }

    private <T> T of(String key, Class<T> kind, JsonText what) throws UnreadableJson {
        if (!has(key)) throw new UnreadableJson(JsonText.IS_MISSING.say(key));
        Object value = values.get(key);
        if (!kind.isInstance(value)) throw new UnreadableJson(JsonText.IS_NOT.say(key, what.say()));
        return kind.cast(value);
    }
}
