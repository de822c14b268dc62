package fifthform.curves.contrast;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.engine.Engine;
import fifthform.curves.engine.State;
import fifthform.curves.engine.StraightLine;
import fifthform.curves.engine.TestRecipes;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.MakerAction.SeedAdded;
import fifthform.curves.input.MakerAction.Undone;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Setup;
import java.time.Instant;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is counted of a batch for the comparison of many, told in curves with keys: temperatures of our own. */
class TraitCountTest {
    private static final Setup SETUP = TestRecipes.setup();
    private static final Instant START = Instant.parse("2026-01-01T10:00:00Z");

    private State state = Engine.start(SETUP, START);
    private TraitCount count = TraitCount.START;
    private Instant at = START;
    private double celsius = 48;
    private long sequence = 1;

    private void feed(Input input) {
        state = Engine.step(SETUP, state, input).after();
        count = count.with(SETUP.recipe(), new Recorded(sequence++, input), state);
    }

    private TraitCountTest phase(Phase phase) {
        feed(new PhaseConfirmed(at, phase));
        return this;
    }

    /** On a straight line, a reading a second. */
    private TraitCountTest to(double goal, double minutes) {
        for (Sample reading : StraightLine.of(SETUP, at, celsius, goal, minutes)) {
            at = reading.at();
            feed(reading);
        }
        celsius = goal;
        return this;
    }

    private double trait(Trait trait) {
        return count.traits(SETUP).of(trait).orElseThrow();
    }

    @Test
    void theLowestTheMinutesAndThePourAreThoseOfTheCurve() {
        phase(Phase.MELT).to(48, 2);
        phase(Phase.COOL).to(27.5, 10).phase(Phase.SEED).to(27, 6);
        phase(Phase.REWARM).to(31.5, 3);
        phase(Phase.WORK).to(31.5, 8);
        assertEquals(27, trait(Trait.LOWEST), 0.1);
        // Six minutes of the hold, and what the cooling took from half a kelvin above the cool range on, at 2.05 K/min.
        double high = SETUP.recipe().cool().range().highCelsius() + 0.5;
        assertEquals(6 + (high - 27.5) / 2.05, trait(Trait.COOL_MINUTES), 0.3);
        assertEquals(31.5, trait(Trait.POURING), 0.1);
        assertEquals(0, trait(Trait.SEED), "nobody planned or added any");
    }

    @Test
    void chocolateMeltedAndCooledAgainIsCountedByItsLastCooling() {
        phase(Phase.MELT).to(48, 1);
        phase(Phase.COOL).to(25, 6).phase(Phase.SEED).to(25, 5);
        phase(Phase.MELT).to(48, 8);
        phase(Phase.COOL).to(28, 8).phase(Phase.SEED).to(28, 2);
        assertEquals(28, trait(Trait.LOWEST), 0.3, "and not the 25 of the first");
        assertEquals(OptionalDouble.empty(), count.traits(SETUP).of(Trait.POURING), "nothing was poured");
    }

    @Test
    void aSilenceIsNotCountedAsSpentLikeItsEnd() {
        phase(Phase.MELT).to(48, 1);
        phase(Phase.COOL).to(27.5, 8).phase(Phase.SEED).to(27.5, 2);
        double before = trait(Trait.COOL_MINUTES);
        at = at.plusSeconds(15 * 60);
        to(27.5, 1);
        assertEquals(before + 1, trait(Trait.COOL_MINUTES), 0.1);
    }

    @Test
    void seedIsAYesUntilItIsTakenBackAndUnknownWhereItWasPlannedAndNeverSaid() {
        phase(Phase.MELT).to(48, 1).phase(Phase.COOL).to(34, 5);
        long by = sequence;
        feed(new SeedAdded(at, 50));
        assertEquals(1, trait(Trait.SEED));
        feed(new Undone(at, by));
        assertEquals(0, trait(Trait.SEED));
        Setup planned = SETUP.withSeedGrams(OptionalDouble.of(50));
        assertEquals(OptionalDouble.empty(), count.traits(planned).of(Trait.SEED));
    }
}
