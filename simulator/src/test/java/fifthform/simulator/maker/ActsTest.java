package fifthform.simulator.maker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.KitchenState.Baths;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.Scenarios;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

class ActsTest {
    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final Scenario scenario = Scenarios.builtIn().find(Scenarios.FIRST).fold(found -> found, problems -> {
        throw new AssertionError(problems);
    });
    private final Kitchen kitchen = scenario.kitchen();
    private final KitchenState melted = KitchenState.melted(45, new Baths(70, 46, 16));
    private final Hands stirring = Hands.stirringAt(Spot.TABLE);

    @Test
    void seedCoolsTheBowl() {
        KitchenState plain = Acts.of(stirring).on(kitchen, melted, MINUTE);
        KitchenState seeded =
                new Acts(stirring, Acts.Probe.IN_THE_CHOCOLATE, 50, 0, 0, List.of()).on(kitchen, melted, MINUTE);
        assertEquals(0.05, seeded.seedKilograms(), 1e-9);
        assertTrue(seeded.bulkCelsius() < plain.bulkCelsius() - 1, seeded.bulkCelsius() + " " + plain.bulkCelsius());
    }

    @Test
    void hotWaterWarmsTheBathAtOnceAndTheBowlInTime() {
        Hands over = Hands.stirringAt(Spot.WARM_BATH);
        KitchenState plain = Acts.of(over).on(kitchen, melted, MINUTE);
        KitchenState warmed =
                new Acts(over, Acts.Probe.IN_THE_CHOCOLATE, 0, 0, 3, List.of()).on(kitchen, melted, MINUTE);
        assertEquals(3, warmed.warmBathCelsius() - plain.warmBathCelsius(), 0.3);
        assertTrue(warmed.bulkCelsius() > plain.bulkCelsius() + 0.05, warmed.bulkCelsius() + " " + plain.bulkCelsius());
    }

    @Test
    void aProbeThatIsOutReadsTheRoom() {
        KitchenState out =
                new Acts(stirring, Acts.Probe.OUT, 0, 0, 0, List.of()).on(kitchen, melted, Duration.ofMinutes(10));
        assertTrue(out.bulkCelsius() > 40, "the chocolate stays warm: " + out.bulkCelsius());
        assertTrue(out.tipCelsius() < 30, "the tip does not: " + out.tipCelsius());
    }
}
