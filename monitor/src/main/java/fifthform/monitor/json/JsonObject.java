package fifthform.monitor.json;

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
        return of(key, String.class, "a text");
    }

    public Optional<String> optionalText(String key) throws UnreadableJson {
        return has(key) ? Optional.of(text(key)) : Optional.empty();
    }

    /** A finite number. */
    public double number(String key) throws UnreadableJson {
        double value = Double.parseDouble(of(key, Number.class, "a number").text());
        if (!Double.isFinite(value)) throw new UnreadableJson("\"" + key + "\" is too large");
        return value;
    }

    /** True or false. */
    public boolean flag(String key) throws UnreadableJson {
        return of(key, Boolean.class, "true or false");
    }

    public OptionalDouble optionalNumber(String key) throws UnreadableJson {
        return has(key) ? OptionalDouble.of(number(key)) : OptionalDouble.empty();
    }

    public long whole(String key) throws UnreadableJson {
        try {
            return Long.parseLong(of(key, Number.class, "a whole number").text());
        } catch (NumberFormatException e) {
            throw new UnreadableJson("\"" + key + "\" is not a whole number");
        }
    }

    /** A number with all its digits. */
    public BigDecimal exact(String key) throws UnreadableJson {
        return new BigDecimal(of(key, Number.class, "a number").text());
    }

    public JsonObject object(String key) throws UnreadableJson {
        return of(key, JsonObject.class, "an object");
    }

    /** The one of {@code choices} whose word stands there. */
    public <T> T choice(String key, T[] choices, Function<? super T, String> word) throws UnreadableJson {
        String said = text(key);
        for (T choice : choices) if (word.apply(choice).equals(said)) return choice;
        throw new UnreadableJson("\"" + key + "\" is \"" + said + "\", which is not known");
    }

    public List<JsonObject> objects(String key) throws UnreadableJson {
        List<?> list = of(key, List.class, "a list");
        if (!list.stream().allMatch(JsonObject.class::isInstance)) {
            throw new UnreadableJson("\"" + key + "\" is not a list of objects");
        }
        return list.stream().map(JsonObject.class::cast).toList();
    }

    /** A list of texts; empty where the key is missing. */
    public List<String> texts(String key) throws UnreadableJson {
        if (!has(key)) return List.of();
        List<?> list = of(key, List.class, "a list");
        if (!list.stream().allMatch(String.class::isInstance)) {
            throw new UnreadableJson("\"" + key + "\" is not a list of texts");
        }
        return list.stream().map(String.class::cast).toList();
    }

    private <T> T of(String key, Class<T> kind, String words) throws UnreadableJson {
        if (!has(key)) throw new UnreadableJson("\"" + key + "\" is missing");
        Object value = values.get(key);
        if (!kind.isInstance(value)) throw new UnreadableJson("\"" + key + "\" is not " + words);
        return kind.cast(value);
    }
}
