package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertTrue;

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
import fifthform.monitor.model.Help;
import fifthform.monitor.model.Look;
import fifthform.monitor.model.WatchModel;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Mark;
import fifthform.monitor.model.WatchPicture.Tone;
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
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;

/** Pictures of every step of a practice batch by short dips, as it is said and as its reason is asked for. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class StepPicturesTest {
    private static final Path FOLDER = Path.of(System.getProperty("picture.folder", "target/pictures"));

    @Test
    void everyStepOfABatchByDips() throws Exception {
        Map<String, WatchPicture> steps = steps(System.getProperty("picture.scenario", "glass-bowl"));
        for (Map.Entry<String, WatchPicture> step : steps.entrySet()) {
            WatchPicture picture = step.getValue();
            write("step-" + step.getKey(), picture);
            write("step-" + step.getKey() + "-why", Help.WHY.over(picture));
        }
        for (String step : List.of("melted", "stop-cooling", "crystals-enough", "off-now", "wipe-and-stir", "put-back"))
            assertTrue(steps.containsKey(step), step + " is not in " + steps.keySet());
    }

    private static void write(String name, WatchPicture picture) throws Exception {
        WritableImage image = OnScreen.at(1366, 768, Theme.BRIGHT, picture, screen -> screen.snapshot(null, null));
        Png.write(image, FOLDER.resolve(name + ".png"));
    }

    /** The first picture of each step, by its word. */
    private static Map<String, WatchPicture> steps(String name) {
        Scenario scenario = Scenarios.builtIn().find(name).fold(s -> s, problems -> {
            throw new IllegalStateException(problems.toString());
        });
        Recipe recipe = Recipes.load(FOLDER.resolve("no-own-recipes"))
                .find(scenario.chocolate())
                .fold(known -> known.recipe(), problems -> {
                    throw new IllegalStateException(problems.toString());
                });
        Setup setup = new Setup(
                recipe,
                scenario.bowl(),
                List.of(probe(BatchRun.BOWL.name(), Role.BOWL), probe(BatchRun.BATH.name(), Role.BATH)),
                Setup.USUAL_REACTION,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Origin.SIMULATED,
                Approach.fromWord(System.getProperty("picture.lift", "touches")).orElseThrow(),
                OptionalDouble.empty());
        Fed source = new Fed();
        List<Event> told = new ArrayList<>();
        SessionLoop loop = new SessionLoop(
                setup,
                BatchRun.BEGINS,
                source,
                SessionRecord.NONE,
                List.of((snapshot, events) -> told.addAll(events)),
                System::nanoTime);
        Map<String, WatchPicture> steps = new TreeMap<>();
        BatchRun.run(
                scenario,
                input -> {
                    told.clear();
                    source.feed(input);
                    loop.run();
                    for (Event event : told)
                        if (event instanceof Event.CueGiven cue)
                            steps.putIfAbsent(cue.cue().word(), WatchModel.picture(loop.snapshot(), look()));
                    WatchPicture now = WatchModel.picture(loop.snapshot(), look());
                    if (now.outlooks().stream().anyMatch(line -> line.value().contains(" to ")))
                        steps.putIfAbsent("unsure", now);
                    if (now.band().tone() == Tone.CALM)
                        steps.putIfAbsent("calm " + now.band().headline().replaceAll("[^A-Za-z]+", "-"), now);
                    return List.copyOf(told);
                },
                BatchRun.Presses.PRESSED);
        return steps;
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
                List.of(new Mark("×1", true), new Mark("sound", true)),
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
