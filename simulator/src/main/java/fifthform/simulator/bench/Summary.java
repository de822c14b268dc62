package fifthform.simulator.bench;

import fifthform.simulator.scenario.Landed;
import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * How several batches ended, in all.
 *
 * @param batches how many
 * @param landed for each place where the hottest of the rewarm can lie, how many lay there
 * @param peakCelsius the hottest of the rewarm, of those that came to one, °C
 * @param overByKelvin of those that came above the working range, by how much, K
 * @param overSeconds of the same, for how long, s
 * @param answeredInTime cues to take the bowl out of the water that were answered within {@link Answer#IN_TIME}
 * @param answerSeconds of those that were answered, after how long, s
 * @param coastErrorKelvin forecast less truth of each lift off the warm water, K
 * @param minutes how long the batches lasted, min
 */
public record Summary(
        long batches,
        Map<Landed, Share> landed,
        Spread peakCelsius,
        Spread overByKelvin,
        Spread overSeconds,
        Share answeredInTime,
        Spread answerSeconds,
        Spread coastErrorKelvin,
        Spread minutes) {
    public Summary {
        landed = new EnumMap<>(landed);
        Objects.requireNonNull(peakCelsius, "peakCelsius");
        Objects.requireNonNull(overByKelvin, "overByKelvin");
        Objects.requireNonNull(overSeconds, "overSeconds");
        Objects.requireNonNull(answeredInTime, "answeredInTime");
        Objects.requireNonNull(answerSeconds, "answerSeconds");
        Objects.requireNonNull(coastErrorKelvin, "coastErrorKelvin");
        Objects.requireNonNull(minutes, "minutes");
    }

    @Override
    public Map<Landed, Share> landed() {
        return new EnumMap<>(landed);
    }

    /** Of these batches, in this order. */
    public static Summary of(List<Ending> endings) {
        Map<Landed, Share> landed = new EnumMap<>(Landed.class);
        for (Landed each : Landed.values()) {
            long hits = endings.stream().filter(e -> e.landed() == each).count();
            landed.put(each, Share.of(hits, endings.size()));
        }
        List<Ending> over = endings.stream().filter(e -> e.overByKelvin() > 0).toList();
        List<Answer> answers =
                endings.stream().flatMap(e -> e.answers().stream()).toList();
        return new Summary(
                endings.size(),
                landed,
                spread(endings.stream()
                        .map(e -> e.outcome().highestAfterCoolCelsius())
                        .flatMapToDouble(OptionalDouble::stream)),
                spread(over.stream().mapToDouble(Ending::overByKelvin)),
                spread(over.stream().mapToDouble(e -> seconds(e.overFor()))),
                Share.of(answers.stream().filter(Answer::inTime).count(), answers.size()),
                spread(answers.stream()
                        .map(Answer::took)
                        .flatMap(Optional::stream)
                        .mapToDouble(Summary::seconds)),
                spread(endings.stream()
                        .flatMap(e -> e.coastErrorsKelvin().stream())
                        .mapToDouble(Double::doubleValue)),
                spread(endings.stream().mapToDouble(e -> seconds(e.outcome().lasted()) / 60)));
    }

    private static Spread spread(DoubleStream numbers) {
        return Spread.of(numbers.boxed().toList());
    }

    private static double seconds(Duration duration) {
        return duration.toMillis() / 1000.0;
    }
}
