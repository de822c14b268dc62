package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Holding.Warmth;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.model.Look;
import fifthform.monitor.model.WatchModel;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Mark;
import fifthform.monitor.session.SessionLoop;
import fifthform.monitor.session.SessionRecord;
import fifthform.monitor.settings.Units;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;

/** What the foot says of a planned hold, with pictures of it: an invented batch, made by hand. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class HoldPicturesTest {
    private static final Path FOLDER = Path.of(System.getProperty("picture.folder", "target/pictures"));
    private static final Instant START = Instant.parse("2026-01-10T18:00:00Z");
    private static final ProbeId BOWL = new ProbeId("bowl");

    private final Deque<Input> inputs = new ArrayDeque<>();
    private Instant at = START;
    private double celsius = 47;

    @Test
    void theFootCountsTheHoldAndStillAsksWhetherItIsStirred() throws Exception {
        // On the table, where no water shows whether it is stirred.
        onTheTable().to(47, 3).phase(Phase.SEED).onTheTable();
        for (double goal = 45; goal > 27.6; goal -= 1) to(goal, 35 / (goal - 20.5));
        to(27.6, 6);
        phase(Phase.REWARM)
                .onTheTable()
                .to(31.5, 12)
                .phase(Phase.WORK)
                .to(31.5, 6)
                .to(31.2, 6);
        List<Input> held = new ArrayList<>(inputs);
        inputs.clear();
        phase(Phase.SEED).onTheTable().to(31.1, 2);

        SessionLoop loop = loop();
        WatchPicture holding = after(loop, held);
        assertTrue(holding.foot().matches("held \\d+ min of 1 h, until 20:\\d\\d · 100 % in range.*"), holding.foot());
        WatchPicture asked = after(loop, List.copyOf(inputs));
        assertTrue(
                asked.crystals().question().startsWith("Is it being stirred?"),
                asked.crystals().toString());
        assertTrue(asked.foot().startsWith("Is it being stirred?"), asked.foot());
        write("hold-foot", holding);
        write("hold-foot-asked", asked);
    }

    private HoldPicturesTest to(double goal, double minutes) {
        int steps = (int) Math.round(60 * minutes);
        double from = celsius;
        for (int step = 1; step <= steps; step++) {
            at = at.plusSeconds(1);
            celsius = from + (goal - from) * step / steps;
            // With the last digit of an adapter, so that it does not look stuck.
            double shown = Math.round(100 * celsius + step % 3) / 100.0;
            inputs.add(new Sample(at, BOWL, shown, 0.03, OptionalDouble.empty(), OptionalDouble.empty()));
        }
        return this;
    }

    private HoldPicturesTest phase(Phase phase) {
        inputs.add(new PhaseConfirmed(at, phase));
        return this;
    }

    private HoldPicturesTest onTheTable() {
        inputs.add(new BowlMoved(at, Place.TABLE));
        return this;
    }

    private final Deque<Recorded> waiting = new ArrayDeque<>();
    private long sequence;

    private SessionLoop loop() {
        Recipe recipe = Recipes.load(FOLDER.resolve("no-own-recipes"))
                .builtIn("dark")
                .orElseThrow()
                .recipe();
        Setup setup = new Setup(
                recipe,
                new Bowl("demo steel", BowlMaterial.STEEL, OptionalDouble.of(800), Optional.empty()),
                List.of(new ProbeSetup(BOWL, Role.BOWL, "text-lines", "practice", Correction.UNCHECKED, 4)),
                Setup.USUAL_REACTION,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Origin.SIMULATED,
                Approach.ONE_LIFT,
                OptionalDouble.empty(),
                Beginning.WHOLE,
                Optional.of(new Holding(Duration.ofMinutes(60), Warmth.AIR)));
        return new SessionLoop(
                setup,
                START,
                () -> Optional.ofNullable(waiting.poll()),
                SessionRecord.NONE,
                List.of(),
                System::nanoTime);
    }

    private WatchPicture after(SessionLoop loop, List<Input> more) {
        more.forEach(input -> waiting.add(new Recorded(++sequence, input)));
        loop.run();
        Look look = new Look(
                Units.CELSIUS,
                ZoneOffset.UTC,
                List.of(new Mark("speed ×1", true), new Mark("sound", true)),
                "",
                Optional.empty(),
                Optional.empty());
        return WatchModel.picture(loop.snapshot(), look);
    }

    /** In both colours, at two sizes; the foot stands there in full. */
    private static void write(String name, WatchPicture picture) throws Exception {
        for (Theme theme : Theme.values())
            for (int width : new int[] {1366, 1920}) {
                int height = width * 9 / 16;
                WritableImage image = OnScreen.at(width, height, theme, picture, screen -> {
                    assertEquals(List.of(), NothingCutOffTest.faults(screen, width, height));
                    List<String> there = NothingCutOffTest.texts(screen).stream()
                            .map(text -> OnScreen.plain(text.getText()))
                            .toList();
                    assertTrue(there.contains(OnScreen.plain(picture.foot())), there.toString());
                    return screen.snapshot(null, null);
                });
                Png.write(
                        image,
                        FOLDER.resolve(name + "-" + theme.name().toLowerCase(Locale.ROOT) + "-" + width + ".png"));
            }
    }
}
