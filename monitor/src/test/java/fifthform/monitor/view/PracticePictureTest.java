package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.cue.CueId;
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
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;

/** The picture that the README shows: the practice batch itself, at the moment when it says lift. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class PracticePictureTest {
    private static final Path FOLDER = Path.of(System.getProperty("picture.folder", "target/pictures"));

    @Test
    void thePracticeBatchWhenItSaysLift() throws Exception {
        WatchPicture picture = whenItSaysLift();
        assertEquals(Tone.CUE, picture.band().tone());
        assertTrue(picture.simulated());
        for (Theme theme : Theme.values()) {
            WritableImage image = OnScreen.at(1366, 768, theme, picture, screen -> screen.snapshot(null, null));
            String word = theme.name().toLowerCase(java.util.Locale.ROOT);
            Png.write(image, FOLDER.resolve("practice-lift-now-" + word + ".png"));
        }
    }

    private static WatchPicture whenItSaysLift() {
        Scenario scenario = Scenarios.builtIn().find(Scenarios.FIRST).fold(s -> s, problems -> {
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
                        Approach.TOUCHES_WHERE_UNSURE,
                        OptionalDouble.empty())
                .withApproach(Approach.ONE_LIFT);
        Fed source = new Fed();
        List<Event> told = new ArrayList<>();
        SessionLoop loop = new SessionLoop(
                setup,
                BatchRun.BEGINS,
                source,
                SessionRecord.NONE,
                List.of((snapshot, events) -> told.addAll(events)),
                System::nanoTime);
        List<WatchPicture> lift = new ArrayList<>();
        BatchRun.run(
                scenario,
                input -> {
                    told.clear();
                    source.feed(input);
                    loop.run();
                    boolean now =
                            told.stream().anyMatch(e -> e instanceof Event.CueGiven cue && cue.cue() == CueId.LIFT_NOW);
                    if (now && lift.isEmpty()) lift.add(WatchModel.picture(loop.snapshot(), look()));
                    return List.copyOf(told);
                },
                BatchRun.Presses.PRESSED);
        return lift.get(0);
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
