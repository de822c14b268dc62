package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.scenario.Landed;
import fifthform.simulator.scenario.MakerKind;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** How batches are judged and counted. */
class EndingsTest {
    private static final Recipe DARK = RecipeShelf.recipe("dark");
    private final BatchWatch watch = new BatchWatch(DARK);
    private Instant now = BatchRun.BEGINS;

    /** So many seconds there, at this temperature throughout. */
    private void stands(Spot spot, double celsius, int seconds) {
        for (int i = 0; i < seconds; i++) {
            now = now.plusSeconds(1);
            watch.saw(now, celsius, spot);
        }
    }

    private void cue(CueId cue) {
        watch.heard(new CueGiven(now, cue, OptionalDouble.empty()));
    }

    @Test
    void aBatchIsJudgedByWhatReallyHappened() {
        stands(Spot.HOT_BATH, 47, 60);
        cue(CueId.MELTED);
        stands(Spot.HOT_BATH, 47, 3);
        stands(Spot.COLD_WATER, 28, 60);
        stands(Spot.TABLE, 27.5, 60);
        cue(CueId.STOP_COOLING); // long out of the cold water: asks for nothing
        stands(Spot.WARM_BATH, 31, 60);
        watch.forecast(OptionalDouble.of(32.0));
        cue(CueId.LIFT_NOW);
        stands(Spot.WARM_BATH, 31.5, 9);
        stands(Spot.TABLE, 32.4, 30);
        stands(Spot.TABLE, 31.8, 30);
        Ending ending = watch.ending();
        assertEquals(Landed.OVER, ending.landed());
        assertEquals(0.4, ending.overByKelvin(), 1e-9);
        assertEquals(Duration.ofSeconds(30), ending.overFor());
        assertEquals(-0.4, ending.coastErrorsKelvin().get(0), 1e-9);
        List<Optional<Duration>> took =
                ending.answers().stream().map(Answer::took).toList();
        assertEquals(List.of(Optional.of(Duration.ofSeconds(4)), Optional.of(Duration.ofSeconds(10))), took);
        assertTrue(ending.answers().get(0).inTime());
        assertFalse(ending.answers().get(1).inTime());
    }

    @Test
    void aCueNobodyAnswersCounts() {
        stands(Spot.HOT_BATH, 47, 60);
        cue(CueId.MELTED);
        stands(Spot.HOT_BATH, 47, 60);
        Ending ending = watch.ending();
        assertEquals(Landed.NEVER_REWARMED, ending.landed());
        assertEquals(Optional.empty(), ending.answers().get(0).took());
        assertFalse(ending.answers().get(0).inTime());
    }

    @Test
    void meltOutIsWorseThanOver() {
        assertEquals(Landed.UNDER, Landed.at(OptionalDouble.of(30.9), DARK));
        assertEquals(Landed.IN_RANGE, Landed.at(OptionalDouble.of(31), DARK));
        assertEquals(Landed.IN_RANGE, Landed.at(OptionalDouble.of(32), DARK));
        assertEquals(Landed.OVER, Landed.at(OptionalDouble.of(33.79), DARK));
        assertEquals(Landed.MELTED_OUT, Landed.at(OptionalDouble.of(33.8), DARK));
        assertEquals(Landed.NEVER_REWARMED, Landed.at(OptionalDouble.empty(), DARK));
    }

    /** Mean 2, standard deviation 1, t of 2 degrees of freedom at 97.5 % is 4.303 (t table): half width 2.484. */
    @Test
    void spreadsAreMeansWithTheirIntervals() {
        Spread spread = Spread.of(List.of(1.0, 2.0, 3.0));
        assertEquals(2, spread.mean());
        assertEquals(2 - 4.303 / Math.sqrt(3), spread.interval().orElseThrow().low(), 0.001);
        assertEquals(Optional.empty(), Spread.of(List.of(1.0)).interval());
        assertEquals(0, Spread.of(List.of()).count());
    }

    @Test
    void manyEndingsBecomeASummaryForPeopleAndForScripts() {
        PracticeReport report = PracticeReport.of(
                BatchRunTest.scenario("first-light").madeBy(MakerKind.OWN_WAY),
                4,
                Fleet.Advice.engine(RecipeShelf::recipe));
        assertEquals(MakerKind.OWN_WAY, report.maker());
        assertEquals(4, report.endings().size());
        Map<String, Double> numbers = SummaryText.numbers(report.summary());
        double shares = 0;
        for (Landed landed : Landed.values()) {
            shares += numbers.get(landed.word().replace('-', '_') + "_fraction");
        }
        assertEquals(1, shares, 1e-12);
        assertEquals(4, numbers.get("batches"));
        assertTrue(numbers.get("lasted_min") > 20);
        assertTrue(numbers.values().stream().allMatch(Double::isFinite));
        String table = SummaryText.table(report.summary());
        assertTrue(table.contains("of 4; 95 % interval"), table);
        assertEquals(13, table.lines().count(), table);
    }

    @Test
    void aReportIsTheSameEachTime() {
        Fleet.Advice engine = Fleet.Advice.engine(RecipeShelf::recipe);
        PracticeReport first = PracticeReport.of(BatchRunTest.scenario("unplugged"), 2, engine);
        assertEquals(first, PracticeReport.of(BatchRunTest.scenario("unplugged"), 2, engine));
        assertFalse(first.endings().get(0).equals(first.endings().get(1)), "two seeds, one batch");
    }
}
