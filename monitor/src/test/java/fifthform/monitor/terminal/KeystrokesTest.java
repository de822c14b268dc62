package fifthform.monitor.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.monitor.model.Key;
import fifthform.monitor.model.KeyMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class KeystrokesTest {
    @Test
    void lettersAreKeysInEitherCase() {
        assertEquals(
                List.of(Key.SEEN, Key.STEP_DONE, Key.BOWL_MOVED, Key.BOWL_MOVED, Key.FASTER, Key.SLOWER),
                keys(" \rbB+-x", new Keystrokes()));
    }

    /** Down is escape, bracket, B (ECMA-48): it must not move the bowl. */
    @Test
    void arrowsAndOtherSequencesAreNoKeys() {
        assertEquals(List.of(Key.MARK), keys("\u001b[B\u001bOP\u001b[15~\u001b[1;5Cm", new Keystrokes()));
    }

    @Test
    void keysThatTypeNoCharacterMeanWhatTheyWereGiven() {
        KeyMap pedal = KeyMap.read(Map.of("bowl-moved", "page-down", "mark", "f5", "note", "f1"))
                .keys();
        List<Key> keys = new ArrayList<>();
        Keystrokes strokes = new Keystrokes();
        "\u001b[6~\u001b[15~\u001bOP\u001b[6;5~\u001b[Ab"
                .chars()
                .forEach(letter -> strokes.letter(letter).flatMap(pedal::typed).ifPresent(keys::add));
        assertEquals(List.of(Key.BOWL_MOVED, Key.MARK, Key.NOTE), keys);
    }

    @Test
    void aLoneEscapeDoesNotSwallowWhatComesLater() {
        Keystrokes strokes = new Keystrokes();
        assertEquals(List.of(), keys("\u001b", strokes));
        strokes.pause();
        assertEquals(List.of(Key.BOWL_MOVED), keys("b", strokes));
    }

    private static List<Key> keys(String typed, Keystrokes strokes) {
        List<Key> keys = new ArrayList<>();
        typed.chars()
                .forEach(letter ->
                        strokes.letter(letter).flatMap(KeyMap.USUAL::typed).ifPresent(keys::add));
        return keys;
    }
}
