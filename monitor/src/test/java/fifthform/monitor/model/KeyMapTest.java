package fifthform.monitor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.settings.Stroke;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class KeyMapTest {
    @Test
    void anyActTakesAnyKeyThatIsFree() {
        for (Key key : Key.values()) {
            KeyMap.Given given = KeyMap.USUAL.with(key, stroke("9"));
            KeyMap keys = assertInstanceOf(KeyMap.Changed.class, given).keys();
            assertEquals(Optional.of(key), keys.typed(stroke("9")), key.id());
            assertFalse(keys.typed(key.usual()).filter(key::equals).isPresent(), key.id());
            assertEquals(new KeyMap.Read(keys, List.of()), KeyMap.read(keys.kept()), key.id());
        }
    }

    @Test
    void aKeyThatMeansSomethingElseIsRefusedInWords() {
        KeyMap.Taken taken = assertInstanceOf(KeyMap.Taken.class, KeyMap.USUAL.with(Key.BOWL_MOVED, stroke("m")));
        assertEquals(Key.MARK, taken.by());
        assertEquals(
                "M already means “mark”. Give that another key first, or choose another one here.",
                taken.words(stroke("m")));
        assertInstanceOf(KeyMap.Changed.class, KeyMap.USUAL.with(Key.MARK, stroke("m")));
    }

    @Test
    void twoActsMayChangePlaces() {
        KeyMap.Read read = KeyMap.read(Map.of("mark", "n", "note", "m"));
        assertEquals(List.of(), read.problems());
        assertEquals(Optional.of(Key.NOTE), read.keys().typed(stroke("m")));
        assertEquals(Optional.of(Key.MARK), read.keys().typed(stroke("N")));
    }

    @Test
    void whatCannotBeUsedIsSaidAndTheUsualKeyStands() {
        KeyMap.Read read = KeyMap.read(Map.of("mark", "b", "note", "two keys", "bowl-mooved", "x", "undo", "z"));
        assertEquals(3, read.problems().size(), read.problems().toString());
        assertTrue(read.problems().stream().anyMatch(p -> p.contains("Did you mean \"bowl-moved\"?")));
        assertTrue(read.problems().stream().anyMatch(p -> p.contains("“mark” keeps M")));
        assertTrue(read.problems().stream().anyMatch(p -> p.contains("“note” keeps N")));
        assertEquals(Map.of("undo", "z"), read.keys().kept());
    }

    @Test
    void whatLiesOnTheSameKeyCountsUnlessItWasGivenAnAct() {
        assertEquals(Optional.of(Key.FASTER), KeyMap.USUAL.typed(stroke("=")));
        assertEquals(Optional.of(Key.HELP), KeyMap.USUAL.typed(stroke("?")));
        KeyMap own = KeyMap.read(Map.of("mark", "=")).keys();
        assertEquals(Optional.of(Key.MARK), own.typed(stroke("=")));
        assertEquals(Optional.of(Key.FASTER), own.typed(stroke("+")));
    }

    @Test
    void wordsNameTheKeysAsTheyAre() {
        KeyMap own = KeyMap.read(Map.of("undo", "page-up", "mark", "$")).keys();
        assertEquals(
                "Page Up takes it back, $ marks, Space is seen",
                own.fill("<undo> takes it back, <mark> marks, <seen> is seen"));
        for (Help page : List.of(Help.KEYS, Help.WHY, Help.TRUST)) {
            String words = page.over(Moments.liftNow(), own).banner().orElseThrow();
            assertFalse(words.contains("{"), words);
        }
        assertTrue(Help.KEYS
                .over(Moments.liftNow(), own)
                .banner()
                .orElseThrow()
                .contains("Page Up: take the last key back"));
    }

    private static Stroke stroke(String text) {
        return Stroke.parse(text).orElseThrow();
    }
}
