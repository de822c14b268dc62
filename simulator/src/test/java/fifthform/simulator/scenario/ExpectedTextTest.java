package fifthform.simulator.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.check.Problem;
import fifthform.curves.input.AlarmId;
import fifthform.curves.review.Verdict;
import fifthform.simulator.bowl.Forms;
import fifthform.simulator.scenario.Expected.Cooled;
import fifthform.simulator.scenario.Expected.Tempered;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a scenario begins and how it says that it should end. */
class ExpectedTextTest {
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
    void whatItSaysIsRead() {
        Expected expected = accepted(TEXT + """
                ends = melted-out
                cools = too-far
                tempers = thick
                verdict = melt-out
                raises = heading-over, near-melt-out
                raises not = probe-out
                """).expected();
        assertEquals(
                new Expected(
                        Optional.of(Landed.MELTED_OUT),
                        Optional.of(Cooled.TOO_FAR),
                        Optional.of(Tempered.THICK),
                        Optional.of(Verdict.MELT_OUT),
                        Set.of(AlarmId.HEADING_OVER, AlarmId.NEAR_MELT_OUT),
                        Set.of(AlarmId.PROBE_OUT)),
                expected);
        assertEquals(Expected.ANYTHING, accepted(TEXT).expected());
        assertEquals(
                Expected.ANYTHING,
                accepted(TEXT + "ends = over").madeBy(MakerKind.HASTY).expected());
    }

    @Test
    void itMayBeginMelted() {
        assertEquals(45, accepted(TEXT + "begins = melted at 45 C").begins().bulkCelsius());
        Scenario solid = accepted(TEXT + "room = 18 C\nbegins = solid");
        assertEquals(18, solid.begins().bulkCelsius());
        assertEquals(Forms.SOLID, solid.begins().bulk().crystals());
        assertEquals(solid.begins(), accepted(TEXT + "room = 18 C").begins());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ends = in-rnge                        | Did you mean \"in-range\"",
                "ends = splendidly                     | Use never-rewarmed, under, in-range, over, melted-out",
                "cools = too-litle                     | Did you mean \"too-little\"",
                "verdict = meltout                     | Did you mean \"melt-out\"",
                "raises = heading-over, heading-ovr    | Did you mean \"heading-over\"",
                "raises not = bath-hod                 | Did you mean \"bath-hot\"",
                "riases = bath-hot                     | Did you mean \"raises\"",
                "raises = bath-hot,                    | \"raises\" cannot be \"\"",
                "begins = frozen                       | is no way to begin",
                "begins = melted at 450 C              | is no way to begin",
                "ends =                                | says nothing"
            })
    void whatCannotBeReadIsNamed(String line, String told) {
        List<Problem> problems = ScenarioText.parse("test", TEXT + line).fold(s -> List.of(), List::copyOf);
        assertEquals(1, problems.size(), problems.toString());
        assertEquals("line 7", problems.get(0).where());
        assertTrue(problems.get(0).toString().contains(told), problems.toString());
    }

    @Test
    void noAlarmCanBeBoth() {
        List<Problem> problems = ScenarioText.parse("test", TEXT + "raises = bath-hot\nraises not = bath-hot")
                .fold(s -> List.of(), List::copyOf);
        assertEquals(1, problems.size());
        assertEquals("line 8", problems.get(0).where());
    }
}
