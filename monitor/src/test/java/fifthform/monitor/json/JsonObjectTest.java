package fifthform.monitor.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JsonObjectTest {
    @Test
    void readsWhatWasWritten() throws UnreadableJson {
        String odd = "tab\t \"quoted\" \\ line\n Café 🍫 \u0001";
        String text = new JsonLine()
                .text("odd", odd)
                .number("c", 31.25)
                .number("none", OptionalDouble.empty())
                .whole("s", Long.MAX_VALUE)
                .raw("nothing", "null")
                .objects("list", List.of(new JsonLine().whole("a", 1), new JsonLine().whole("a", 2)))
                .object("inner", new JsonLine().text("k", "v"))
                .end();
        assertFalse(text.contains("\n"), text);
        JsonObject read = JsonObject.parse(text);
        assertEquals(odd, read.text("odd"));
        assertEquals(31.25, read.number("c"));
        assertEquals(OptionalDouble.empty(), read.optionalNumber("none"));
        assertEquals(Optional.empty(), read.optionalText("nothing"));
        assertEquals(Long.MAX_VALUE, read.whole("s"));
        assertEquals(new BigDecimal("31.25"), read.exact("c"));
        assertEquals(2, read.objects("list").get(1).whole("a"));
        assertEquals("v", read.object("inner").text("k"));
        assertEquals(List.of("odd", "c", "s", "list", "inner"), List.copyOf(read.keys()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "[1]", "{\"a\":1", "{\"a\":1} x", "{\"a\":1}{}", "{a:1}", "{\"a\":NaN}", "\0\0\0", "null"})
    void refusesWhatIsNotOneObject(String text) {
        assertThrows(UnreadableJson.class, () -> JsonObject.parse(text));
    }

    /** These words come before makers: no library speaks in them. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "root:x:0:0|it is not a JSON object",
                "\uFFFD\uFFFD|it is not a JSON object",
                "{\"a\":1|it breaks off",
                "{\"broken|it breaks off",
                "{\"a\":1,b}|from character 8 on it is no JSON"
            })
    void saysPlainlyWhatIsWrong(String text, String words) {
        assertEquals(
                words,
                assertThrows(UnreadableJson.class, () -> JsonObject.parse(text)).getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"{}", "{\"c\":\"31\"}", "{\"c\":1e999}", "{\"c\":null}", "{\"c\":true}"})
    void refusesAValueOfAnotherKind(String text) throws UnreadableJson {
        JsonObject read = JsonObject.parse(text);
        assertThrows(UnreadableJson.class, () -> read.number("c"));
    }
}
