package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.bowlcheck.BowlWatch;
import fifthform.curves.bowlcheck.OtherBowl;
import fifthform.curves.engine.Engine;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.forecast.Coasting;
import fifthform.curves.input.Input;
import fifthform.curves.input.Recorded;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.monitor.bowls.Bowls;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.bowls.Taught;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.session.Altered;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.Entry;
import fifthform.monitor.store.InputCodec;
import fifthform.monitor.store.Session;
import fifthform.monitor.store.SessionHeader;
import fifthform.simulator.bench.BatchRun;
import fifthform.simulator.bench.BatchRun.Presses;
import fifthform.simulator.scenario.Scenarios;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a batch leaves to the next, as a real session's end would have it. */
class BowlMemoryTest {
    @TempDir
    Path home;

    private Bowls bowls;
    private BowlMemory memory;

    @BeforeEach
    void store() {
        bowls = new Bowls(home.resolve("bowls"));
        memory = new BowlMemory(bowls, Units.CELSIUS);
    }

    private Setup setup(Bowl bowl, Origin origin) {
        Recipe dark = Recipes.load(home).known().stream()
                .map(known -> known.recipe())
                .filter(recipe -> recipe.id().equals("dark"))
                .findFirst()
                .orElseThrow();
        return new Setup(
                dark,
                bowl,
                List.of(
                        Setups.probe(BatchRun.BOWL, Role.BOWL, "text-lines", "/dev/ttyDEMO"),
                        Setups.probe(BatchRun.BATH, Role.BATH, "text-lines", "/dev/ttyDEMO")),
                Setup.USUAL_REACTION,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                origin,
                Approach.TOUCHES_WHERE_UNSURE,
                OptionalDouble.empty(),
                Beginning.WHOLE,
                Optional.empty());
    }

    private Bowl steel() {
        return bowls.load()
                .find("Steel, demo")
                .orElse(KeptBowl.named("Steel, demo", BowlMaterial.STEEL))
                .with(OptionalDouble.of(500));
    }

    /** A whole simulated batch, taken for a real one. */
    private static State batch(Setup setup) {
        return batch(setup, input -> {});
    }

    private static State batch(Setup setup, Consumer<Input> record) {
        State[] state = {Engine.start(setup, BatchRun.BEGINS)};
        BatchRun.run(
                Scenarios.builtIn().find("first-light").fold(scenario -> scenario, problems -> {
                    throw new AssertionError(problems);
                }),
                input -> {
                    record.accept(input);
                    Step step = Engine.step(setup, state[0], input);
                    state[0] = step.after();
                    return step.events();
                },
                Presses.PRESSED);
        return state[0];
    }

    private Taught kept() {
        return bowls.load().find("steel-demo").orElseThrow().taught().get(0);
    }

    @Test
    void aBatchTeachesAndTheNextBeginsWithThat() {
        Setup first = setup(steel(), Origin.REAL);
        String said = memory.learn(first, batch(first), "one").orElseThrow();
        assertTrue(said.startsWith("Your bowl \"Steel, demo\" coasts about "), said);
        assertEquals(1, kept().batches());
        assertEquals(OptionalDouble.of(500), kept().amountGrams());
        assertEquals(1, kept().answers().turn().batches());
        // Its probe is in the warm bath: how cold the tap water was is a guess.
        assertEquals(1, kept().answers().pullGuessed().batches());

        Setup second = setup(steel(), Origin.REAL);
        assertEquals(kept().coast(), second.bowl().learned());
        assertTrue(BowlWords.begins(second.bowl(), bowls.load(), Units.CELSIUS)
                .orElseThrow()
                .contains("in 1 batch)."));
        int lifts = kept().coast().orElseThrow().liftsSeen();
        memory.learn(second, batch(second), "two");
        assertEquals(2, kept().batches());
        assertTrue(kept().coast().orElseThrow().liftsSeen() > lifts);
        assertEquals(2, kept().answers().turn().batches());
    }

    @Test
    void practiceTeachesNothing() {
        Setup practice = setup(steel(), Origin.SIMULATED);
        assertEquals(Optional.empty(), memory.learn(practice, batch(practice), "one"));
        assertFalse(Files.exists(home.resolve("bowls")));
    }

    @Test
    void aBowlWithoutANameIsAskedFor() {
        Setup any = setup(Bowl.ANY, Origin.REAL);
        assertTrue(memory.learn(any, batch(any), "one").orElseThrow().contains("--bowl"));
        assertEquals(List.of(), bowls.load().bowls());
    }

    @Test
    void theSameSessionCountsOnce() {
        Setup first = setup(steel(), Origin.REAL);
        State last = batch(first);
        memory.learn(first, last, "one");
        memory.learn(first, last, "one");
        assertEquals(1, kept().batches());
    }

    @Test
    void whatWasResetMeanwhileStaysReset() throws IOException {
        Setup first = setup(steel(), Origin.REAL);
        memory.learn(first, batch(first), "one");
        Setup second = setup(steel(), Origin.REAL);
        bowls.keep(bowls.load().find("steel-demo").orElseThrow().untaught());
        String said = memory.learn(second, batch(second), "two").orElseThrow();
        assertTrue(said.contains("was changed while this batch ran"), said);
        assertEquals(List.of(), bowls.load().find("steel-demo").orElseThrow().taught());
    }

    @Test
    void anotherBowlTeachesThisOneNothing() {
        Setup first = setup(steel(), Origin.REAL);
        State last = batch(first);
        BowlWatch seen = last.coasting().bowl();
        BowlWatch doubted = new BowlWatch(
                seen.plungedAt(),
                seen.pulls(),
                seen.water(),
                seen.answer(),
                Optional.of(OtherBowl.HEAVIER),
                seen.word());
        String said = memory.learn(first, with(last, doubted), "one").orElseThrow();
        assertTrue(said.contains("behaved like a heavier bowl than \"Steel, demo\""), said);
        assertEquals(List.of(), bowls.load().bowls());

        memory.learn(first, with(last, doubted.confirmed()), "one");
        assertEquals(1, kept().batches());
    }

    /** All of its inputs but the last minutes, and nothing that closes it. */
    @Test
    void aSessionThatWasCutOffTeachesOnceWhatItSaw() {
        Setup first = setup(steel(), Origin.REAL);
        List<Entry> entries = new ArrayList<>();
        batch(
                first,
                input -> entries.add(new Entry.Given(new Recorded(entries.size() + 1, InputCodec.asStored(input)))));
        SessionHeader header = new SessionHeader("0", "", "cut-demo", BatchRun.BEGINS, ZoneOffset.UTC, first);
        Session cut = new Session(
                home.resolve("cut"), header, entries.subList(0, entries.size() * 9 / 10), BatchRun.BEGINS, List.of());

        assertTrue(memory.learn(cut).orElseThrow().contains("coasts about"));
        Taught once = kept();
        assertEquals(Optional.of("cut-demo"), once.session());
        assertEquals(Optional.empty(), memory.learn(cut));
        assertEquals(once, kept());
    }

    private static State with(State state, BowlWatch bowl) {
        Coasting was = state.coasting();
        return Altered.with(state, new Coasting(was.coast(), was.lift(), was.lastTurn(), was.lossShare(), bowl));
    }
}
