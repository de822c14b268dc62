package fifthform.monitor.view;

import fifthform.curves.engine.Event;
import fifthform.curves.input.Input;
import fifthform.curves.input.Recorded;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.intake.InputSource;
import fifthform.monitor.model.Look;
import fifthform.monitor.model.WatchModel;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Mark;
import fifthform.monitor.session.SessionLoop;
import fifthform.monitor.session.SessionRecord;
import fifthform.monitor.settings.Units;
import fifthform.simulator.bench.BatchRun;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.Scenarios;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Supplier;

/** A practice batch from its beginning to its end, as a screen sees it. */
final class WatchedBatch {
    private WatchedBatch() {}

    /**
     * Goes through the batch of this scenario.
     *
     * @param noRecipes a folder without recipes of the maker's own
     * @param seen what was told after each input, and the picture then for who wants it
     */
    static void through(
            String name, Approach approach, Path noRecipes, BiConsumer<List<Event>, Supplier<WatchPicture>> seen) {
        Scenario scenario = Scenarios.builtIn().find(name).fold(s -> s, problems -> {
            throw new IllegalStateException(problems.toString());
        });
        Fed source = new Fed();
        List<Event> told = new ArrayList<>();
        SessionLoop loop = new SessionLoop(
                setup(scenario, approach, noRecipes),
                BatchRun.BEGINS,
                source,
                SessionRecord.NONE,
                List.of((snapshot, events) -> told.addAll(events)),
                System::nanoTime);
        BatchRun.run(
                scenario,
                input -> {
                    told.clear();
                    source.feed(input);
                    loop.run();
                    List<Event> events = List.copyOf(told);
                    seen.accept(events, () -> WatchModel.picture(loop.snapshot(), look()));
                    return events;
                },
                BatchRun.Presses.PRESSED);
    }

    private static Setup setup(Scenario scenario, Approach approach, Path noRecipes) {
        Recipe recipe = Recipes.load(noRecipes).find(scenario.chocolate()).fold(known -> known.recipe(), problems -> {
            throw new IllegalStateException(problems.toString());
        });
        return new Setup(
                recipe,
                scenario.bowl(),
                List.of(probe(BatchRun.BOWL.name(), Role.BOWL), probe(BatchRun.BATH.name(), Role.BATH)),
                Setup.USUAL_REACTION,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Origin.SIMULATED,
                approach,
                OptionalDouble.empty(),
                scenario.habits().plan().beginning(),
                scenario.habits().plan().holding());
    }

    private static ProbeSetup probe(String name, Role role) {
        return new ProbeSetup(
                new fifthform.curves.setup.ProbeId(name),
                role,
                "text-lines",
                "practice",
                Correction.UNCHECKED,
                ProbeSetup.USUAL_LAG_SECONDS);
    }

    private static Look look() {
        return new Look(
                Units.CELSIUS,
                ZoneOffset.UTC,
                List.of(new Mark("speed ×1", true), new Mark("sound", true)),
                "",
                Optional.empty(),
                Optional.empty());
    }

    /** Hands over one input and ends, again and again. */
    private static final class Fed implements InputSource {
        private Optional<Input> next = Optional.empty();
        private long taken;

        void feed(Input input) {
            next = Optional.of(input);
        }

        @Override
        public Optional<Recorded> next() {
            Optional<Recorded> given = next.map(input -> new Recorded(++taken, input));
            next = Optional.empty();
            return given;
        }
    }
}
