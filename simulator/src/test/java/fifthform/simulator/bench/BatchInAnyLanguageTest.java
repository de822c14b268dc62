package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.check.Parsed;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.Sample;
import fifthform.probe.Talk;
import fifthform.simulator.bench.BatchRun.Presses;
import fifthform.simulator.device.Language;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.Scenarios;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A batch whose adapter is asked, or sends a converter's codes, goes as the one that prints its readings. */
class BatchInAnyLanguageTest {
    private static final Scenario SCENARIO = accepted(Scenarios.builtIn().find("first-light"));

    @ParameterizedTest
    @ValueSource(
            strings = {
                "max31855",
                "max31856:form=binary",
                "millivolts:type=T",
                "modbus-rtu:register=8",
                "scpi",
                "kernel-files",
                "json-lines"
            })
    void endsAsTheOneInTextLines(String talk) {
        BatchRecord text = cued(SCENARIO);
        BatchRecord other = cued(speaking(talk));
        assertEquals(
                text.outcome().highestAfterCoolCelsius().orElseThrow(),
                other.outcome().highestAfterCoolCelsius().orElseThrow(),
                0.7);
        long readings = other.inputs().stream()
                .filter(input ->
                        input instanceof Sample sample && sample.probe().equals(BatchRun.BOWL))
                .count();
        assertTrue(readings > 1.7 * other.outcome().lasted().toSeconds(), readings + " readings");
        assertTrue(other.inputs().stream().filter(ProbeFault.class::isInstance).count() < 40);
    }

    /** The engine is told of the converter, so that what its one slope does to the number is undone. */
    @Test
    void theEngineIsToldOfTheConverter() {
        Scenario scenario = speaking("max31855:type=T");
        EngineProgram program =
                EngineProgram.beginning(scenario, RecipeShelf.recipe(scenario.chocolate()), BatchRun.BEGINS);
        assertEquals(
                scenario.bowlAdapter().language().protocol().sensor(),
                program.setup().probes().get(0).sensor());
        assertEquals("max31855:type=T", program.setup().probes().get(0).talk());
    }

    @Test
    void theSameSeedGivesTheSameRecordWhereItIsAsked() {
        Scenario modbus = speaking("modbus-rtu:register=8");
        List<Object> once = List.copyOf(cued(modbus).inputs());
        assertEquals(once, List.copyOf(cued(modbus).inputs()));
    }

    private static BatchRecord cued(Scenario scenario) {
        return BatchRun.run(scenario, new PlainRules(30.3), Presses.PRESSED);
    }

    private static Scenario speaking(String talk) {
        return accepted(SCENARIO.speaking(accepted(Language.of(accepted(Talk.parse(talk))))));
    }

    private static <T> T accepted(Parsed<T> parsed) {
        return parsed.fold(value -> value, problems -> {
            throw new AssertionError(problems.toString());
        });
    }
}
