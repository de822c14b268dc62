package fifthform.curves.setting;

import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known of how bars set, for whoever asks later why they came out as they did.
 *
 * @param place where
 * @param coldestEarlyCelsius the coldest of the first ten minutes, °C
 * @param coldestCelsius the coldest of all, °C
 * @param warm time above 24 °C
 * @param fastestKelvinPerMinute the fastest fall after the tip had come to rest, K/min
 * @param stayed how long they stayed, as far as it was watched
 * @param takenOutCelsius how cold they came out, °C
 * @param dewCelsius dew point of the air they came out into, °C
 */
public record SetRecord(
        CoolingPlace place,
        OptionalDouble coldestEarlyCelsius,
        OptionalDouble coldestCelsius,
        Duration warm,
        double fastestKelvinPerMinute,
        Duration stayed,
        OptionalDouble takenOutCelsius,
        OptionalDouble dewCelsius) {
    public SetRecord {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(coldestEarlyCelsius, "coldestEarlyCelsius");
        Objects.requireNonNull(coldestCelsius, "coldestCelsius");
        Objects.requireNonNull(warm, "warm");
        Objects.requireNonNull(stayed, "stayed");
        Objects.requireNonNull(takenOutCelsius, "takenOutCelsius");
        Objects.requireNonNull(dewCelsius, "dewCelsius");
    }

    /** Whether they came out below the dew point of the room; empty where one of the two is not known. */
    public Optional<Boolean> cameOutWet() {
        return takenOutCelsius.isPresent() && dewCelsius.isPresent()
                ? Optional.of(takenOutCelsius.getAsDouble() < dewCelsius.getAsDouble())
                : Optional.empty();
    }
}
