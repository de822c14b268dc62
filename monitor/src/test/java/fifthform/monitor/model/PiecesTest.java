package fifthform.monitor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A figure keeps its unit on its line. */
class PiecesTest {
    @Test
    void aFigureKeepsItsUnit() {
        assertEquals(List.of("at", "31.2 °C,", "then", "1 °C/min"), Pieces.of("at 31.2 °C, then 1 °C/min"));
        assertEquals(List.of("2 min", "10 s", "of", "800 g"), Pieces.of("2 min 10 s of 800 g"));
        assertEquals(List.of("5", "steps", "of", "3", "kinds"), Pieces.of("5 steps of 3 kinds"));
    }
}
