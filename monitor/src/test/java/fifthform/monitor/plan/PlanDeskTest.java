package fifthform.monitor.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.plan.BatchPlan;
import fifthform.curves.plan.PlanKey;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.settings.Units;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The plan's form takes what is shown, in the units that are set, and counts the pan with its material. */
class PlanDeskTest {
    private static PlanDesk desk(Units units) {
        Recipe dark = Recipes.load(Path.of("target", "no-own-recipes"))
                .builtIn("dark")
                .orElseThrow()
                .recipe();
        Bowl bowl = new Bowl("demo", BowlMaterial.STEEL, OptionalDouble.empty(), Optional.empty());
        return new PlanDesk(
                List.of(dark), List.of(bowl), units, Path.of("target", "cards"), () -> LocalDate.of(2026, 2, 3));
    }

    private static BatchPlan plan(PlanDesk desk) {
        return desk.plan().orElseThrow(() -> new AssertionError(desk.problems()));
    }

    @Test
    void fahrenheitIsTypedShownAndNamed() {
        PlanDesk celsius = desk(Units.CELSIUS);
        celsius.type(PlanField.TAP, "15");
        celsius.type(PlanField.ROOM, "20");
        PlanDesk fahrenheit = desk(Units.FAHRENHEIT);
        fahrenheit.type(PlanField.TAP, "59");
        fahrenheit.type(PlanField.ROOM, "68");
        assertEquals(plan(celsius).request(), plan(fahrenheit).request());
        assertEquals("Tap water, °F", PlanField.TAP.label(Units.FAHRENHEIT));
        assertEquals("Kitchen, °C", PlanField.ROOM.label(Units.CELSIUS));
        assertEquals("Chocolate, g", PlanField.AMOUNT.label(Units.FAHRENHEIT));
        assertEquals(59, PlanField.TAP.shown(15, Units.FAHRENHEIT), 1e-9);
        fahrenheit.type(PlanField.TAP, "15");
        assertTrue(
                fahrenheit.problems().toString().contains("32")
                        && fahrenheit.problems().toString().contains("95"),
                fahrenheit.problems().toString());
    }

    @Test
    void theSamePanOfGlassHoldsMoreHeat() {
        PlanDesk desk = desk(Units.CELSIUS);
        desk.type(PlanField.PAN_WEIGHT, "2000");
        desk.type(PlanField.BATH_WATER, "2000");
        double steel = plan(desk).value(PlanKey.TOP_UP_WATER);
        desk.choosePan(BowlMaterial.GLASS);
        assertEquals(BowlMaterial.GLASS, plan(desk).request().panMaterial());
        assertTrue(plan(desk).value(PlanKey.TOP_UP_WATER) > 1.02 * steel, "more water into a pan that takes more");
    }

    @Test
    void theBathAndItsTableAgreeAndTimesOfOneBandAreInOneUnit() {
        for (String grams : List.of("200", "800", "3000")) {
            PlanDesk desk = desk(Units.CELSIUS);
            desk.type(PlanField.AMOUNT, grams);
            List<String> rows = desk.page().orElseThrow().rows().stream()
                    .map(PlanPage.Row::words)
                    .toList();
            String cool = Units.CELSIUS.withUnit(desk.recipe().cool().range().midCelsius());
            assertTrue(rows.stream().anyMatch(row -> row.contains("for a bowl at " + cool)), rows.toString());
            for (String row : rows)
                assertFalse(row.matches(".* s \\([0-9]+ s to [0-9]+ min\\).*|.* min \\([0-9]+ s to.*"), row);
        }
    }

    @Test
    void timesStandInColumns() {
        PlanDesk desk = desk(Units.CELSIUS);
        List<PlanPage.Time> times = desk.page().orElseThrow().timetable(Optional.of(LocalTime.of(18, 30)));
        assertEquals(new PlanPage.Time("18:30", "", "melt"), times.get(0));
        List<String> lines = desk.page().orElseThrow().lines(Optional.of(LocalTime.of(18, 30)), false);
        List<Integer> places = times.stream()
                .map(time -> lines.stream()
                        .filter(line -> line.startsWith("  " + time.at()) && line.endsWith("  " + time.step()))
                        .findFirst()
                        .orElseThrow()
                        .lastIndexOf("  " + time.step()))
                .distinct()
                .toList();
        assertEquals(1, places.size(), lines.toString());
    }

    /** Those of the window, since it shows what the page has. */
    @Test
    void everyFigureHasItsFormulaAndItsSource() {
        PlanDesk desk = desk(Units.CELSIUS);
        BatchPlan plan = plan(desk);
        String why = String.join("\n", desk.page().orElseThrow().why());
        assertTrue(plan.figures().size() > 15, plan.figures().size() + " figures");
        plan.figures().forEach(figure -> {
            assertTrue(why.contains(figure.formula()), figure.key() + " has no formula");
            assertTrue(why.contains(figure.source()), figure.key() + " has no source");
        });
    }
}
