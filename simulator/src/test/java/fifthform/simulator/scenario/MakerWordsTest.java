package fifthform.simulator.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.check.Problem;
import fifthform.curves.cue.CueId;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Interruption;
import fifthform.simulator.maker.Interruption.Cued;
import fifthform.simulator.maker.Interruption.FirstAt;
import fifthform.simulator.maker.Interruption.What;
import fifthform.simulator.maker.Plan;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What a scenario says about the hands. */
class MakerWordsTest {
    private static final String TEXT = """
            demo = invented for a test
            title = A test
            about = Nothing much.
            chocolate = dark
            bowl = steel
            maker = own-way
            """;

    private static Scenario accepted(String text) {
        return ScenarioText.parse("test", text).fold(s -> s, problems -> {
            throw new AssertionError(problems);
        });
    }

    @Test
    void thePlanOfTheHandsIsRead() {
        Scenario scenario = accepted(TEXT + """
                stirring = 0.4 x
                seed added = 75 g
                seed at = 33 C
                interrupted = phone for 20 s, 0 s after lift-now
                interrupted = probe-out for 45.5 s, 30 s after warm-bath
                """);
        List<Interruption> both = List.of(
                new Interruption(What.PHONE, new Cued(CueId.LIFT_NOW), Duration.ZERO, Duration.ofSeconds(20)),
                new Interruption(
                        What.PROBE_OUT,
                        new FirstAt(Spot.WARM_BATH),
                        Duration.ofSeconds(30),
                        Duration.ofMillis(45_500)));
        assertEquals(new Plan(0.4, 75, 33, 0, both), scenario.habits().plan());
        assertEquals(Plan.USUAL, accepted(TEXT).habits().plan());
    }

    @Test
    void deedsMayComeAgainAndAgain() {
        Scenario scenario = accepted(TEXT + """
                splash = 12 g
                act = hair-dryer for 5 s every 180 s, 60 s after in-range
                """);
        Interruption dryer = new Interruption(
                What.HAIR_DRYER,
                new Cued(CueId.IN_RANGE),
                Duration.ofSeconds(60),
                Duration.ofSeconds(5),
                Optional.of(Duration.ofSeconds(180)));
        assertEquals(new Plan(1, 0, 33.5, 12, List.of(dryer)), scenario.habits().plan());
    }

    @ParameterizedTest
    @EnumSource
    void everyKindOfMakerHasAName(MakerKind kind) {
        Scenario scenario = accepted(TEXT.replace("own-way", kind.word()));
        assertEquals(kind, scenario.maker());
        assertEquals(kind, accepted(TEXT).madeBy(kind).maker());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "interrupted = phone                                  | does not say what happens",
                "interrupted = dinner for 1 s, 1 s after lift-now     | \"dinner\" cannot happen here",
                "interrupted = phone for 1 s, 1 s after tea           | \"tea\" is not a moment",
                "interrupted = phone for 100000 s, 1 s after lift-now | lasts too long",
                "interrupted = fone for 1 s, 1 s after lift-now       | Did you mean \"phone\"",
                "interrupted = fridge for 1 s, 1 s after lift-now     | \"fridge\" cannot happen here",
                "act = hair-drier for 5 s, 1 s after in-range         | Did you mean \"hair-dryer\"",
                "act = heat-gun for 5 s every 5 s, 1 s after in-range | begins again before it is over",
                "splash = 501 g                                       | \"splash\" must be 0 to 500",
                "stirring = 2 x                                       | \"stirring\" must be 0 to 1"
            })
    void whatCannotBeUsedIsNamed(String line, String told) {
        List<Problem> problems = ScenarioText.parse("test", TEXT + line).fold(s -> List.of(), List::copyOf);
        assertEquals(1, problems.size(), problems.toString());
        assertEquals("line 7", problems.get(0).where());
        assertTrue(problems.get(0).toString().contains(told), problems.toString());
    }
}
