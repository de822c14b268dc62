package fifthform.simulator.bench;

import fifthform.curves.check.Require;
import fifthform.simulator.scenario.Landed;
import java.time.Duration;
import java.util.List;
import java.util.Objects;

/**
 * How a batch ended, judged by its recipe.
 *
 * @param outcome how it really went
 * @param landed where the hottest of the rewarm lay
 * @param overByKelvin how far above the working range it came, 0 where it did not, K
 * @param overFor how long it was above the working range after the rewarm had begun
 * @param answers each cue to take the bowl out of some water
 * @param coastErrorsKelvin for each lift off the warm water of which the program had a forecast: what it said just
 *     before the lift less where the chocolate really turned, K; positive is too high
 */
public record Ending(
        Outcome outcome,
        Landed landed,
        double overByKelvin,
        Duration overFor,
        List<Answer> answers,
        List<Double> coastErrorsKelvin) {
    public Ending {
        Objects.requireNonNull(outcome, "outcome");
        Objects.requireNonNull(landed, "landed");
        Require.within(overByKelvin, 0, 200, "overByKelvin");
        Require.notNegative(overFor, "overFor");
        answers = List.copyOf(answers);
        coastErrorsKelvin = List.copyOf(coastErrorsKelvin);
    }
}
