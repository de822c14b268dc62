package fifthform.simulator.bench;

import fifthform.simulator.device.Truth;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * How a batch really went.
 *
 * @param lasted from the first to the last moment
 * @param highestMeltCelsius the hottest before the cold water, °C
 * @param lowestCoolCelsius the coolest after it, before the warm water, °C; empty where it never was in cold water
 * @param highestAfterCoolCelsius the hottest after that, °C; empty where it never was in warm water
 * @param lifts each lift off the warm water
 */
public record Outcome(
        Duration lasted,
        double highestMeltCelsius,
        OptionalDouble lowestCoolCelsius,
        OptionalDouble highestAfterCoolCelsius,
        List<Lift> lifts) {
    public Outcome {
        Objects.requireNonNull(lasted, "lasted");
        Objects.requireNonNull(lowestCoolCelsius, "lowestCoolCelsius");
        Objects.requireNonNull(highestAfterCoolCelsius, "highestAfterCoolCelsius");
        lifts = List.copyOf(lifts);
    }

    /**
     * The outcome of this course of things.
     *
     * @param truth in order of time, at least one
     */
    static Outcome of(List<Truth> truth) {
        OutcomeWatch watch = new OutcomeWatch();
        for (Truth each : truth) watch.saw(each.at(), each.bulkCelsius(), each.spot());
        return watch.outcome();
    }
}
