package fifthform.curves.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.BarLook.Sureness;
import fifthform.curves.learning.BarPlace;
import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Gloss;
import fifthform.curves.learning.Release;
import fifthform.curves.learning.Snap;
import fifthform.curves.setting.CoolingPlace;
import fifthform.curves.setting.SetRecord;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Causes by clues; at length over simulated batches: the bench of the simulator. */
class FaultFinderTest {
    private static final FaultFinder FINDER = new FaultFinder(FaultBook.PACKED);

    private static BarLook look(double hours, Bloom bloom, Snap snap, Gloss gloss, Release release) {
        return new BarLook(
                hours,
                List.of(bloom),
                List.of(),
                Optional.of(snap),
                Optional.of(gloss),
                Optional.of(release),
                Optional.empty(),
                Sureness.SURE);
    }

    private static Clues inOrder(Clues clues) {
        Clues here = clues;
        for (Clue clue : Clue.values())
            if (clue.from() == Clue.From.CURVE) here = here.with(clue, clue == Clue.WORD_ENOUGH);
        return here;
    }

    private static Clues streaky() {
        return inOrder(Clues.none().seen(List.of(look(24, Bloom.STREAKS, Snap.SOFT, Gloss.DULL, Release.TAPPED))));
    }

    /** Each cause stands in this project's table of faults, by the words of its row. */
    @ParameterizedTest
    @CsvSource({
        "COOLED_TOO_LITTLE, too few stable crystals",
        "OVERSHOT, stable crystals melted by overshoot",
        "NOT_STIRRED, not stirred while cooling",
        "NOT_MELTED, old crystals not erased",
        "OVER_TEMPERED, crystals keep growing: over-tempered",
        "PROBE_WRONG, probe reads wrong",
        "SEED_POOR, seed added too warm",
        "NOT_MIXED, not mixed: tempered and untempered",
        "WATER, seized: water or steam",
        "SCORCHED, scorched",
        "CORE_HEAT, heat of setting trapped in the core",
        "SHOCK_COOLED, shock-cooled",
        "OUT_TOO_EARLY, demoulded too early",
        "MOULD_COLD, mould too cold",
        "MOULD_DIRTY, mould dirty",
        "CONDENSATION, sugar bloom: water condensed",
        "STORED_WARM, storage too warm or swinging",
        "OIL, liquid oil migrating",
        "AGED, V to VI ageing"
    })
    void everyCauseStandsInTheTableOfFaults(Fault fault, String words) throws Exception {
        try (InputStream in = getClass().getResourceAsStream("/reference/faults.csv")) {
            String table = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(table.contains(words), fault + ": " + words);
        }
        assertFalse(FaultBook.PACKED.of(fault).source().isBlank());
        assertFalse(FaultBook.PACKED.of(fault).next().isBlank());
    }

    /** What only the maker can know has a question, and what a cause rests on is known to somebody. */
    @ParameterizedTest
    @EnumSource(Clue.class)
    void whatIsAskedHasAQuestion(Clue clue) {
        assertEquals(
                clue.from() == Clue.From.MAKER,
                !FaultBook.PACKED.of(clue).question().isEmpty());
    }

    @Test
    void streaksAfterAnOvershootAreTheOvershoots() {
        Diagnosis found = FINDER.find(streaky().with(Clue.HEAT, true).with(Clue.WORD_ENOUGH, false));
        assertEquals(Fault.OVERSHOT, found.claimed().orElseThrow().fault());
        assertTrue(found.suspects().get(0).supports().stream().anyMatch(e -> e.clue() == Clue.HEAT && e.there()));
    }

    @Test
    void streaksWithACurveInOrderAreAskedAboutUntilTheProbeIsFound() {
        Clues clues = streaky();
        Diagnosis found = FINDER.find(clues);
        assertTrue(found.claimed().isEmpty() || found.question().isPresent());
        for (int i = 0; i < 6 && found.question().isPresent(); i++) {
            Clue asked = found.question().get();
            clues = clues.with(asked, asked == Clue.SAID_ICE_OFF);
            found = FINDER.find(clues);
        }
        assertEquals(Optional.of(true), Optional.ofNullable(clues.known().get(Clue.SAID_ICE_OFF)));
        assertEquals(Fault.PROBE_WRONG, found.claimed().orElseThrow().fault());
    }

    @Test
    void waterHasNoThermalSignAndIsAskedFor() {
        Clues dullAndSoft =
                inOrder(Clues.none().seen(List.of(look(24, Bloom.NONE, Snap.SOFT, Gloss.DULL, Release.SOME_STUCK))));
        Diagnosis before = FINDER.find(dullAndSoft);
        assertTrue(before.claimed().filter(s -> s.fault() == Fault.WATER).isEmpty());
        Diagnosis after = FINDER.find(dullAndSoft.with(Clue.SAID_WATER, true));
        assertEquals(Fault.WATER, after.claimed().orElseThrow().fault());
    }

    @Test
    void goodBarsAreLeftAloneWhateverTheCurveDid() {
        Clues good = inOrder(Clues.none().seen(List.of(look(24, Bloom.NONE, Snap.CLEAN, Gloss.BRIGHT, Release.TAPPED))))
                .with(Clue.HEAT, true)
                .with(Clue.SEED_GONE, true);
        Diagnosis found = FINDER.find(good);
        assertEquals(Diagnosis.Word.BARS_ARE_GOOD, found.word());
        assertTrue(found.claimed().isEmpty() && found.question().isEmpty());
    }

    @Test
    void nobodyLookedMeansNothingToExplain() {
        assertEquals(
                Diagnosis.Word.NOT_LOOKED, FINDER.find(inOrder(Clues.none())).word());
    }

    @Test
    void whatIsFuzzyIsNoFaultToBeExplained() {
        Clues fuzzy = Clues.none().seen(List.of(look(200, Bloom.FUZZY, Snap.CLEAN, Gloss.BRIGHT, Release.TAPPED)));
        assertEquals(Diagnosis.Word.NOT_FOR_EATING, FINDER.find(fuzzy).word());
    }

    @Test
    void sugarAfterTheFridgeIsCondensationByItsLogAlone() {
        SetRecord wet = new SetRecord(
                CoolingPlace.FRIDGE,
                OptionalDouble.of(9),
                OptionalDouble.of(8.5),
                Duration.ZERO,
                1,
                Duration.ofMinutes(18),
                OptionalDouble.of(9),
                OptionalDouble.of(14));
        Clues clues = inOrder(
                        Clues.none().seen(List.of(look(48, Bloom.SUGAR, Snap.CLEAN, Gloss.SATIN, Release.BY_ITSELF))))
                .set(Optional.of(wet));
        Diagnosis found = FINDER.find(clues);
        assertEquals(Fault.CONDENSATION, found.claimed().orElseThrow().fault());
        assertTrue(found.suspects().get(0).supports().stream().anyMatch(e -> e.clue() == Clue.SET_WET));
    }

    @Test
    void aLateFirstLookDoesNotSayWhenTheMarksCame() {
        BarLook late = new BarLook(
                400,
                List.of(Bloom.VEIL),
                List.of(BarPlace.ALL_OVER),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Sureness.SURE);
        assertFalse(Clues.none().seen(List.of(late)).known().containsKey(Clue.PATTERN_LATE));
        BarLook fine = look(24, Bloom.NONE, Snap.CLEAN, Gloss.BRIGHT, Release.TAPPED);
        assertEquals(true, Clues.none().seen(List.of(fine, late)).known().get(Clue.PATTERN_LATE));
    }

    @Test
    void sharesAddUpToOneAndAQuestionThatWasPassedIsNotAskedAgain() {
        Diagnosis found = FINDER.find(streaky());
        double sum = found.fine()
                + found.suspects().stream().mapToDouble(Suspect::share).sum();
        assertEquals(1, sum, 1e-9);
        Clue asked = found.question().orElseThrow();
        assertTrue(FINDER.find(streaky(), List.of(asked))
                .question()
                .filter(asked::equals)
                .isEmpty());
    }
}
