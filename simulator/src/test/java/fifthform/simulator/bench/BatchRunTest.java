package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.input.Sample;
import fifthform.curves.input.Tick;
import fifthform.simulator.bench.BatchRun.Presses;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.ScenarioText;
import fifthform.simulator.scenario.Scenarios;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole batches, from the kitchen through the bytes to a program and back to the hands. */
class BatchRunTest {
    private static final double MELT_OUT_CELSIUS = 33.8;

    static Scenario scenario(String id) {
        return Scenarios.builtIn().find(id).fold(s -> s, problems -> {
            throw new AssertionError(problems);
        });
    }

    static Set<String> ids() {
        return Scenarios.builtIn().ids();
    }

    private static BatchRecord cued(String id) {
        return BatchRun.run(scenario(id), new PlainRules(30.3), Presses.PRESSED);
    }

    @Test
    void whoFollowsCuesLandsInTheRange() {
        BatchRecord batch = cued("first-light");
        double highest = batch.outcome().highestAfterCoolCelsius().orElseThrow();
        assertTrue(highest > 31 && highest < 32.5, "highest " + highest);
        long minutes = batch.outcome().lasted().toMinutes();
        assertTrue(minutes >= 30 && minutes <= 45, minutes + " min");
    }

    @Test
    void whoGoesByTheThermometerCoastsPastMeltOut() {
        BatchRecord batch = BatchRun.run(scenario("own-way"), input -> List.of(), Presses.FORGOTTEN);
        assertTrue(batch.outcome().highestAfterCoolCelsius().orElseThrow() > MELT_OUT_CELSIUS);
        Lift lift = batch.outcome().lifts().get(0);
        assertTrue(lift.coastKelvin() > 0.5, "coast " + lift.coastKelvin());
        assertTrue(lift.turnedAt().isAfter(lift.at()));
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everyBatchEndsEvenWhenNobodySaysAWord(String id) {
        BatchRecord batch = BatchRun.run(scenario(id), input -> List.of(), Presses.FORGOTTEN);
        assertTrue(batch.outcome().lasted().compareTo(Duration.ofHours(3)) < 0);
        // Chocolate in temper is neither melted nor cooled.
        if (scenario(id).habits().plan().beginning().isInTemper()) return;
        assertTrue(batch.outcome().highestMeltCelsius() > 40);
        assertTrue(batch.outcome().lowestCoolCelsius().orElseThrow() < 29);
    }

    @Test
    void theSameSeedGivesTheSameRecordAndAnotherDoesNot() {
        assertEquals(cued("first-light"), cued("first-light"));
        BatchRecord other = BatchRun.run(scenario("first-light"), 99, new PlainRules(30.3), Presses.PRESSED);
        assertNotEquals(cued("first-light").inputs(), other.inputs());
    }

    @Test
    void theProgramHearsTwoReadingsASecondAndTicksBetween() {
        List<Input> inputs = cued("first-light").inputs();
        assertEquals(new BowlMoved(BatchRun.BEGINS, Place.BATH), inputs.get(0));
        assertEquals(new Tick(BatchRun.BEGINS.plusMillis(250)), inputs.get(1));
        Instant last = BatchRun.BEGINS;
        for (Input input : inputs) {
            assertFalse(input.at().isBefore(last), "out of order: " + input);
            assertTrue(Duration.between(last, input.at()).toMillis() <= 250, "a gap before " + input);
            last = input.at();
        }
        long seconds = Duration.between(BatchRun.BEGINS, last).toSeconds();
        long bowl = samples(inputs).stream()
                .filter(s -> s.probe().equals(BatchRun.BOWL))
                .count();
        long bath = samples(inputs).stream()
                .filter(s -> s.probe().equals(BatchRun.BATH))
                .count();
        assertEquals(2.0 * seconds, bowl, 4);
        assertEquals(1.0 * seconds, bath, 4);
    }

    /** The first line is judged with care by the decoder; from then on what is read is what is there, within its noise. */
    @Test
    void theReadingsFollowTheTruth() {
        BatchRecord batch = cued("first-light");
        Instant poured = batch.inputs().get(batch.inputs().size() - 1).at();
        double truth = batch.truth().get(batch.truth().size() - 1).bulkCelsius();
        Sample last = samples(batch.inputs()).stream()
                .filter(s -> s.probe().equals(BatchRun.BOWL))
                .reduce((a, b) -> b)
                .orElseThrow();
        assertTrue(Duration.between(last.at(), poured).toMillis() <= 1000);
        assertEquals(truth, last.tipCelsius(), 0.2);
    }

    @Test
    void keysArePressedOrForgottenAsAsked() {
        List<Place> told = cued("first-light").inputs().stream()
                .filter(BowlMoved.class::isInstance)
                .map(input -> ((BowlMoved) input).to())
                .toList();
        assertEquals(List.of(Place.BATH, Place.COLD_WATER, Place.TABLE, Place.BATH, Place.TABLE), told.subList(0, 5));
        BatchRecord quiet = BatchRun.run(scenario("first-light"), new PlainRules(30.3), Presses.FORGOTTEN);
        assertTrue(quiet.inputs().stream().noneMatch(BowlMoved.class::isInstance));
    }

    @Test
    void anUnpluggedAdapterLeavesAGapAndComesBack() {
        BatchRecord batch = cued("unplugged");
        List<ProbeFault> faults = batch.inputs().stream()
                .filter(ProbeFault.class::isInstance)
                .map(ProbeFault.class::cast)
                .toList();
        assertEquals(
                Set.of(Cause.UNPLUGGED), faults.stream().map(ProbeFault::cause).collect(Collectors.toSet()));
        assertEquals(13, faults.size(), "told at once and then every two seconds");
        Instant gone = faults.get(0).at();
        Instant back = samples(batch.inputs()).stream()
                .filter(s -> s.probe().equals(BatchRun.BOWL))
                .map(Sample::at)
                .filter(at -> at.isAfter(gone))
                .findFirst()
                .orElseThrow();
        double gapSeconds = Duration.between(gone, back).toMillis() / 1000.0;
        assertEquals(25, gapSeconds, 1.6);
        long ticks = batch.inputs().stream()
                .filter(Tick.class::isInstance)
                .filter(t -> t.at().isAfter(gone) && t.at().isBefore(back))
                .count();
        assertTrue(ticks >= 70, ticks + " ticks in the gap"); // the bath's readings come between
        boolean warming = batch.truth().stream().anyMatch(t -> t.at().equals(gone) && t.spot() == Spot.WARM_BATH);
        assertTrue(warming, "not within the rewarm");
    }

    /** An adapter's own troubles reach the program as faults, by way of bytes and decoder. */
    @Test
    void everyTroubleOfAnAdapterIsToldAsWhatItIs() {
        String text = """
                demo = invented for a test
                title = Troubles
                about = One after the other.
                chocolate = dark
                bowl = steel
                maker = follows-cues
                fault = open-circuit for 4 s, 10 s after start
                fault = garbage for 4 s, 20 s after start
                fault = silent for 5 s, 30 s after start
                fault = unplugged for 4 s, 40 s after start
                """;
        Scenario troubled = ScenarioText.parse("troubles", text).fold(s -> s, problems -> {
            throw new AssertionError(problems);
        });
        List<Cause> causes = BatchRun.run(troubled, input -> List.of(), Presses.FORGOTTEN).inputs().stream()
                .filter(ProbeFault.class::isInstance)
                .map(input -> ((ProbeFault) input).cause())
                .distinct()
                .toList();
        assertEquals(List.of(Cause.OPEN_CIRCUIT, Cause.GARBLED, Cause.SILENT, Cause.UNPLUGGED), causes);
    }

    private static List<Sample> samples(List<Input> inputs) {
        return inputs.stream()
                .filter(Sample.class::isInstance)
                .map(Sample.class::cast)
                .toList();
    }
}
