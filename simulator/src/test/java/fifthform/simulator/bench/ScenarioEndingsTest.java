package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.AlarmId;
import fifthform.simulator.device.PlannedFault;
import fifthform.simulator.device.Trouble;
import fifthform.simulator.scenario.Expected;
import fifthform.simulator.scenario.Landed;
import fifthform.simulator.scenario.MakerKind;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.Scenarios;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every scenario, with the engine and through bytes: it ends as its file says. */
class ScenarioEndingsTest {
    static Set<String> ids() {
        return Scenarios.builtIn().ids();
    }

    private static Scenario scenario(String id) {
        return BatchRunTest.scenario(id);
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everyOneEndsAsItsFileSays(String id) {
        Scenario scenario = scenario(id);
        Gone gone = Gone.through(scenario, scenario.seed());
        Expected expected = scenario.expected();
        assertEquals(expected.ends().orElseThrow(), gone.landed(), gone.toString());
        expected.cools().ifPresent(cools -> assertEquals(cools, gone.cooled(), gone.toString()));
        expected.tempers().ifPresent(tempers -> assertEquals(tempers, gone.tempered(), gone.toString()));
        expected.verdict().ifPresent(verdict -> assertEquals(verdict, gone.verdict(), gone.toString()));
        Set<AlarmId> missed = new TreeSet<>(expected.raises());
        missed.removeAll(gone.raised());
        assertEquals(Set.of(), missed, "not raised: " + gone);
        Set<AlarmId> unwanted = new TreeSet<>(expected.raisesNot());
        unwanted.retainAll(gone.raised());
        assertEquals(Set.of(), unwanted, "raised: " + gone);
    }

    @Test
    void everyAlarmIsRaisedBySomeScenario() {
        Set<AlarmId> left = EnumSet.allOf(AlarmId.class);
        for (String id : ids()) left.removeAll(scenario(id).expected().raises());
        assertEquals(Set.of(), left);
    }

    @Test
    void everyTroubleOfAnAdapterComesInSomeScenario() {
        Set<Trouble> left = EnumSet.allOf(Trouble.class);
        for (String id : ids()) {
            scenario(id).bowlAdapter().faults().stream()
                    .map(PlannedFault::trouble)
                    .forEach(left::remove);
        }
        assertEquals(Set.of(), left);
    }

    /** Forty minutes of moulding, warm air now and then, the bowl never back in the water. */
    @Test
    void theHairDryerHoldsTheWorkingRange() {
        Scenario held = scenario("held-with-dryer");
        assertEquals(40, held.habits().pouring().toMinutes());
        Gone gone = Gone.through(held, held.seed());
        assertEquals(1, gone.outcome().lifts().size());
        double low = RecipeShelf.recipe("dark").work().range().lowCelsius();
        assertTrue(gone.coolestPouringCelsius() >= low - 0.2, gone.toString());
        assertEquals(Landed.IN_RANGE, gone.landed());
    }

    @Test
    void thereAreManyInManyHands() {
        List<Scenario> all = ids().stream().map(ScenarioEndingsTest::scenario).toList();
        assertTrue(all.size() >= 24, all.size() + " scenarios");
        assertEquals(all.size(), all.stream().map(Scenario::title).distinct().count());
        assertEquals(all.size(), all.stream().map(Scenario::seed).distinct().count());
        Set<String> chocolates =
                new TreeSet<>(all.stream().map(Scenario::chocolate).toList());
        assertEquals(Set.of("dark", "milk", "two-ingredient-dark", "white"), chocolates);
        Set<MakerKind> makers = EnumSet.noneOf(MakerKind.class);
        all.forEach(scenario -> makers.add(scenario.maker()));
        assertTrue(makers.size() >= 4, makers.toString());
    }
}
