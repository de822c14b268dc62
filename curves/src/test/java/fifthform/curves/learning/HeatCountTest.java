package fifthform.curves.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.Engine;
import fifthform.curves.engine.State;
import fifthform.curves.engine.StraightLine;
import fifthform.curves.engine.TestRecipes;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Setup;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a batch's heat was after its crystals were made, told in curves with keys. */
class HeatCountTest {
    private static final Setup SETUP = TestRecipes.setup();
    private static final Instant START = Instant.parse("2026-01-01T10:00:00Z");

    private State state = Engine.start(SETUP, START);
    private HeatCount heat = HeatCount.start(HeatScale.of(SETUP.recipe()));
    private Instant at = START;
    private double celsius = 48;

    private HeatCountTest phase(Phase phase) {
        step(Engine.step(SETUP, state, new PhaseConfirmed(at, phase)).after());
        return this;
    }

    /** On a straight line, a reading a second. */
    private HeatCountTest to(double goal, double minutes) {
        for (Sample reading : StraightLine.of(SETUP, at, celsius, goal, minutes)) {
            at = reading.at();
            step(Engine.step(SETUP, state, reading).after());
        }
        celsius = goal;
        return this;
    }

    private HeatCountTest silence(double minutes) {
        at = at.plusSeconds(Math.round(60 * minutes));
        return this;
    }

    private void step(State after) {
        state = after;
        heat = heat.with(SETUP.recipe(), after);
    }

    private HeatCountTest cooled(double holdMinutes) {
        to(48, 3).phase(Phase.COOL).to(27.6, 10).phase(Phase.SEED).to(27.6, holdMinutes);
        return phase(Phase.REWARM).to(31.5, 4).phase(Phase.WORK).to(31.5, 2);
    }

    private double dose() {
        return heat.dose().orElseThrow().equivalentCelsius();
    }

    private Optional<LeftOut> leftOut() {
        return heat.leftOut(SETUP.recipe());
    }

    @Test
    void aBatchWithinTheRangeHasItsUpperEnd() {
        cooled(6).to(31.6, 10);
        assertEquals(Optional.empty(), leftOut());
        assertEquals(32, dose(), 0.05);
    }

    @Test
    void anOvershootCountsByHeightAndLength() {
        cooled(6).to(33.8, 1).to(33.8, 3).to(31.5, 1);
        assertEquals(Optional.empty(), leftOut());
        assertEquals(33.9, dose(), 0.1);
        // The tip's lag is undone, so a corner in the curve is passed by a little.
        assertEquals(33.9, heat.dose().orElseThrow().highestCelsius(), 0.15);
        assertEquals(4.6, heat.dose().orElseThrow().overRange().toSeconds() / 60.0, 0.4);
        double short3 = dose();
        to(33.8, 1).to(33.8, 10).to(31.5, 1);
        assertTrue(dose() > short3 + 0.3);
    }

    @Test
    void whoCoolsAgainBeginsAnew() {
        cooled(6).to(35, 2).to(35, 3);
        assertTrue(dose() > 34.5);
        phase(Phase.COOL).to(27.6, 6).phase(Phase.SEED).to(27.6, 6);
        phase(Phase.REWARM).to(31.5, 4).phase(Phase.WORK).to(31.5, 2);
        assertEquals(32, dose(), 0.05);
        assertEquals(Optional.empty(), leftOut());
    }

    /** What is left in the bowl is melted for the next time; the bars are poured. */
    @Test
    void heatAfterTheMeltIsNotThatOfTheBars() {
        cooled(6).to(33, 1).to(31.5, 1);
        double poured = dose();
        phase(Phase.MELT).to(47, 5);
        assertEquals(poured, dose(), 1e-9);
        assertEquals(Optional.empty(), leftOut());
    }

    @Test
    void meltedAgainAndPouredUncooledHasNoCrystalsToLose() {
        cooled(6).phase(Phase.MELT).to(47, 5).to(32, 8).phase(Phase.WORK).to(31.8, 3);
        assertEquals(Optional.of(LeftOut.NOT_COOLED), leftOut());
    }

    @Test
    void aShortHoldSaysNothingOfHeat() {
        cooled(1.5);
        assertEquals(Optional.of(LeftOut.NOT_COOLED), leftOut());
    }

    @Test
    void minutesWithoutReadingsAboveTheRangeAreSaid() {
        cooled(6).to(33, 1).silence(5).to(33, 1);
        assertEquals(Optional.of(LeftOut.READINGS_MISSING), leftOut());
    }

    @Test
    void minutesWithoutReadingsWithinItDoNoHarm() {
        cooled(6).silence(5).to(31.6, 3);
        assertEquals(Optional.empty(), leftOut());
    }
}
