package fifthform.curves.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.crystal.Advice;
import fifthform.curves.crystal.CrystalWatch;
import fifthform.curves.crystal.Misgiving;
import fifthform.curves.crystal.Programme;
import fifthform.curves.crystal.SeedWord;
import fifthform.curves.crystal.Temper;
import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.engine.Event.SeedJudged;
import fifthform.curves.engine.Event.SeedLost;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.MakerAction.SeedAdded;
import fifthform.curves.input.MakerAction.StirringSaid;
import fifthform.curves.input.MakerAction.StirringSaid.Stirring;
import fifthform.curves.input.MakerAction.Undone;
import fifthform.curves.input.Sample;
import fifthform.curves.phase.Evidence;
import fifthform.curves.recipe.Composition;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Setup;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Whole temperings through the engine, and the word at their end. Programmes and words: section 7 of this project's
 * reference for the crystal model (computed there, wall node off; with it the warm side has somewhat more seed).
 */
class CrystalStoriesTest {
    private static final Instant START = StoryMaker.START;
    private static final Setup SETUP = TestRecipes.setup();

    private State state = Engine.start(SETUP, START);
    private final List<Event> events = new ArrayList<>();
    private final SplittableRandom noise = new SplittableRandom(6);

    /** The reference stirs with 20 1/s all the time. */
    CrystalStoriesTest() {
        hears(new StirringSaid(START, Stirring.STIRRED));
    }

    @Test
    void theTextbookTemperIsEnough() {
        goes(Programme.temper(27.5, 6).then(36, 31.5));
        assertEquals(Optional.of("enough"), word());
        assertTrue(watch().four().isGone(), "form IV went on the way up");
        assertTrue(watch().melt().erased());
        assertTrue(state.estimate().isPresent());
    }

    @ParameterizedTest
    @CsvSource({"33, 10, enough", "34, 10, doubtful", "35, 10, too few"})
    void aLateLiftLeavesWhatTheReferenceSays(double celsius, double minutes, String word) {
        goes(Programme.temper(27.5, 6).then(32.5, celsius, 32.5 + minutes, celsius));
        assertEquals(Optional.of(word), word());
    }

    @Test
    void aShortLateLiftIsEnough() {
        goes(Programme.temper(27.5, 6).then(32.5, 33.5, 33.5, 34, 34.5, 31.5, 36, 31.5));
        assertEquals(Optional.of("enough"), word());
        assertEquals(Advice.What.STOP, advice().orElseThrow().what());
    }

    @Test
    void cooledTooLittleIsTooFewAndEnoughAfterTheLongerHold() {
        goes(Programme.temper(29.3, 6).then(38, 31.5));
        assertEquals(Optional.of("too few"), word());
        CrystalStoriesTest longer = new CrystalStoriesTest();
        longer.goes(Programme.temper(28.5, 16).then(46, 31.5));
        assertEquals(Optional.of("enough"), longer.word());
    }

    @Test
    void neverStirredIsTooFew() {
        hears(new StirringSaid(START, Stirring.STILL));
        goes(Programme.temper(27.5, 6).then(36, 31.5));
        assertEquals(Optional.of("too few"), word());
    }

    @Test
    void overcooledIsEnoughAndThick() {
        goes(Programme.temper(25, 6));
        assertEquals(Optional.of("enough thick"), word());
    }

    @Test
    void afterAFullMeltNothingIsSaidBeforeItCoolsAgain() {
        goes(Programme.temper(27.5, 6).then(36, 31.5, 46, 46, 54, 46));
        assertEquals(Phase.MELT, state.batch().phase());
        assertTrue(word().isEmpty());
        assertTrue(watch().melt().erased());
        goes(Programme.of(0, 46, 6, 33), 54 * 60.0);
        assertEquals(Optional.of("too few"), word(), "cooling again, with nothing made yet");
    }

    @Test
    void lostSeedIsToldWithItsTimeAndFigures() {
        goes(Programme.temper(27.5, 6).then(32.5, 35.5, 40, 35.5));
        SeedLost lost = only(SeedLost.class);
        double minutes = Duration.between(START, lost.at()).toMillis() / 60e3;
        assertTrue(minutes > 32.5 && minutes < 35.5, "lost at " + minutes);
        assertTrue(lost.before().middle() > 0.01 && lost.left().middle() < 0.005);
        assertEquals(35.5, lost.highestCelsius(), 0.8);
        assertEquals(Advice.What.COOL_AGAIN, advice().orElseThrow().what());
        assertEquals(40, advice().orElseThrow().seedGrams().orElseThrow(), 0.1, "5 % of 800 g");
    }

    @Test
    void whoHasSeedAtHandIsAdvisedToUseIt() {
        Setup seeding = SETUP.withSeedGrams(OptionalDouble.of(40));
        goes(Programme.temper(27.5, 6).then(32.5, 35.5, 40, 35.5));
        assertEquals(
                Advice.What.SEED,
                state.crystals().orElseThrow().advice(seeding).orElseThrow().what());
    }

    /** What 40 g of chopped seed in 800 g leave at 34 °C: 2 to 3 % of the fat (section 5 of the reference: 2.6 %). */
    @Test
    void addedSeedCounts() {
        goes(Programme.of(0, 45, 10, 45, 20, 34));
        assertEquals(SeedWord.TOO_FEW, watch().spoken().word().orElseThrow());
        hears(new SeedAdded(state.at(), 40));
        goes(Programme.of(0, 34, 5, 31.5, 15, 31.5), 20 * 60.0);
        assertEquals(Optional.of("enough"), word());
        assertTrue(watch().seed().middle() > 0.015 && watch().seed().middle() < 0.035);
    }

    @Test
    void wordsAreToldWhenTheyChangeAndOnlyThen() {
        goes(Programme.temper(27.5, 6).then(36, 31.5));
        List<SeedWord> words =
                all(SeedJudged.class).stream().map(SeedJudged::word).toList();
        assertEquals(List.of(SeedWord.TOO_FEW, SeedWord.DOUBTFUL, SeedWord.ENOUGH), words);
    }

    /** A batch joined at 36 °C without a word: what it held before is not known, so "too few" cannot be said. */
    @Test
    void aBatchThatNobodySawMeltIsNeverCalledTooFew() {
        goes(Programme.of(0, 36, 12, 29.5, 20, 29.5));
        assertEquals(Optional.of("doubtful"), word());
        assertEquals(Optional.of(Misgiving.START_UNKNOWN), watch().misgiving());
    }

    @Test
    void whoSaysThatItIsMeltedIsBelieved() {
        hears(new PhaseConfirmed(START, Phase.COOL));
        goes(Programme.of(0, 36, 12, 29.5, 20, 29.5));
        assertEquals(Optional.of("too few"), word());
    }

    @Test
    void whoTakesThatBackHasTheCrystalsBack() {
        goes(Programme.of(0, 25, 1, 30));
        hears(new PhaseConfirmed(state.at(), Phase.COOL));
        assertEquals(0, watch().seed().middle());
        hears(new Undone(state.at().plusSeconds(2), state.inputs()));
        assertTrue(watch().seed().middle() > 0.3);
        assertEquals(Phase.MELT, state.batch().phase());
    }

    @Test
    void theHoldIsByTheCrystals() {
        goes(Programme.of(0, 45, 10, 45, 22, 27.5, 34, 27.5));
        List<CueGiven> given = all(CueGiven.class);
        Instant stir = given.stream()
                .filter(c -> c.cue() == CueId.STIR_ON)
                .findFirst()
                .orElseThrow()
                .at();
        Instant enough = given.stream()
                .filter(c -> c.cue() == CueId.CRYSTALS_ENOUGH)
                .findFirst()
                .orElseThrow()
                .at();
        double held = Duration.between(START.plusSeconds(22 * 60), enough).toSeconds() / 60.0;
        assertEquals(6, held, 1, "at 27.5 °C six minutes are right");
        assertTrue(stir.isBefore(enough));
        CrystalStoriesTest colder = new CrystalStoriesTest();
        colder.goes(Programme.of(0, 45, 10, 45, 22, 26.5, 34, 26.5));
        Instant sooner = colder.all(CueGiven.class).stream()
                .filter(c -> c.cue() == CueId.CRYSTALS_ENOUGH)
                .findFirst()
                .orElseThrow()
                .at();
        assertTrue(sooner.isBefore(enough.minusSeconds(60)), "colder is quicker");
    }

    @Test
    void stirringThatWasSaidIsKnownAndElseAssumed() {
        state = Engine.start(SETUP, START);
        goes(Programme.temper(27.5, 2));
        assertEquals(Evidence.ASSUMED, state.crystals().orElseThrow().stir().evidence());
        hears(new StirringSaid(state.at(), Stirring.STILL));
        assertEquals(Evidence.TOLD, state.crystals().orElseThrow().stir().evidence());
        assertEquals(0, state.crystals().orElseThrow().stir().shearPerSecond());
    }

    @Test
    void chocolateBeyondTheModelHasNoWordAndTheEngineGoesOn() {
        Recipe dark = TestRecipes.dark();
        Recipe rich = new Recipe(
                dark.id(),
                dark.name(),
                new Composition(0.2, 0.12, 0.4, 0.28),
                dark.melt(),
                dark.cool(),
                dark.work(),
                dark.meltOut(),
                dark.scorchCelsius(),
                dark.rewarmBathCelsius(),
                dark.basis(),
                dark.sources());
        assertFalse(Temper.atStart(SETUP.withRecipe(rich)).isPresent());
        State without = Engine.start(SETUP.withRecipe(rich), START);
        Sample sample = sample(START.plusSeconds(1), 30);
        assertTrue(Engine.step(SETUP.withRecipe(rich), without, sample)
                .after()
                .crystals()
                .isEmpty());
    }

    private void goes(Programme programme) {
        goes(programme, 0);
    }

    private void goes(Programme programme, double fromSeconds) {
        for (int t = 1; t <= 60 * programme.endMinutes(); t++) {
            Instant at = START.plusMillis(Math.round(1000 * (fromSeconds + t)));
            hears(sample(at, programme.celsiusAt(t / 60.0) + 0.02 * noise.nextDouble(-1, 1)));
        }
    }

    private void hears(Input input) {
        Step step = Engine.step(Optional.empty(), SETUP, state, input);
        state = step.after();
        events.addAll(step.events());
    }

    private static Sample sample(Instant at, double celsius) {
        return new Sample(at, StoryKitchen.BOWL, celsius, 0.02, OptionalDouble.empty(), OptionalDouble.empty());
    }

    private CrystalWatch watch() {
        return state.crystals().orElseThrow().watch();
    }

    private Optional<Advice> advice() {
        return state.crystals().orElseThrow().advice(SETUP);
    }

    private Optional<String> word() {
        return watch().spoken().inData();
    }

    private <E extends Event> List<E> all(Class<E> kind) {
        return events.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    private <E extends Event> E only(Class<E> kind) {
        assertEquals(1, all(kind).size());
        return all(kind).get(0);
    }
}
