package fifthform.curves.signal;

import fifthform.curves.check.Require;
import fifthform.curves.input.MakerAction.Place;
import java.time.Instant;
import java.util.Objects;

/**
 * The water that melted chocolate stands in: what it does to the bowl, a sound probe has to show.
 *
 * @param place warm bath or cold water
 * @param since since when
 * @param celsius its temperature, measured, planned or usual, °C
 * @param known who says that the bowl stands there
 */
public record Water(Place place, Instant since, double celsius, Known known) {
    /** How it is known. */
    public enum Known {
        /** The maker said it by key: it holds whatever the readings do. */
        TOLD,
        /** The readings themselves showed it, so they cannot be judged by it. */
        SEEN
    }

    public Water {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(since, "since");
        Require.finite(celsius, "celsius");
        Objects.requireNonNull(known, "known");
    }

    /** 1 where it warms the bowl, −1 where it cools it. */
    int sense() {
        return place == Place.COLD_WATER ? -1 : 1;
    }
}
