package fifthform.monitor.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.monitor.model.Key;
import java.util.ArrayList;
import java.util.List;
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
    void aLoneEscapeDoesNotSwallowWhatComesLater() {
        Keystrokes strokes = new Keystrokes();
        assertEquals(List.of(), keys("\u001b", strokes));
        strokes.pause();
        assertEquals(List.of(Key.BOWL_MOVED), keys("b", strokes));
    }

    private static List<Key> keys(String typed, Keystrokes strokes) {
        List<Key> keys = new ArrayList<>();
        typed.chars().forEach(letter -> strokes.letter(letter).ifPresent(keys::add));
        return keys;
    }
}
