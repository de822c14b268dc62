package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.LongStream;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Intervals against published examples. */
class IntervalTest {
    /**
     * Newcombe, Statistics in Medicine 17 (1998) 857, table I, score method without correction for continuity; the
     * values are from memory.
     */
    @ParameterizedTest
    @CsvSource({"81, 263, 0.2553, 0.3662", "15, 148, 0.0624, 0.1605", "0, 20, 0.0000, 0.1611", "1, 29, 0.0061, 0.1718"})
    void proportionsAsPublished(long hits, long of, double low, double high) {
        Interval interval = Interval.ofProportion(hits, of);
        assertEquals(low, interval.low(), 0.00005);
        assertEquals(high, interval.high(), 0.00005);
    }

    /** The interval of the misses is that of the hits turned round. */
    @Test
    void allHitsMirrorNone() {
        assertEquals(
                1 - Interval.ofProportion(0, 20).high(),
                Interval.ofProportion(20, 20).low(),
                1e-12);
        assertEquals(1, Interval.ofProportion(20, 20).high());
    }

    /** Over all outcomes of 40 trials the true share lies inside in about 95 of 100: computed, not drawn. */
    @ParameterizedTest
    @CsvSource({"0.1", "0.3", "0.5", "0.9"})
    void theTrueShareLiesInsideAboutAsOftenAsSaid(double share) {
        BinomialDistribution trials = new BinomialDistribution(null, 40, share);
        double covered = LongStream.rangeClosed(0, 40)
                .filter(hits -> Interval.ofProportion(hits, 40).low() <= share
                        && share <= Interval.ofProportion(hits, 40).high())
                .mapToDouble(hits -> trials.probability((int) hits))
                .sum();
        assertTrue(covered > 0.92 && covered < 0.98, "covered " + covered);
    }

    /**
     * NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2, data ZARR13: 195 values, mean 9.261460, standard
     * deviation 0.022789, 95 % limits 9.258242 and 9.264679; the values are from memory.
     */
    @Test
    void meansAsPublished() {
        Interval interval = Interval.ofMean(195, 9.261460, 0.022789);
        assertEquals(9.258242, interval.low(), 2e-6);
        assertEquals(9.264679, interval.high(), 2e-6);
    }

    @Test
    void nothingIsSaidOfNothing() {
        assertThrows(IllegalArgumentException.class, () -> Interval.ofProportion(0, 0));
        assertThrows(IllegalArgumentException.class, () -> Interval.ofProportion(5, 4));
        assertThrows(IllegalArgumentException.class, () -> Interval.ofMean(1, 3, 0));
    }
}
