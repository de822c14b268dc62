package fifthform.simulator.bench;

import fifthform.simulator.bowl.Spot;
import fifthform.simulator.device.Truth;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

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
        int cold = first(truth, 0, Spot.COLD_WATER);
        int warm = first(truth, cold, Spot.WARM_BATH);
        Duration lasted =
                Duration.between(truth.get(0).at(), truth.get(truth.size() - 1).at());
        return new Outcome(
                lasted,
                bulk(truth.subList(0, Math.max(1, cold))).max().orElseThrow(),
                bulk(truth.subList(cold, warm)).min(),
                bulk(truth.subList(warm, truth.size())).max(),
                lifts(truth, warm));
    }

    private static DoubleStream bulk(List<Truth> part) {
        return part.stream().mapToDouble(Truth::bulkCelsius);
    }

    /** Where the bowl first stands there, or the end. */
    private static int first(List<Truth> truth, int from, Spot spot) {
        for (int i = from; i < truth.size(); i++) if (truth.get(i).spot() == spot) return i;
        return truth.size();
    }

    private static List<Lift> lifts(List<Truth> truth, int warm) {
        List<Lift> lifts = new ArrayList<>();
        for (int i = warm + 1; i < truth.size(); i++) {
            boolean lifted =
                    truth.get(i - 1).spot() == Spot.WARM_BATH && truth.get(i).spot() != Spot.WARM_BATH;
            if (lifted) lifts.add(lift(truth, i));
        }
        return lifts;
    }

    private static Lift lift(List<Truth> truth, int at) {
        Truth lifted = truth.get(at);
        Truth highest = lifted;
        for (int i = at; i < truth.size() && truth.get(i).spot() != Spot.WARM_BATH; i++) {
            if (truth.get(i).bulkCelsius() > highest.bulkCelsius()) highest = truth.get(i);
        }
        return new Lift(lifted.at(), lifted.bulkCelsius(), highest.at(), highest.bulkCelsius());
    }
}
