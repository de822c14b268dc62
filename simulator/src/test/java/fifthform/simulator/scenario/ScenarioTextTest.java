package fifthform.simulator.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.setup.BowlMaterial;
import fifthform.simulator.bowl.Exchange;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.Room;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.device.AdapterSettings;
import fifthform.simulator.device.Language;
import fifthform.simulator.device.PlannedFault;
import fifthform.simulator.device.Trouble;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScenarioTextTest {
    private static final String WHOLE = """
            # invented, for the test
            demo = invented for a test
            title = A test   # not part of it
            about = Nothing much.
            chocolate = dark
            bowl = glass
            maker = own-way
            amount = 750 g  # why not
            Interval = 0.25 s
            fault = unplugged for 25 s, 10.5 s after warm-bath
            fault = silent for 3 s, 0 s after start
            """;

    @Test
    void aWholeTextBecomesAKitchen() {
        Scenario scenario = accepted(ScenarioText.parse("test", WHOLE));
        assertEquals("A test", scenario.title());
        assertEquals(0.75, scenario.kitchen().chocolate().kilograms());
        assertEquals(BowlMaterial.GLASS, scenario.bowl().material());
        assertEquals(750, scenario.bowl().amountGrams().orElseThrow());
        assertEquals(MakerKind.OWN_WAY, scenario.maker());
        assertEquals(Duration.ofMillis(250), scenario.bowlAdapter().interval());
        assertEquals(21, scenario.kitchen().roomCelsius(), "what is not said is usual");
        PlannedFault gone = new PlannedFault(
                Trouble.UNPLUGGED, Optional.of(Spot.WARM_BATH), Duration.ofMillis(10_500), Duration.ofSeconds(25));
        PlannedFault mute = new PlannedFault(Trouble.SILENT, Optional.empty(), Duration.ZERO, Duration.ofSeconds(3));
        assertEquals(List.of(gone, mute), scenario.bowlAdapter().faults());
    }

    /** Every figure of the kitchen reaches it. */
    @Test
    void theKitchensOwnWordsReachTheKitchen() {
        Kitchen kitchen = accepted(ScenarioText.parse("test", """
                demo = invented for a test
                title = A test
                about = Nothing much.
                chocolate = dark
                bowl = glass
                maker = own-way
                shape = 1.2 x
                humidity = 80 %
                fridge = 7 C
                spoon = 60 J/K
                hot dip = 0 x
                hot bath held = 105 C
                pot = 2000 J/K
                wall contact = 150 W/m2K
                stirred exchange = 300 W/m2K
                still exchange = 20 W/m2K
                layer = 10 %
                draught = 8 W/m2K
                probe depth = 12 mm
                probe wall = 0.4 x
                """)).kitchen();
        assertEquals(1.2, kitchen.bowl().shapeFactor());
        assertEquals(new Room(21, 0.8, 7), kitchen.room());
        assertEquals(60, kitchen.spoon().joulesPerKelvin());
        assertEquals(0, kitchen.hotBath().dippedFraction());
        assertEquals(105, kitchen.hotBath().heldAtCelsius());
        assertEquals(2000, kitchen.hotBath().potJoulesPerKelvin());
        assertEquals(new Exchange(0.1, 150, 300, 20, 8, 8, 8, 60), kitchen.exchange());
        assertEquals(12, kitchen.tip().depthMillimetres());
        assertEquals(0.4, kitchen.tip().restingFraction());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ammount = 500 g              | Did you mean \"amount\"?",
                "room = 21 F                  | \"room\" takes the unit C",
                "room = 21                    | \"room\" takes the unit C",
                "room = warm C                | \"room\" must be 5 to 40, found \"warm\"",
                "room = 41 C                  | \"room\" must be 5 to 40, found \"41\"",
                "room = NaN C                 | \"room\" must be 5 to 40",
                "amount = 600 g               | \"amount\" stands here for the second time",
                "just words                   | There is no =",
                "fault = unplugged            | is not a fault",
                "fault = bored for 1 s, 1 s after start | \"bored\" is no trouble",
                "fault = silent for 1 s, 1 s after dinner | \"dinner\" is not a moment",
            })
    void aLineThatCannotBeUsedIsNamed(String line, String told) {
        List<Problem> problems = refused(ScenarioText.parse("test", WHOLE + line + "\n"));
        assertEquals(1, problems.size(), problems.toString());
        assertEquals("line 12", problems.get(0).where());
        assertTrue(problems.get(0).toString().contains(told), problems.toString());
    }

    @Test
    void theAdapterIsNamedAsTheDriverIsToldOfIt() {
        assertEquals(
                Language.TEXT_LINES,
                accepted(ScenarioText.parse("test", WHOLE)).bowlAdapter().language());
        String more = """
                adapter = modbus-rtu:register=8,baud=9600,parity=none
                gain = 1.02 x
                drift = -0.5 K/h
                junction = 31 C
                fault = wrong-crc for 3 s, 9 s after start
                """;
        AdapterSettings adapter =
                accepted(ScenarioText.parse("test", WHOLE + more)).bowlAdapter();
        assertEquals("modbus-rtu", adapter.language().protocol().id());
        assertEquals(9600, adapter.language().line().baud());
        assertEquals(1.02, adapter.gain());
        assertEquals(31, adapter.junctionCelsius());
        assertEquals(1.02 * 30 - 1, adapter.findsCelsius(30, Duration.ofHours(2)), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "adapter = text-line            | Did you mean text-lines?",
                "adapter = modbus-rtu           | register",
                "adapter = max6675:form=binary  | sync=AA55",
                "fault = wrong-crc for 3 s, 9 s after start | text-lines cannot have the fault \"wrong-crc\"",
            })
    void anAdapterThatCannotBeIsNamed(String line, String told) {
        List<Problem> problems = refused(ScenarioText.parse("test", WHOLE + line + "\n"));
        assertEquals(1, problems.size(), problems.toString());
        assertEquals("line 12", problems.get(0).where());
        assertTrue(problems.get(0).toString().contains(told), problems.toString());
    }

    @Test
    void anotherLanguageIsRefusedWhereItsAdapterCannotHaveTheFault() {
        Scenario modbus = accepted(ScenarioText.parse(
                "test", WHOLE + "adapter = modbus-rtu:register=8\nfault = wrong-crc for 3 s, 9 s after start\n"));
        List<Problem> problems = refused(modbus.speaking(Language.TEXT_LINES));
        assertTrue(problems.toString().contains("wrong-crc"), problems.toString());
        Scenario text = accepted(ScenarioText.parse("test", WHOLE));
        assertEquals(
                modbus.bowlAdapter().language(),
                accepted(text.speaking(modbus.bowlAdapter().language()))
                        .bowlAdapter()
                        .language());
    }

    @ParameterizedTest
    @CsvSource({
        "demo = invented, demo = from a real kitchen, line 2",
        "bowl = glass, bowl = paper, line 6",
        "maker = own-way, maker = nobody, line 7",
        "chocolate = dark, chocolate = Very Dark!, line 5",
    })
    void aWordThatCannotBeUsedIsNamed(String good, String bad, String where) {
        List<Problem> problems = refused(ScenarioText.parse("test", WHOLE.replace(good, bad)));
        assertEquals(List.of(where), problems.stream().map(Problem::where).toList());
    }

    @Test
    void everythingMissingIsToldAtOnce() {
        List<Problem> problems = refused(ScenarioText.parse("empty", ""));
        assertEquals(6, problems.size(), problems.toString());
    }

    @Test
    void figuresThatContradictEachOtherAreRefused() {
        assertEquals(
                2,
                refused(ScenarioText.parse("test", WHOLE.replace("0.25 s", "0.3 s") + "melts from = 35 C\n"))
                        .size());
    }

    private static Scenario accepted(Parsed<Scenario> parsed) {
        return parsed.fold(scenario -> scenario, problems -> {
            throw new AssertionError(problems);
        });
    }

    private static List<Problem> refused(Parsed<Scenario> parsed) {
        return parsed.fold(
                scenario -> {
                    throw new AssertionError("accepted " + scenario);
                },
                problems -> List.copyOf(problems));
    }
}
