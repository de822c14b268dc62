package fifthform.curves.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.Sample;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.curves.thermocouple.Budget;
import fifthform.curves.thermocouple.Budget.Source;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.curves.thermocouple.ToleranceClass;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What the engine makes of a sensor of which something is known, and how far it says a reading can be trusted. */
class TrustTest {
    private static final Instant START = Instant.parse("2026-03-01T10:00:00Z");
    private static final Sensor ONE_SLOPE =
            new Sensor(Optional.of(ThermocoupleType.K), ToleranceClass.CLASS_2, Converter.MAX31855);

    @Test
    void oneSlopeIsUndoneBeforeTheCorrection() {
        Correction half = new Correction(1, 0.5, 0.2);
        // By hand from the printed table of type K: 0.041276 · 6.5 + 1.0002 = 1.2685 mV, which is 31.60 °C.
        assertEquals(31.60, read(setup(ONE_SLOPE, Correction.UNCHECKED), 31.5, 25), 0.005);
        assertEquals(32.10, read(setup(ONE_SLOPE, half), 31.5, 25), 0.005);
        assertEquals(31.5, read(setup(Sensor.UNKNOWN, Correction.UNCHECKED), 31.5, 25));
    }

    @Test
    void aSensorOfWhichNothingIsKnownLeavesTheReadingItself() {
        Sample sample = sample(31.5, 25);
        assertSame(sample, sample.linearised(Sensor.UNKNOWN));
    }

    @Test
    void aReadingAtTheEndOfTheRangeStaysWithin() {
        assertEquals(150, sample(150, 80).linearised(ONE_SLOPE).tipCelsius());
        assertTrue(ONE_SLOPE.tipCelsius(150, OptionalDouble.of(80), OptionalDouble.empty()) > 150);
    }

    @Test
    void theBudgetIsThatOfTheLastReading() {
        Setup setup = setup(ONE_SLOPE, Correction.UNCHECKED);
        State start = Engine.start(setup, START);
        assertEquals(Optional.empty(), start.budget(setup));
        State after = Engine.step(setup, start, sample(31.5, 25)).after();
        Budget budget = after.budget(setup).orElseThrow();
        assertEquals(List.of(Source.TOLERANCE, Source.JUNCTION, Source.RESOLUTION, Source.NOISE), sources(budget));
        assertEquals(0.0722, budget.parts().get(2).standardKelvin(), 1e-4);
        assertEquals(
                after.tracks().entries().get(0).track().noiseKelvin(),
                budget.parts().get(3).standardKelvin());
    }

    @Test
    void aCheckTakesThePlaceOfWireAndConverter() {
        Setup setup = setup(ONE_SLOPE, new Correction(1, 0.5, 0.2, Optional.of(START)));
        Budget budget = setup.bowlProbe().budget(31.6, OptionalDouble.of(25), 0.05, 0.1);
        assertEquals(List.of(Source.CORRECTION, Source.RESOLUTION, Source.NOISE), sources(budget));
        // √(0.04 + 0.0025 + 0.01)
        assertEquals(0.229129, budget.standardKelvin(), 1e-6);
        assertEquals(0.458258, budget.expandedKelvin(), 1e-6);
    }

    private static List<Source> sources(Budget budget) {
        return budget.parts().stream().map(Budget.Part::source).toList();
    }

    private static double read(Setup setup, double tipCelsius, double junctionCelsius) {
        State after = Engine.step(setup, Engine.start(setup, START), sample(tipCelsius, junctionCelsius))
                .after();
        return after.tracks().entries().get(0).track().lastCelsius().orElseThrow();
    }

    private static Sample sample(double tipCelsius, double junctionCelsius) {
        return new Sample(
                START.plusSeconds(1),
                StoryKitchen.BOWL,
                tipCelsius,
                0.25 / Math.sqrt(12),
                OptionalDouble.of(junctionCelsius),
                OptionalDouble.empty());
    }

    private static Setup setup(Sensor sensor, Correction correction) {
        Setup story = TestRecipes.setup();
        ProbeSetup probe = new ProbeSetup(StoryKitchen.BOWL, Role.BOWL, "text-lines", "story", correction, 4, sensor);
        return new Setup(
                story.recipe(),
                story.bowl(),
                List.of(probe),
                story.reactionTime(),
                story.bathCelsius(),
                story.roomCelsius(),
                story.origin(),
                story.approach(),
                story.seedGrams(),
                Beginning.WHOLE,
                Optional.empty());
    }
}
