package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.contrast.Comparison;
import fifthform.curves.contrast.Comparison.Says;
import fifthform.curves.contrast.LookedBatch;
import fifthform.curves.contrast.Suggestion;
import fifthform.curves.contrast.Suggestion.Way;
import fifthform.curves.contrast.Trait;
import fifthform.simulator.bench.KnownCause.Cause;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Makers whose cause is known. {@code ContrastBench} has more of them, with another seed. */
class KnownCauseTest {
    private static final long SEED = 29;

    /** Of 400 makers 20 may be told something false; more than 32 would be chance once in 200. */
    @Test
    void whereNothingDiffersClaimsAreAsRareAsTheLevelSays() {
        long claims = IntStream.range(0, 400)
                .mapToObj(n -> KnownCause.maker(Cause.NOTHING, SEED, n).batches(30))
                .filter(batches -> KnownCause.said(batches, 30).says() == Says.DIFFERS)
                .count();
        assertTrue(claims <= 32, claims + " of 400");
    }

    @Test
    void noMakerIsToldAnythingBelowTheLeastCount() {
        for (Cause cause : Cause.values()) {
            for (int n = 0; n < 20; n++) {
                List<LookedBatch> batches = KnownCause.maker(cause, SEED, n).batches(9);
                assertEquals(Says.TOO_FEW, KnownCause.said(batches, 9).says());
            }
        }
    }

    /** Hotter makers are told to stay cooler, and their bars are the better for it. */
    @Test
    void whatIsSuggestedHelpsByWhatTheCrystalsDo() {
        int told = 0;
        double gained = 0;
        for (int n = 0; n < 12; n++) {
            KnownCause maker = KnownCause.maker(Cause.OVERSHOOT, SEED, n);
            Comparison said = KnownCause.said(maker.batches(30), 30);
            Optional<Suggestion> suggestion = said.suggestion();
            if (suggestion.filter(s -> s.trait() == Trait.HEAT).isEmpty()) continue;
            assertEquals(Way.AT_MOST, suggestion.get().way());
            told++;
            gained += maker.fineShare(suggestion, 15) - maker.fineShare(Optional.empty(), 15);
        }
        assertTrue(told >= 2, told + " were told");
        assertTrue(gained / told > 0.1, "gained " + gained / told);
    }
}
