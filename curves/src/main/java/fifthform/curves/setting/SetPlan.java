package fifthform.curves.setting;

import fifthform.curves.check.Require;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How these moulds are to set.
 *
 * @param place where
 * @param placeCelsius how warm it is there, °C: as said, else the middle of what is recommended
 * @param millimetres how thick the bars are, 1 to 100 mm
 * @param toSet how long it takes by the formula; empty where it is too warm to set
 * @param look when to look whether they pull away, counted from the moment they go in
 * @param longest when they are to come out
 * @param air the air of the room they come out into, where its humidity is known
 */
public record SetPlan(
        CoolingPlace place,
        double placeCelsius,
        double millimetres,
        Optional<Duration> toSet,
        Duration look,
        Duration longest,
        Optional<Condensation> air) {
    public SetPlan {
        Objects.requireNonNull(place, "place");
        Require.within(placeCelsius, -30, 40, "placeCelsius");
        Require.within(millimetres, 1, 100, "millimetres");
        Objects.requireNonNull(toSet, "toSet");
        Require.notNegative(look, "look");
        Require.notNegative(longest, "longest");
        Objects.requireNonNull(air, "air");
    }

    /**
     * The plan for a place.
     *
     * @param celsius how warm it is there, where known
     * @param air the air of the room, where its humidity is known
     */
    public static SetPlan of(
            CoolingPlace place,
            OptionalDouble celsius,
            SetTime.Air moving,
            double millimetres,
            Optional<Condensation> air) {
        double warm = celsius.orElse(place.range().midCelsius());
        Optional<Duration> toSet = SetTime.of(millimetres, warm, moving);
        Duration look = toSet.orElse(place.usual());
        Duration longest = place.longest();
        if (place == CoolingPlace.FRIDGE) {
            // The fridge takes the heat of setting; the rest of the way goes in the room.
            look = shorter(toSet.map(t -> t.multipliedBy(2).dividedBy(3)).orElse(place.usual()), place.longest());
            look = longer(look, place.usual());
        } else {
            longest = longer(longest, look.multipliedBy(2));
        }
        return new SetPlan(place, warm, millimetres, toSet, look, longest, air);
    }

    private static Duration shorter(Duration one, Duration other) {
        return one.compareTo(other) < 0 ? one : other;
    }

    private static Duration longer(Duration one, Duration other) {
        return one.compareTo(other) > 0 ? one : other;
    }
}
