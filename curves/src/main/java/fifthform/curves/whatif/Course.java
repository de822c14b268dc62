package fifthform.curves.whatif;

import fifthform.curves.check.Require;
import fifthform.curves.input.MakerAction.Place;
import java.util.Objects;

/**
 * Where the bowl stands within a window, in seconds after its beginning: on the table or already in the water, in the
 * water until the lift, on the table from then on.
 *
 * @param water the water
 * @param entrySeconds when it came into the water; 0 or less where the window begins in it
 * @param liftSeconds when it left it
 * @param endSeconds the end of the window
 */
record Course(Place water, double entrySeconds, double liftSeconds, double endSeconds) {
    Course {
        Objects.requireNonNull(water, "water");
        if (water == Place.TABLE) throw new IllegalArgumentException("water must not be the table");
        Require.finite(entrySeconds, "entrySeconds");
        Require.within(liftSeconds, Math.max(0, entrySeconds), endSeconds, "liftSeconds");
    }

    /** How much of the time from {@code from} for {@code seconds} it stands in the water, 0 to 1. */
    double inWater(double from, double seconds) {
        double begins = Math.max(from, entrySeconds);
        double ends = Math.min(from + seconds, liftSeconds);
        return Math.max(0, ends - begins) / seconds;
    }

    /** The same with a lift so much later, everything after it as long after it as before. */
    Course liftedLater(double seconds) {
        return new Course(water, entrySeconds, liftSeconds + seconds, endSeconds + seconds);
    }

    /** The same with hands that were so much later than thought, at the entry and at the lift. */
    Course shifted(double entryLater, double liftLater) {
        double entry = entrySeconds <= 0 ? entrySeconds : Math.max(0.1, entrySeconds + entryLater);
        double lift = Math.min(endSeconds, Math.max(Math.max(0, entry) + 0.5, liftSeconds + liftLater));
        return new Course(water, Math.min(entry, lift), lift, endSeconds);
    }
}
