package fifthform.curves.contrast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fisher's test and Newcombe's interval against printed examples. */
class CountsTest {
    /**
     * Fisher's tea (Agresti 1990, 61: 0.4857), convictions of twins (Fisher 1962 and 1970: 0.0005367), all cups right
     * (2/70), two-sided, as the documentation of R prints them; the last by scipy 1.17.
     */
    @ParameterizedTest
    @CsvSource({"3, 4, 1, 4, 0.4857", "2, 17, 10, 13, 0.0005367", "4, 4, 0, 4, 0.02857", "1, 24, 7, 16, 0.0037375"})
    void fishersExamples(int yes, int of, int otherYes, int ofOther, double printed) {
        Counts counts = new Counts(yes, of, otherYes, ofOther);
        assertEquals(printed, counts.chance(), 0.002 * printed);
        assertEquals(printed, new Counts(otherYes, ofOther, yes, of).chance(), 0.002 * printed);
    }

    /** Newcombe 1998, table II, method 10 (from memory; reckoned again from its formula). */
    @ParameterizedTest
    @CsvSource({
        "56, 70, 48, 80, 0.0524, 0.3339",
        "9, 10, 3, 10, 0.1705, 0.8090",
        "6, 7, 2, 7, 0.0582, 0.8062",
        "5, 56, 0, 29, -0.0381, 0.1926",
        "0, 10, 0, 20, -0.1611, 0.2775",
        "0, 10, 0, 10, -0.2775, 0.2775",
        "10, 10, 0, 20, 0.6791, 1.0000",
        "10, 10, 0, 10, 0.6075, 1.0000"
    })
    void newcombesTable(int yes, int of, int otherYes, int ofOther, double lower, double upper) {
        Counts counts = new Counts(yes, of, otherYes, ofOther);
        Span interval = counts.interval(0.05);
        assertEquals(lower, interval.lower(), 1e-4);
        assertEquals(upper, interval.upper(), 1e-4);
        assertEquals((double) yes / of - (double) otherYes / ofOther, counts.difference());
    }

    @Test
    void whatTablesCanShowAtBest() {
        assertEquals(2 / 252.0, new Counts(3, 5, 2, 5).leastChance(), 1e-12);
        assertEquals(1, new Counts(0, 8, 0, 8).leastChance(), 1e-12);
        assertEquals(1, new Counts(1, 8, 0, 8).leastChance(), 1e-12);
    }

    @Test
    void countsLieWithinTheirGroups() {
        assertThrows(IllegalArgumentException.class, () -> new Counts(3, 2, 0, 2));
        assertThrows(IllegalArgumentException.class, () -> new Counts(0, 0, 0, 2));
    }
}
