package fifthform.monitor.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.settings.LastStart;
import fifthform.monitor.settings.Units;
import fifthform.monitor.start.StartChoice.Way;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class StartDeskTest {
    private static final SeenProbe PROBE =
            new SeenProbe("/dev/ttyDemo0", "demo adapter", "Last check 3 days ago: within ±0.2 °C.", true);
    private static final SeenProbe OTHER = new SeenProbe("/dev/ttyDemo1", "demo adapter", "Never checked.", false);
    private static final LastStart LAST = new LastStart(
            Optional.of("/dev/ttyDemo0"), Optional.of("milk"), Optional.of("demo bowl"), OptionalDouble.of(600));

    private static StartDesk desk(LastStart last, Optional<String> cutOff) {
        List<Recipe> recipes = Recipes.load(Path.of("no-recipes-here")).known().stream()
                .map(KnownRecipe::recipe)
                .toList();
        return new StartDesk(new StartStock(
                recipes, List.of(KeptBowl.named("demo bowl", BowlMaterial.GLASS)), last, cutOff, Units.CELSIUS));
    }

    @Test
    void threeStepsLeadToABatch() {
        StartDesk desk = desk(LastStart.NONE, Optional.empty());
        desk.saw(List.of(PROBE, OTHER));
        assertEquals("dark", desk.recipe().id());
        assertEquals(Optional.empty(), desk.take());
        assertEquals(StartStep.BOWL, desk.step());
        desk.grams(1);
        desk.grams(-1);
        desk.grams(-1);
        assertEquals(OptionalDouble.of(700), desk.grams());
        assertEquals(Optional.empty(), desk.take());
        assertEquals(StartStep.GO, desk.step());
        assertEquals(
                Optional.of(new StartChoice(
                        Way.PROBE,
                        "dark",
                        Optional.of("demo bowl"),
                        OptionalDouble.of(700),
                        Optional.of("/dev/ttyDemo0"))),
                desk.take());
        assertTrue(desk.isWaiting());
    }

    @Test
    void asLastTimeNeedsNoStep() {
        StartDesk desk = desk(LAST, Optional.empty());
        assertEquals("milk", desk.recipe().id());
        assertEquals(Optional.of("milk · demo bowl, 600 g · /dev/ttyDemo0"), desk.last());
        assertEquals(
                Optional.of(new StartChoice(
                        Way.AS_LAST, "milk", Optional.of("demo bowl"), OptionalDouble.of(600), Optional.empty())),
                desk.asLast());
        assertEquals(Optional.empty(), desk(LastStart.NONE, Optional.empty()).asLast());
    }

    @Test
    void withoutAProbeNothingRealBegins() {
        StartDesk desk = desk(LastStart.NONE, Optional.empty());
        desk.open(StartStep.GO);
        assertEquals(Optional.empty(), desk.take());
        assertFalse(desk.isWaiting());
        desk.saw(List.of());
        assertEquals("No probe found", desk.rows().get(0).words());
        assertEquals(Optional.empty(), desk.take());
        assertTrue(desk.problem().contains("plug the adapter in first"), "Enter says why nothing begins");
        desk.saw(List.of(PROBE));
        assertEquals("", desk.problem(), "what was asked for is done");
        desk.saw(List.of());
        desk.down();
        assertEquals(Optional.of(Way.PRACTICE), desk.take().map(StartChoice::way));
        desk.refuse("Nothing was started.");
        desk.down();
        assertEquals(Optional.of(Way.OWN_HANDS), desk.take().map(StartChoice::way));
    }

    @Test
    void aProbeThatComesLaterDoesNotMoveWhatIsChosen() {
        StartDesk desk = desk(LastStart.NONE, Optional.empty());
        desk.saw(List.of(OTHER));
        desk.open(StartStep.GO);
        desk.saw(List.of(PROBE, OTHER));
        assertEquals(1, desk.selected());
        assertEquals(Optional.of("/dev/ttyDemo1"), desk.take().flatMap(StartChoice::port));
    }

    @Test
    void whatCannotBeStartedIsSaidAndNothingChosenIsLost() {
        StartDesk desk = desk(LAST, Optional.empty());
        desk.take();
        desk.grams(2);
        desk.asLast();
        desk.refuse("The port is held by another program.");
        assertFalse(desk.isWaiting());
        assertEquals("The port is held by another program.", desk.problem());
        assertEquals(StartStep.BOWL, desk.step());
        assertEquals(OptionalDouble.of(700), desk.grams());
        desk.down();
        assertEquals("", desk.problem());
    }

    @Test
    void rowsGoRoundAndStepsBack() {
        StartDesk desk = desk(LastStart.NONE, Optional.empty());
        int rows = desk.rows().size();
        assertFalse(desk.back());
        desk.select(0);
        desk.up();
        assertEquals(rows - 1, desk.selected());
        desk.down();
        assertEquals(0, desk.selected());
        desk.take();
        assertTrue(desk.back());
        assertEquals(StartStep.CHOCOLATE, desk.step());
    }

    /** Targets of the chocolate, what was learned of the bowl, the probe's check: each where it is chosen. */
    @Test
    void eachStepSaysWhatIsKnown() {
        StartDesk desk = desk(LastStart.NONE, Optional.of("the batch of 14:02, cut off"));
        assertTrue(desk.rows().get(desk.selected()).details().contains("Work at: 31 to 32 °C"), desk.rows() + "");
        desk.take();
        assertTrue(desk.rows().get(0).details().toString().contains("has not been seen yet"), desk.rows() + "");
        desk.saw(List.of(PROBE));
        desk.take();
        assertTrue(desk.rows().get(0).details().contains("Last check 3 days ago: within ±0.2 °C."), desk.rows() + "");
        assertTrue(desk.cautions().get(0).contains("steam scald"));
        assertTrue(desk.cautions().get(1).contains("on battery"));
        assertEquals(2, desk.cautions().size(), "no milk in dark");
        StartDesk milk = desk(LAST, Optional.empty());
        assertTrue(milk.cautions().get(2).contains("allergen"), milk.cautions().toString());
        assertTrue(
                milk.cautions().get(2).contains("local codes"), milk.cautions().toString());
        assertEquals(Optional.of(Way.GO_ON), desk.goOn().map(StartChoice::way));
    }
}
