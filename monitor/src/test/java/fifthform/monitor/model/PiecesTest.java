package fifthform.monitor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What must not be parted by the end of a line. */
class PiecesTest {
    @Test
    void aFigureKeepsItsUnit() {
        assertEquals(List.of("at", "31.2 °C,", "then", "1 °C/min"), Pieces.of("at 31.2 °C, then 1 °C/min"));
        assertEquals(List.of("take", "135 ml", "and", "2 l"), Pieces.of("take 135 ml and 2 l"));
        assertEquals(List.of("within", "1.2 m"), Pieces.of("within 1.2 m"));
        assertEquals(List.of("5", "steps", "of", "3", "kinds"), Pieces.of("5 steps of 3 kinds"));
    }

    @Test
    void aDurationStaysWhole() {
        assertEquals(List.of("2 min 10 s", "of", "800 g"), Pieces.of("2 min 10 s of 800 g"));
        assertEquals(List.of("1 h 42 min", "of", "the", "batch"), Pieces.of("1 h 42 min of the batch"));
        assertEquals(List.of("in", "3 min", "5", "steps"), Pieces.of("in 3 min 5 steps"));
    }

    /** A dot that begins a line looks like a mark of its own. */
    @Test
    void aDotStaysWithWhatIsBeforeIt() {
        assertEquals(List.of("rewarm ·", "12 min ·", "practice"), Pieces.of("rewarm · 12 min · practice"));
    }
}
