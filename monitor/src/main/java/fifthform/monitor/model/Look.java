package fifthform.monitor.model;

import fifthform.monitor.settings.Units;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a picture needs beside the session: the maker's choices and the state of the program around it.
 *
 * @param units unit of temperature
 * @param zone the kitchen's time zone
 * @param marks sound, saved and whatever else stands at the top right beside the probe's own mark
 * @param assigned which key does what
 * @param keys what the keys do, in one row
 * @param undo what the last key did, while it can be undone; else what an adapter that is asked complains of
 * @param banner a standing notice
 * @param asking whether anybody can answer a question
 * @param back how far back the curve is looked at
 * @param again the key that a second press of gives another meaning, while the line of {@code undo} says so
 */
public record Look(
        Units units,
        ZoneId zone,
        List<WatchPicture.Mark> marks,
        KeyMap assigned,
        String keys,
        Optional<String> undo,
        Optional<String> banner,
        Asking asking,
        LookBack back,
        Optional<Key> again) {
    /** Whether the screen may ask. */
    public enum Asking {
        /** Somebody is at the keys of a batch that goes on. */
        ANSWERED,
        /** A replay: what was said then was said. */
        POINTLESS
    }

    /** A batch that goes on, with the keys as the program comes. */
    public Look(
            Units units,
            ZoneId zone,
            List<WatchPicture.Mark> marks,
            String keys,
            Optional<String> undo,
            Optional<String> banner) {
        this(units, zone, marks, KeyMap.USUAL, keys, undo, banner, Asking.ANSWERED);
    }

    /** The curve at now. */
    public Look(
            Units units,
            ZoneId zone,
            List<WatchPicture.Mark> marks,
            KeyMap assigned,
            String keys,
            Optional<String> undo,
            Optional<String> banner,
            Asking asking) {
        this(units, zone, marks, assigned, keys, undo, banner, asking, LookBack.NOW, Optional.empty());
    }

    public Look {
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(zone, "zone");
        marks = List.copyOf(marks);
        Objects.requireNonNull(assigned, "assigned");
        Objects.requireNonNull(keys, "keys");
        Objects.requireNonNull(undo, "undo");
        Objects.requireNonNull(banner, "banner");
        Objects.requireNonNull(asking, "asking");
        Objects.requireNonNull(back, "back");
        Objects.requireNonNull(again, "again");
    }
}
