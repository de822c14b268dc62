package fifthform.simulator.rivals;

import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.estimate.Estimate;
import fifthform.simulator.bench.Batch;
import fifthform.simulator.bench.BatchRun;
import fifthform.simulator.bench.EngineProgram;
import fifthform.simulator.bench.Fleet;
import fifthform.simulator.bench.Moment;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.scenario.MakerKind;
import fifthform.simulator.scenario.ProbeScale;
import fifthform.simulator.scenario.Scenario;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * How often the bulk, without lag and in that probe's scale, lies in the 90 % band of the estimate, from the end of the
 * melt on; batches of the training fleet other than those that its figures were set by. {@code -Dbatches=60} for the long
 * form.
 */
class BulkBandTest {
    /** The figures of {@code Estimate} were set by batches 0 to 59 and 1000 to 1059. */
    private static final int FIRST = 2000;

    private static final int BATCHES = Integer.getInteger("batches", 24);
    private static final int STEPS_A_LOOK = 4;
    private static final int LONGEST_STEPS = 7200;
    private static final double MELTED_CELSIUS = 42;

    /** Half of a 90 % band of a normal distribution, in standard deviations; a table value from memory. */
    private static final double NINETY_PERCENT = 1.645;

    private int looks;
    private int inside;
    private int insideRandomPart;
    private double widthKelvin;

    @Test
    void theBulkLiesInItsBandNineTimesInTen() {
        Fleet fleet = Fleet.builtIn("training");
        for (long number = FIRST; number < FIRST + BATCHES; number++) batch(fleet, number);
        double held = (double) inside / looks;
        System.out.printf(
                Locale.ROOT,
                "bulk in its 90 %% band: %.3f of %d looks, mean width %.2f K; by the random part alone %.3f%n",
                held,
                looks,
                widthKelvin / looks,
                (double) insideRandomPart / looks);
        assertTrue(looks > 200 * BATCHES, "looks " + looks);
        assertTrue(held >= 0.85 && held <= 0.96, "held " + held);
    }

    private void batch(Fleet fleet, long number) {
        Scenario scenario = fleet.draw(number).madeBy(MakerKind.CAREFUL);
        ProbeScale scale = ProbeScale.of(scenario);
        EngineProgram first = EngineProgram.beginning(scenario, Shelf.recipe(scenario.chocolate()), BatchRun.BEGINS);
        Moment moment = Batch.beginning(scenario, new Luck(11).branch(number), first);
        Batch batch = new Batch(scenario.kitchen());
        boolean melted = false;
        while (!moment.maker().done() && moment.steps() < LONGEST_STEPS) {
            moment = batch.next(moment).after();
            double bulk = moment.kitchen().bulkCelsius();
            melted = melted || bulk > MELTED_CELSIUS;
            if (!melted || moment.steps() % STEPS_A_LOOK != 0) continue;
            EngineProgram engine = (EngineProgram) moment.program();
            engine.state().estimate().filter(Estimate::isUsable).ifPresent(e -> look(e, scale.shows(bulk)));
        }
    }

    private void look(Estimate estimate, double shownCelsius) {
        double off = Math.abs(estimate.chocolateCelsius() - shownCelsius);
        looks++;
        widthKelvin += 2 * NINETY_PERCENT * estimate.bulkSigmaKelvin();
        if (off <= NINETY_PERCENT * estimate.bulkSigmaKelvin()) inside++;
        if (off <= NINETY_PERCENT * estimate.sigmaKelvin()) insideRandomPart++;
    }
}
