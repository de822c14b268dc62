package fifthform.curves.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NearestTest {
    private static final List<String> KNOWN = List.of("dark", "milk", "white");

    /** Worked example printed in many texts on edit distance: kitten → sitting takes three changes. */
    @Test
    void countsInsertionsDeletionsAndReplacements() {
        assertEquals(3, Nearest.distance("kitten", "sitting"));
        assertEquals(4, Nearest.distance("", "milk"));
        assertEquals(0, Nearest.distance("milk", "milk"));
    }

    @Test
    void findsTheWordThatWasMeant() {
        assertEquals(Optional.of("dark"), Nearest.to("drak", KNOWN));
        assertEquals(Optional.of("milk"), Nearest.to("MILCK", KNOWN));
    }

    @Test
    void saysNothingWhereNothingIsNear() {
        assertEquals(Optional.empty(), Nearest.to("caramelised", KNOWN));
        assertEquals(Optional.empty(), Nearest.to("dark", List.of()));
    }
}
